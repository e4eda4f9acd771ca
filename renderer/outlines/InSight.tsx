import { type ReactNode, useEffect, useRef } from 'react';

interface InSightProps {
  /** Whose parts these are; another one is brought in sight. */
  readonly of: string;
  readonly children: ReactNode;
}

/** Less of a part than this at the foot of the page does not count as seen. */
const LEAST_SEEN_PX = 120;

/** The parts of what is in hand: picked far down a list or on the sketch, its head is turned to by the page itself. */
export function InSight({ of, children }: InSightProps) {
  const parts = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only another thing in hand turns the page
  useEffect(() => {
    const page = parts.current?.closest('.left-scroll')?.getBoundingClientRect();
    const top = parts.current?.getBoundingClientRect().top;
    if (page === undefined || top === undefined) return;
    if (top < page.top || top > page.bottom - LEAST_SEEN_PX)
      parts.current?.scrollIntoView({ block: 'start' });
  }, [of]);
  return (
    <div className="in-hand" ref={parts}>
      {children}
    </div>
  );
}
