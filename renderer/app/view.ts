import {
  AT_REST,
  type DrawingContext,
  type DrawingInput,
  type DrawingState,
  type Selection,
  step,
  type Tool,
  type WalkContext,
} from '../drawing/index.ts';
import type { Yard } from '../../core/yard.ts';
import type { ComparedGround } from '../shared/comparisonOf.ts';
import { keepLamp, type Lamp, readLamp } from './lamp.ts';
import type { Planner } from '../planning/Planner.ts';
import { jobInHand } from '../shared/jobInHand.ts';
import type { Session } from './session.ts';

/** The tabs of the book, in the order of the job. */
export const PAGES = [
  { page: 'yards', tab: 'Yards' },
  { page: 'ground', tab: 'Ground' },
  { page: 'outlines', tab: 'Outlines' },
  { page: 'mix', tab: 'Mix' },
  { page: 'walk', tab: 'Walk' },
  { page: 'sheet', tab: 'Sheet' },
] as const;

export type PageName = (typeof PAGES)[number]['page'];

/** Tools of the Ground page and of the Walk page; drawing itself is done on Outlines. */
const ELSEWHERE: ReadonlySet<Tool['kind']> = new Set([
  'scale-picture',
  'place-yard',
  'move-yard',
  'add-cut',
  'place-end',
]);

export interface ViewState {
  readonly page: PageName;
  readonly selection: Selection;
  readonly drawing: DrawingState;
  readonly lamp: Lamp;
  /** An earlier state laid beside the open yard; null when there is none. */
  readonly compared: Compared | null;
  /** The sketch of the Walk page shows how often the passes cover the ground. */
  readonly coverShown: boolean;
}

export interface Compared {
  readonly fileName: string;
  readonly earlier: Yard;
  readonly of: ComparedGround;
}

/**
 * What this window shows and holds in hand; none of it is in the yard file. The one place where a step of the
 * drawing meets the session: its edits go there, its selection stays here. A class because it has a lifetime.
 */
export class View {
  #state: ViewState = {
    page: 'yards',
    selection: null,
    drawing: AT_REST,
    lamp: readLamp(),
    compared: null,
    coverShown: false,
  };
  readonly #session: Session;
  readonly #planner: Pick<Planner, 'snapshot'>;
  #walkKnown: WalkContext | null = null;
  readonly #listeners = new Set<() => void>();
  /** Whether the person has turned a page yet. */
  #turned = false;

  constructor(session: Session, planner: Pick<Planner, 'snapshot'>) {
    this.#session = session;
    this.#planner = planner;
    this.#light();
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly snapshot = (): ViewState => this.#state;

  /** Where the book falls open by itself; a page the person has turned to stays. */
  readonly fallOpen = (page: PageName): void => {
    if (!this.#turned) this.#set({ page });
  };

  readonly go = (page: PageName): void => {
    this.#turned = true;
    if (page === this.#state.page) return;
    this.input({ kind: 'interrupted' });
    this.#session.putNotesAway();
    this.#set({ page });
  };

  readonly select = (selection: Selection): void => {
    this.#set({ selection });
    this.input({ kind: 'choose', selection });
  };

  /** Takes a tool in hand, on the page it belongs to. */
  readonly take = (tool: Tool): void => {
    if (!ELSEWHERE.has(tool.kind)) this.#set({ page: 'outlines' });
    this.input({ kind: 'take', tool });
  };

  readonly input = (input: DrawingInput): void => {
    const context = this.context();
    if (context === null) return;
    const next = step(this.#state.drawing, input, context);
    const selection = next.select === undefined ? this.#state.selection : next.select;
    this.#set({ drawing: next.state, selection });
    for (const edit of next.edits) this.#session.edit(edit);
  };

  /** Puts down whatever is in hand: another yard is opened. */
  readonly reset = (): void => {
    this.#set({ drawing: AT_REST, selection: null, compared: null });
  };

  /** Lays an earlier state beside the yard, or puts it away. */
  readonly compare = (compared: Compared | null): void => {
    this.#set({ compared });
  };

  readonly showCover = (coverShown: boolean): void => {
    this.#set({ coverShown });
  };

  /** What the drawing may know and do just now; null without a yard. */
  context(): DrawingContext | null {
    const { yard, file } = this.#session.snapshot();
    if (yard === null || file === null) return null;
    const mayEdit = !file.readOnly && (this.#state.page === 'outlines' || this.#state.page === 'ground');
    const walk = this.#walk(yard, !file.readOnly);
    return { yard, units: yard.details.unitSystem, mayEdit, walk, makeId: () => crypto.randomUUID() };
  }

  /** The walk of the job in hand, on its page. The same as long as nothing of it changes. */
  #walk(yard: Yard, mayEdit: boolean): WalkContext | null {
    const job = jobInHand(yard);
    if (this.#state.page !== 'walk' || job === undefined) return null;
    const plan = this.#planner.snapshot().plan?.ground ?? null;
    const known = this.#walkKnown;
    if (known !== null && known.job === job && known.plan === plan && known.mayEdit === mayEdit) return known;
    this.#walkKnown = { job, plan, mayEdit };
    return this.#walkKnown;
  }

  readonly turnLamp = (): void => {
    this.#set({ lamp: this.#state.lamp === 'day' ? 'night' : 'day' });
    keepLamp(this.#state.lamp);
    this.#light();
  };

  #light(): void {
    document.documentElement.dataset.page = this.#state.lamp;
  }

  #set(part: Partial<ViewState>): void {
    this.#state = { ...this.#state, ...part };
    for (const listener of this.#listeners) listener();
  }
}
