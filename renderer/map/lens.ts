import type { Region, Ring, YardPoint } from '../../core/spaces.ts';
import type { Xy } from '../drawing/index.ts';
import type { YardOnMap } from './yardOnMap.ts';

/**
 * One zoom of the sketch: from yard metres to the pixels of the map's own layer, whose origin moves only when
 * the zoom does. What is drawn through the same lens need not be drawn again when the map slides.
 */
export class Lens {
  readonly map: YardOnMap;
  readonly zoom: number;
  readonly metresPerPx: number;
  readonly #scale: number;
  readonly #originPx: Xy;

  constructor(map: YardOnMap, zoom: number, originPx: Xy) {
    this.map = map;
    this.zoom = zoom;
    this.metresPerPx = map.metresPerPx(zoom);
    this.#scale = 2 ** zoom;
    this.#originPx = originPx;
  }

  isAt(zoom: number, originPx: Xy): boolean {
    return zoom === this.zoom && originPx.x === this.#originPx.x && originPx.y === this.#originPx.y;
  }

  toLayer(at: YardPoint): Xy {
    const { x, y } = this.map.toWorld(at);
    return { x: x * this.#scale - this.#originPx.x, y: y * this.#scale - this.#originPx.y };
  }

  fromLayer(at: Xy): YardPoint {
    return this.map.fromWorld({
      x: (at.x + this.#originPx.x) / this.#scale,
      y: (at.y + this.#originPx.y) / this.#scale,
    });
  }

  /** SVG path of a line; a ring closes. Pixels to a hundredth, which no screen shows. */
  path(line: Ring, closed: boolean): string {
    const flat = this.map.ringToWorld(line);
    let d = '';
    for (let i = 0; i < flat.length; i += 2) {
      const x = (flat[i] ?? 0) * this.#scale - this.#originPx.x;
      const y = (flat[i + 1] ?? 0) * this.#scale - this.#originPx.y;
      d += `${i === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`;
    }
    return closed && d !== '' ? `${d}Z` : d;
  }

  rings(rings: readonly Ring[]): string {
    return rings.map((ring) => this.path(ring, true)).join('');
  }

  regions(regions: readonly Region[]): string {
    return regions.map(({ outer, holes }) => this.rings([outer, ...holes])).join('');
  }
}

/** The part of the layer in sight, in layer pixels. */
export interface Sight {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
