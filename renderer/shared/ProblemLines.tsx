import type { Problem } from '../../core/problems.ts';
import { problemText } from '../../core/problemText.ts';
import type { UnitSystem } from '../../core/yard.ts';

interface ProblemWordsProps {
  readonly problem: Problem;
  readonly units: UnitSystem;
}

/** One problem in plain words: what is wrong first, then the mend. */
export function ProblemWords({ problem, units }: ProblemWordsProps) {
  const words = problemText(problem, units);
  return (
    <>
      <strong className="needs-you">{words.what}</strong> {words.mend}
    </>
  );
}

interface ProblemLinesProps {
  readonly problems: readonly Problem[];
  readonly units: UnitSystem;
}

/** Problems, a line each. */
export function ProblemLines({ problems, units }: ProblemLinesProps) {
  return problems.map((problem) => (
    <p className="said" key={JSON.stringify(problem)}>
      <ProblemWords problem={problem} units={units} />
    </p>
  ));
}
