import type { DrawingContext, DrawingState } from './drawing.ts';

/** Whether a state has its place on the page that is open: the walk's on the page of the walk, the others where is drawn. */
export function mayStep(
  { kind }: DrawingState,
  { mayEdit, walk }: Pick<DrawingContext, 'mayEdit' | 'walk'>,
): boolean {
  if (kind === 'cut') return walk !== null;
  return kind === 'add-cut' || kind === 'place-end' ? walk?.mayEdit === true : mayEdit;
}
