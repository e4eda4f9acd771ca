import type { DrawingInput, DrawingState } from '../drawing/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { UnitSystem } from '../../core/yard.ts';
import type { LeafletMap } from './leafletMap.ts';
import { stepAtMost } from './niceSteps.ts';
import { readKey } from './readKey.ts';

/** One press of an arrow key goes about so far on the screen, rounded down to what a ruler shows. */
const ARROW_PX = 12;
const FINE_ARROW_PX = 1.5;

interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

/** Ctrl+M uncrosses what is in hand. */
export function isMend({ key, ctrlKey, metaKey, altKey }: KeyPress): boolean {
  return (ctrlKey || metaKey) && !altKey && key.toLowerCase() === 'm';
}

interface Sketching {
  readonly map: LeafletMap;
  readonly drawing: DrawingState | null;
  readonly units: UnitSystem;
  readonly onInput: (input: DrawingInput) => void;
  readonly places: () => readonly YardPoint[];
}

/** Does what a key asks of the sketch; false when it is none of its keys. */
export function sketchKey(press: KeyPress, sketching: Sketching): boolean {
  if (isMend(press)) {
    sketching.onInput({ kind: 'mend' });
    return true;
  }
  if (press.ctrlKey || press.metaKey || press.altKey) return false;
  const { map, drawing, units, onInput, places } = sketching;
  const { metresPerPx } = map.look().lens;
  const ask = readKey(press.key, press.shiftKey, {
    state: drawing,
    centre: map.centre(),
    stepM: stepAtMost(ARROW_PX * metresPerPx, units),
    fineStepM: stepAtMost(FINE_ARROW_PX * metresPerPx, units),
  });
  switch (ask?.kind) {
    case undefined:
      return false;
    case 'input':
      onInput(ask.input);
      return true;
    case 'slide':
      map.slide(ask.rightPx, ask.downPx);
      return true;
    case 'zoom':
      map.zoomBy(ask.by);
      return true;
    case 'fit':
      map.fit(places());
      return true;
  }
}
