import type { EdgeToCome } from '../drawing/index.ts';

interface EdgeRowProps {
  /** For a screen reader: "Next edge", "Edge 3". */
  readonly name: string;
  readonly run: 'straight' | 'arc' | 'smooth';
  readonly onRun: (edge: EdgeToCome) => void;
}

const RUNS: readonly EdgeToCome[] = [{ kind: 'straight' }, { kind: 'arc', via: null }, { kind: 'smooth' }];

/** How an edge runs from corner to corner. */
export function EdgeRow({ name, run, onRun }: EdgeRowProps) {
  return (
    <fieldset className="do-row" aria-label={name}>
      <span>edge</span>
      {RUNS.map((edge) => (
        <button
          key={edge.kind}
          type="button"
          className="do"
          aria-pressed={run === edge.kind}
          onClick={() => onRun(edge)}
        >
          {edge.kind}
        </button>
      ))}
    </fieldset>
  );
}
