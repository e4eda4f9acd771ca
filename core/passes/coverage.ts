import { type UntreatedKind, UNTREATED_KINDS } from '../zones/index.ts';

/** What lies beside the treated ground: 'elsewhere' is nothing that was drawn, or lawn that is not in the job. */
export const OUTSIDE_KINDS = [...UNTREATED_KINDS, 'elsewhere'] as const;
export type OutsideKind = UntreatedKind | 'elsewhere';

/** Ground is counted as covered 0, 1, 2, 3 times, and this often or more. */
export const DEEPEST = 4;

/** What one round of passes does on its own. once + twice + missed = treated. */
export interface RoundCoverage {
  readonly onceM2: number;
  readonly twiceM2: number;
  readonly missedM2: number;
}

/**
 * Every m² of treated ground by what it gets. A round puts down its part of the rate: the whole of it when there is
 * one, half when there are two. once + short + twice + missed = treated.
 */
export interface GroundCoverage {
  readonly treatedM2: number;
  /** The rate: covered as often as there are rounds. */
  readonly onceM2: number;
  /** Less than the rate: covered, but less often than there are rounds. Nought when there is one. */
  readonly shortM2: number;
  /** More than the rate: covered more often than there are rounds. */
  readonly twiceM2: number;
  /** No swath reaches it. */
  readonly missedM2: number;
  /** Ground off the treated ground that swaths reach, however often. */
  readonly outsideM2: number;
  /** The same by what lies there; ground of two kinds counts as the first of `OUTSIDE_KINDS`. */
  readonly outsideOntoM2: Readonly<Record<OutsideKind, number>>;
  /** Treated ground by how many swath pieces lie on it: 0 to `DEEPEST`, the last with all above. */
  readonly depthsM2: readonly number[];
  /** Each round on its own, the first first. */
  readonly rounds: readonly RoundCoverage[];
  /** Length of the passes times the swath: what the applicator puts its rate on, wherever it falls. */
  readonly sweptM2: number;
}

export interface SectionCoverage extends GroundCoverage {
  readonly sectionId: string;
}

/**
 * Measured by overlay, section by section; the whole is the sum of its sections. A swath that leaves its section is
 * counted in the section it falls on, and outside at the first section, in the order given, that reaches there.
 */
export interface Coverage extends GroundCoverage {
  readonly sections: readonly SectionCoverage[];
}

/** Coverage of ground that makes up a whole without overlap. */
export function sumCoverage(parts: readonly GroundCoverage[], rounds: 1 | 2): GroundCoverage {
  const total = (figure: (part: GroundCoverage) => number): number =>
    parts.reduce((sum, part) => sum + figure(part), 0);
  const outsideOntoM2 = byKind((kind) => total((part) => part.outsideOntoM2[kind]));
  return {
    treatedM2: total((part) => part.treatedM2),
    onceM2: total((part) => part.onceM2),
    shortM2: total((part) => part.shortM2),
    twiceM2: total((part) => part.twiceM2),
    missedM2: total((part) => part.missedM2),
    outsideM2: total((part) => part.outsideM2),
    outsideOntoM2,
    depthsM2: Array.from({ length: DEEPEST + 1 }, (_, depth) =>
      total((part) => part.depthsM2[depth] as number),
    ),
    rounds: Array.from({ length: rounds }, (_, round) => ({
      onceM2: total((part) => part.rounds[round]?.onceM2 ?? 0),
      twiceM2: total((part) => part.rounds[round]?.twiceM2 ?? 0),
      missedM2: total((part) => part.rounds[round]?.missedM2 ?? 0),
    })),
    sweptM2: total((part) => part.sweptM2),
  };
}

/** A figure for every kind of ground beside the treated. */
export function byKind(figure: (kind: OutsideKind) => number): Record<OutsideKind, number> {
  return Object.fromEntries(OUTSIDE_KINDS.map((kind) => [kind, figure(kind)])) as Record<OutsideKind, number>;
}
