import type { YardPoint } from '../spaces.ts';
import type { Chord } from './chords.ts';

/** Runs of neighbouring chords that begin and end on one ring and pass from ring to ring through holes between. */
export function partingRuns(chords: readonly Chord[], mostM: number): Chord[][] {
  const runs: Chord[][] = [];
  for (let first = 0; first < chords.length; first++) {
    const run: Chord[] = [];
    let lengthM = 0;
    const ring = (chords[first] as Chord).start.edge.ring;
    for (let last = first; last < chords.length; last++) {
      const chord = chords[last] as Chord;
      const before = run.at(-1);
      if (before !== undefined && before.end.edge.ring !== chord.start.edge.ring) break;
      run.push(chord);
      lengthM += chord.end.vM - chord.start.vM;
      if (lengthM > mostM) break;
      if (chord.end.edge.ring !== ring) continue;
      // Going on past the ring it began on would part the ground a second time.
      runs.push(run);
      break;
    }
  }
  return runs;
}

/** Length of a cut, and how much longer it gets for each metre it moves up. */
export function lengthAndSlope(run: readonly Chord[]): [lengthM: number, slope: number] {
  let lengthM = 0;
  let slope = 0;
  for (const { start, end } of run) {
    lengthM += end.vM - start.vM;
    slope += end.slope - start.slope;
  }
  return [lengthM, slope];
}

/** Halfway between the two ends of a cut. */
export function middleOf(chords: readonly Chord[]): YardPoint {
  const [from, to] = [chords[0]?.start.at, chords.at(-1)?.end.at];
  return { xM: ((from?.xM ?? 0) + (to?.xM ?? 0)) / 2, yM: ((from?.yM ?? 0) + (to?.yM ?? 0)) / 2 };
}
