import { type ReactNode, useState } from 'react';

interface FoldedProps {
  readonly title: string;
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/**
 * A part of a left page that is long and seldom wanted: its head stands, and opens it by a click or Enter. What is in it
 * is made when it is first opened: until then it would be made anew with every move of the hand.
 */
export function Folded({ title, aside, children }: FoldedProps) {
  const [opened, setOpened] = useState(false);
  return (
    <details className="part folded" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary className="part-head">
        <h2>{title}</h2>
        {aside && <p>{aside}</p>}
      </summary>
      {opened && children}
    </details>
  );
}
