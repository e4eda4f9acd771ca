import type { Problem } from '../../core/problems.ts';
import { problemText } from '../../core/problemText.ts';
import type { UnitSystem } from '../../core/yard.ts';

interface ProblemLinesProps {
  readonly problems: readonly Problem[];
  readonly units: UnitSystem;
}

/** Problems in plain words, what is wrong first and then the mend, a line each. */
export function ProblemLines({ problems, units }: ProblemLinesProps) {
  return problems.map((problem) => {
    const words = problemText(problem, units);
    return (
      <p className="said" key={JSON.stringify(problem)}>
        <strong className="needs-you">{words.what}</strong> {words.mend}
      </p>
    );
  });
}
