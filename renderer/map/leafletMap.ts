import * as L from 'leaflet';
import type { YardPoint } from '../../core/spaces.ts';
import type { Xy } from '../drawing/index.ts';
import { Lens, type Sight } from './lens.ts';
import type { YardOnMap } from './yardOnMap.ts';

/** The whole 20 km a yard may reach, down to a blade of grass: at zoom 26 a pixel is about 2 mm of ground. */
const LEAST_ZOOM = 10;
const MOST_ZOOM = 26;
/** Room round the yard for dimensions and flags. */
const FIT_PADDING_PX = 56;

export interface Look {
  readonly lens: Lens;
  readonly sight: Sight;
}

/**
 * The Leaflet map under the sketch: it slides and zooms and holds the panes; everything seen is drawn by us.
 * A class because it has a lifetime.
 */
export class LeafletMap {
  readonly #map: L.Map;
  readonly #onMap: YardOnMap;
  #lens: Lens | null = null;
  readonly picturePane: HTMLElement;
  readonly inkPane: HTMLElement;

  constructor(element: HTMLElement, onMap: YardOnMap) {
    this.#onMap = onMap;
    this.#map = L.map(element, {
      crs: L.CRS.EPSG3857,
      minZoom: LEAST_ZOOM,
      maxZoom: MOST_ZOOM,
      zoomSnap: 0,
      zoomDelta: 0.5,
      wheelPxPerZoomLevel: 110,
      wheelDebounceTime: 20,
      zoomControl: false,
      attributionControl: false,
      keyboard: false,
      boxZoom: false,
      doubleClickZoom: false,
      zoomAnimation: false,
      fadeAnimation: false,
      markerZoomAnimation: false,
      inertia: false,
    });
    this.picturePane = this.#map.createPane('pictures');
    this.inkPane = this.#map.createPane('ink');
    this.#map.setView([this.#onMap.origin.latDeg, this.#onMap.origin.lonDeg], 20, { animate: false });
  }

  remove(): void {
    this.#map.remove();
  }

  /** Called after every slide and zoom; `onClick` only for a click that was not a slide. */
  watch(onLook: () => void, onClick: (containerPx: Xy) => void): void {
    this.#map.on('move zoomend resize viewreset', onLook);
    this.#map.on('click', (event) => onClick(event.containerPoint));
  }

  look(): Look {
    const zoom = this.#map.getZoom();
    const originPx = this.#map.getPixelOrigin();
    if (this.#lens === null || !this.#lens.isAt(zoom, originPx)) {
      this.#lens = new Lens(this.#onMap, zoom, { x: originPx.x, y: originPx.y });
    }
    const size = this.#map.getSize();
    const topLeft = this.#map.containerPointToLayerPoint([0, 0]);
    const sight = {
      left: topLeft.x,
      top: topLeft.y,
      right: topLeft.x + size.x,
      bottom: topLeft.y + size.y,
    };
    return { lens: this.#lens, sight };
  }

  toYard(containerPx: Xy): YardPoint {
    const layer = this.#map.containerPointToLayerPoint([containerPx.x, containerPx.y]);
    // Leaflet rounds the map's own place to whole pixels; the pointer keeps its fraction.
    return this.look().lens.fromLayer({ x: layer.x, y: layer.y });
  }

  centre(): YardPoint {
    const { sight, lens } = this.look();
    return lens.fromLayer({ x: (sight.left + sight.right) / 2, y: (sight.top + sight.bottom) / 2 });
  }

  fit(points: readonly YardPoint[]): void {
    const bounds = L.latLngBounds(
      points.map((point) => {
        const { lonDeg, latDeg } = this.#onMap.toLonLat(point);
        return [latDeg, lonDeg] as [number, number];
      }),
    );
    if (!bounds.isValid()) return;
    this.#map.fitBounds(bounds, {
      animate: false,
      padding: [FIT_PADDING_PX, FIT_PADDING_PX],
      maxZoom: 24,
    });
  }

  slide(rightPx: number, downPx: number): void {
    this.#map.panBy([rightPx, downPx], { animate: false });
  }

  zoomBy(by: number): void {
    this.#map.setZoom(this.#map.getZoom() + by, { animate: false });
  }

  /** Slides just far enough to have a point in sight. */
  bringInSight(at: YardPoint): void {
    const { lonDeg, latDeg } = this.#onMap.toLonLat(at);
    this.#map.panInside([latDeg, lonDeg], { padding: [40, 40], animate: false });
  }

  /** When one of the places that `must` be seen is out of sight, slides to it, or steps back to have them all in sight. */
  keepInSight(places: readonly YardPoint[], must: readonly YardPoint[]): void {
    const [only] = places;
    const onMap = (point: YardPoint): L.LatLngTuple => {
      const { lonDeg, latDeg } = this.#onMap.toLonLat(point);
      return [latDeg, lonDeg];
    };
    const sight = this.#map.getBounds();
    if (only === undefined || must.every((point) => sight.contains(onMap(point)))) return;
    const padding: L.PointTuple = [FIT_PADDING_PX, FIT_PADDING_PX];
    if (places.length < 2) this.bringInSight(only);
    // Never nearer than the person chose to look from.
    else {
      const maxZoom = this.#map.getZoom();
      this.#map.fitBounds(L.latLngBounds(places.map(onMap)), { animate: false, padding, maxZoom });
    }
  }

  /** While a handle is held the sketch must not slide along. */
  letSlide(may: boolean): void {
    if (may) this.#map.dragging.enable();
    else this.#map.dragging.disable();
  }

  sizeChanged(): void {
    this.#map.invalidateSize({ animate: false, pan: false });
  }
}
