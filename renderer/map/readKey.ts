import type { YardPoint } from '../../core/spaces.ts';
import type { DrawingInput, DrawingState } from '../drawing/index.ts';

/** What a key asks of the sketch: something of the drawing, or of the view alone. */
export type KeyAsk =
  | { readonly kind: 'input'; readonly input: DrawingInput }
  | { readonly kind: 'slide'; readonly rightPx: number; readonly downPx: number }
  | { readonly kind: 'zoom'; readonly by: number }
  | { readonly kind: 'fit' };

export interface KeyContext {
  readonly state: DrawingState | null;
  /** The middle of what is in sight, where the crosshair starts. */
  readonly centre: YardPoint;
  /** One press of an arrow key, and with Shift held. */
  readonly stepM: number;
  readonly fineStepM: number;
}

const ARROWS: Readonly<Record<string, readonly [east: number, north: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** How far the sketch slides at one press. */
const SLIDE_PX = 80;

const PLAIN_KEYS: Readonly<Record<string, DrawingInput>> = {
  Enter: { kind: 'typed', text: '' },
  ' ': { kind: 'place' },
  Backspace: { kind: 'back' },
  Delete: { kind: 'remove' },
  Escape: { kind: 'escape' },
  PageDown: { kind: 'next-corner' },
  PageUp: { kind: 'previous-corner' },
};

/**
 * The sketch's keys. With nothing in hand the arrows slide the sketch; with a tool they move the crosshair,
 * with something selected they move that. + and - zoom, Home brings the whole yard in sight.
 */
export function readKey(key: string, shift: boolean, context: KeyContext): KeyAsk | null {
  const { state, centre } = context;
  const arrow = ARROWS[key];
  if (arrow !== undefined) {
    const [east, north] = arrow;
    if (!movesSomething(state)) return { kind: 'slide', rightPx: east * SLIDE_PX, downPx: -north * SLIDE_PX };
    const stepM = shift ? context.fineStepM : context.stepM;
    return {
      kind: 'input',
      input: { kind: 'arrow', eastM: east * stepM, northM: north * stepM, from: centre },
    };
  }
  if (key === '+' || key === '=') return { kind: 'zoom', by: 0.5 };
  if (key === '-' || key === '_') return { kind: 'zoom', by: -0.5 };
  if (key === 'Home') return { kind: 'fit' };
  const input = PLAIN_KEYS[key];
  return input !== undefined && state !== null ? { kind: 'input', input } : null;
}

/** Whether letting go of this key ends a move by arrows. */
export function endsArrows(key: string): boolean {
  return ARROWS[key] !== undefined;
}

function movesSomething(state: DrawingState | null): boolean {
  if (state === null) return false;
  return state.kind === 'select' ? state.mark !== null : true;
}
