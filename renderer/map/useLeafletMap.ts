import { type RefObject, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { YardFrame } from '../../core/yard.ts';
import type { Xy } from '../drawing/index.ts';
import { LeafletMap, type Look } from './leafletMap.ts';
import { YardOnMap } from './yardOnMap.ts';

export interface MapInPlace {
  readonly map: LeafletMap | null;
  readonly look: Look | null;
}

/** Puts a Leaflet map into an element for as long as the frame stays the same, and follows where it looks. */
export function useLeafletMap(
  element: RefObject<HTMLElement | null>,
  frame: YardFrame,
  onClick: (containerPx: Xy) => void,
): MapInPlace {
  const frameKey = frame.kind === 'placed' ? `${frame.origin.lonDeg},${frame.origin.latDeg}` : 'loose';
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the frame, which may be a new object
  const onMap = useMemo(() => new YardOnMap(frame), [frameKey]);
  const [inPlace, setInPlace] = useState<MapInPlace>({ map: null, look: null });
  const click = useRef(onClick);
  click.current = onClick;

  useLayoutEffect(() => {
    if (element.current === null) return;
    const map = new LeafletMap(element.current, onMap);
    const follow = (): void => setInPlace({ map, look: map.look() });
    map.watch(follow, (containerPx) => click.current(containerPx));
    const resized = new ResizeObserver(() => map.sizeChanged());
    resized.observe(element.current);
    follow();
    return () => {
      resized.disconnect();
      map.remove();
      setInPlace({ map: null, look: null });
    };
  }, [element, onMap]);
  return inPlace;
}
