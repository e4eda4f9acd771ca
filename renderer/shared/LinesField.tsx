import { useId } from 'react';

interface LinesFieldProps {
  readonly label: string;
  readonly shown: string;
  /** How to write it, said under the label's line while the field is empty. */
  readonly example: string;
  readonly rows: number;
  readonly onCommit: (typed: string) => void;
}

/** Several figures in one field, a line or a comma each; every key commits. */
export function LinesField(props: LinesFieldProps) {
  const id = useId();
  return (
    <div className="line">
      <label htmlFor={id}>{props.label}</label>
      <span className="line-value">
        <textarea
          id={id}
          className="figure figure-lines"
          rows={props.rows}
          value={props.shown}
          placeholder={props.example}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => props.onCommit(event.target.value)}
        />
      </span>
    </div>
  );
}
