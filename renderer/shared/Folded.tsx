import type { ReactNode } from 'react';

interface FoldedProps {
  readonly title: string;
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** A part of a left page that is long and seldom wanted: its head stands, and opens it by a click or Enter. */
export function Folded({ title, aside, children }: FoldedProps) {
  return (
    <details className="part folded">
      <summary className="part-head">
        <h2>{title}</h2>
        {aside && <p>{aside}</p>}
      </summary>
      {children}
    </details>
  );
}
