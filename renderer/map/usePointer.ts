import { useRef } from 'react';
import type { YardPoint } from '../../core/spaces.ts';
import type { DrawingInput, Pointing } from '../drawing/index.ts';
import type { LeafletMap } from './leafletMap.ts';

/** Snapping and grabbing distance on the screen: a fingertip is blunter than a mouse. */
const MOUSE_REACH_PX = 10;
const TOUCH_REACH_PX = 22;

type Told = (input: DrawingInput) => void;

/**
 * The pointer on the sketch: presses that take hold of a handle, moves (at most one a frame), letting go, and
 * being torn away. A class because it has a lifetime.
 */
class Pointer {
  readonly #canGrab: (at: YardPoint, reachM: number) => boolean;
  #map: LeafletMap | null = null;
  #listening: (() => Told) | null = null;
  #touch = false;
  #free = false;
  #holding: number | null = null;
  #grabbed = false;
  #away = true;
  #frame = 0;
  #next: YardPoint | null = null;

  constructor(canGrab: (at: YardPoint, reachM: number) => boolean) {
    this.#canGrab = canGrab;
  }

  /** Whether the click that follows belongs to a handle that was held. */
  wasGrab(): boolean {
    return this.#grabbed;
  }

  /** Whether the keyboard, not the pointer, was the last to point. */
  isAway(): boolean {
    return this.#away;
  }

  /** A key was used: the crosshair is the keyboard's until the pointer moves again. */
  keysPoint(): void {
    this.#away = true;
  }

  left(): void {
    if (this.#holding !== null) return;
    this.#away = true;
    this.#drop();
    this.#tell({ kind: 'leave' });
  }

  pointing(map: LeafletMap, at: YardPoint): Pointing {
    const reachPx = this.#touch ? TOUCH_REACH_PX : MOUSE_REACH_PX;
    return { at, reachM: reachPx * map.look().lens.metresPerPx, free: this.#free };
  }

  attach(element: HTMLElement | null, map: LeafletMap | null, listening: () => Told): () => void {
    this.#map = map;
    this.#listening = listening;
    if (element === null || map === null) return () => {};
    const down = (event: PointerEvent): void => this.#down(event, element, map);
    const move = (event: PointerEvent): void => this.#move(event, element, map);
    const up = (event: PointerEvent): void => this.#up(event, map);
    const cancel = (event: PointerEvent): void => this.#cancel(event, map);
    // Down in the capture phase, so that the map is told not to slide before it hears of the press.
    element.addEventListener('pointerdown', down, true);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerup', up);
    element.addEventListener('pointercancel', cancel);
    return () => {
      this.#drop();
      element.removeEventListener('pointerdown', down, true);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerup', up);
      element.removeEventListener('pointercancel', cancel);
    };
  }

  #down(event: PointerEvent, element: HTMLElement, map: LeafletMap): void {
    this.#grabbed = false;
    this.#note(event);
    if (event.button !== 0) return;
    const pointing = this.pointing(map, place(event, element, map));
    if (!this.#canGrab(pointing.at, pointing.reachM)) return;
    this.#grabbed = true;
    this.#holding = event.pointerId;
    element.setPointerCapture(event.pointerId);
    map.letSlide(false);
    this.#tell({ kind: 'press', ...pointing });
  }

  #move(event: PointerEvent, element: HTMLElement, map: LeafletMap): void {
    this.#note(event);
    // Sliding the map: the pointer stays over the same ground, there is nothing to follow.
    if (event.buttons !== 0 && this.#holding === null) return;
    this.#next = place(event, element, map);
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#flush());
  }

  #up(event: PointerEvent, map: LeafletMap): void {
    if (this.#holding !== event.pointerId) return;
    this.#flush();
    this.#holding = null;
    map.letSlide(true);
    this.#tell({ kind: 'release' });
  }

  #cancel(event: PointerEvent, map: LeafletMap): void {
    if (this.#holding !== event.pointerId) return;
    this.#drop();
    this.#holding = null;
    map.letSlide(true);
    this.#tell({ kind: 'interrupted' });
  }

  /** The last move of this frame, told once. */
  #flush(): void {
    const at = this.#next;
    this.#drop();
    if (at !== null && this.#map !== null) this.#tell({ kind: 'move', ...this.pointing(this.#map, at) });
  }

  #drop(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#next = null;
  }

  #note(event: PointerEvent): void {
    this.#away = false;
    this.#touch = event.pointerType === 'touch';
    this.#free = event.altKey;
  }

  #tell(input: DrawingInput): void {
    this.#listening?.()(input);
  }
}

function place(event: PointerEvent, element: HTMLElement, map: LeafletMap): YardPoint {
  const box = element.getBoundingClientRect();
  return map.toYard({ x: event.clientX - box.left, y: event.clientY - box.top });
}

/** One pointer for the life of the component. */
export function usePointer(canGrab: (at: YardPoint, reachM: number) => boolean): Pointer {
  const pointer = useRef<Pointer | null>(null);
  pointer.current ??= new Pointer(canGrab);
  return pointer.current;
}
