import { outlineRings } from '../../core/curves/index.ts';
import { applyEdit, type Edit } from '../../core/edits/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { OutlineKind, Yard } from '../../core/yard.ts';
import {
  AT_REST,
  type DrawingContext,
  type DrawingInput,
  type DrawingState,
  type Selection,
  step,
  type WalkContext,
} from '../../renderer/drawing/index.ts';

/** A metric loose yard with nothing on it but what is given. */
export function yardOf(part: Partial<Pick<Yard, 'outlines' | 'marks' | 'pictures'>> = {}): Yard {
  return {
    details: {
      id: 'yard',
      name: 'Test yard',
      groundDate: '2026-05-12',
      unitSystem: 'metric',
      frame: { kind: 'loose' },
      cornerSigmaM: null,
      overlapRule: 'drawn-first',
      amountsBy: 'plan',
    },
    pictures: [],
    outlines: [],
    marks: [],
    elevations: [],
    checks: [],
    products: [],
    applicators: [],
    jobs: [],
    ...part,
  };
}

/** Plays inputs one after another, each seeing the yard as the edits before left it. */
export class Hand {
  state: DrawingState = AT_REST;
  yard: Yard;
  selection: Selection = null;
  readonly labels: string[] = [];
  readonly edits: Edit[] = [];
  mayEdit = true;
  /** The walk of a yard, on the page it is worked out on. */
  walkOf: (yard: Yard) => WalkContext | null = () => null;
  #made = 0;

  constructor(yard: Yard) {
    this.yard = yard;
  }

  get context(): DrawingContext {
    const makeId = (): string => {
      this.#made += 1;
      return `new-${this.#made}`;
    };
    const { yard, mayEdit } = this;
    return { yard, units: yard.details.unitSystem, mayEdit, walk: this.walkOf(yard), makeId };
  }

  do(...inputs: readonly DrawingInput[]): this {
    for (const input of inputs) {
      const next = step(this.state, input, this.context);
      this.state = next.state;
      if (next.select !== undefined) this.selection = next.select;
      for (const edit of next.edits) {
        this.yard = applyEdit(this.yard, edit);
        this.labels.push(edit.label);
        this.edits.push(edit);
      }
    }
    return this;
  }

  /** A click at each place, snapping within a centimetre. */
  click(...places: readonly (readonly [number, number])[]): this {
    return this.do(...places.map(([xM, yM]) => pointing('click', xM, yM)));
  }

  type(...texts: readonly string[]): this {
    return this.do(...texts.map((text) => ({ kind: 'typed', text }) as const));
  }

  /** Press at one place, pull to another, let go. */
  drag(from: readonly [number, number], to: readonly [number, number]): this {
    return this.do(pointing('press', ...from), pointing('move', ...to), { kind: 'release' });
  }
}

export function pointing<K extends 'click' | 'press' | 'move'>(
  kind: K,
  xM: number,
  yM: number,
  reachM = 0.01,
): { kind: K; at: YardPoint; reachM: number; free: boolean } {
  return { kind, at: { xM, yM }, reachM, free: false };
}

export function trace(outlineKind: OutlineKind = 'zone'): DrawingInput {
  return { kind: 'take', tool: { kind: 'trace', outlineKind } };
}

export function xy(points: readonly YardPoint[]): (readonly [number, number])[] {
  // Two decimals: test coordinates are whole centimetres, arithmetic leaves dust behind them.
  return points.map(
    ({ xM, yM }) => [Math.round(xM * 100) / 100 + 0, Math.round(yM * 100) / 100 + 0] as const,
  );
}

/** One ring of one outline as it is drawn: 0 the outer one. */
export function ringAt(yard: Pick<Yard, 'outlines'>, outline: number, ring = 0): Ring {
  const found = yard.outlines[outline];
  return found === undefined ? [] : (outlineRings(found)[ring] ?? []);
}
