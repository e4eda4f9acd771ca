interface PlusMinusProps {
  readonly text: string;
  /** "± 3"; null = not stated, and then nothing is said here. */
  readonly sigma: string | null;
}

/** A figure with its ± after it in a lighter hand. The unit stands in the head. */
export function PlusMinus({ text, sigma }: PlusMinusProps) {
  return (
    <>
      {text}
      {sigma !== null && <span className="plus-minus"> {sigma}</span>}
    </>
  );
}
