import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Problem } from '../../core/problems.ts';
import type { ResolvedYard } from '../../core/zones/index.ts';
import type { Yard } from '../../core/yard.ts';
import type { Planner, PlanState } from '../planning/Planner.ts';
import type { Session, SessionState } from './session.ts';
import type { View, ViewState } from './view.ts';

/** What every page of the book can reach. */
export interface Book {
  readonly session: Session;
  readonly planner: Planner;
  readonly view: View;
}

export const BookContext = createContext<Book | null>(null);

export function useBook(): Book {
  const book = useContext(BookContext);
  if (book === null) throw new Error('used outside the book');
  return book;
}

export function useSessionState(): SessionState {
  const { session } = useBook();
  return useSyncExternalStore(session.subscribe, session.snapshot);
}

export function usePlanState(): PlanState {
  const { planner } = useBook();
  return useSyncExternalStore(planner.subscribe, planner.snapshot);
}

export function useViewState(): ViewState {
  const { view } = useBook();
  return useSyncExternalStore(view.subscribe, view.snapshot);
}

/** What a page with an open yard works on: the yard as drawn this moment (a drag included) and its areas. */
export interface OpenYard {
  readonly yard: Yard;
  readonly resolved: ResolvedYard | null;
  /** What stands in the way of the areas, or what should be known about them. */
  readonly problems: readonly Problem[];
}

export const OpenYardContext = createContext<OpenYard | null>(null);

export function useOpenYard(): OpenYard {
  const open = useContext(OpenYardContext);
  if (open === null) throw new Error('used without an open yard');
  return open;
}
