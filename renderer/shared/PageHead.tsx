import type { ReactNode } from 'react';

interface PageHeadProps {
  readonly title: string;
  readonly about?: string | undefined;
  readonly aside?: ReactNode;
}

/** The head of a left page: its step, what it is about, and to the right which yard and which ground. */
export function PageHead({ title, about, aside }: PageHeadProps) {
  return (
    <header className="page-head">
      <h1>
        {title}
        {about && <span className="about"> — {about}</span>}
      </h1>
      {aside && <p className="page-aside">{aside}</p>}
    </header>
  );
}

interface PartProps {
  readonly title: string;
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** A part of a left page under its own small head. */
export function PagePart({ title, aside, children }: PartProps) {
  return (
    <section className="part">
      <header className="part-head">
        <h2>{title}</h2>
        {aside && <p>{aside}</p>}
      </header>
      {children}
    </section>
  );
}
