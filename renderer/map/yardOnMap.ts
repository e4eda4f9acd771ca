import { lonLatToYard, yardToLonLat } from '../../core/earth/index.ts';
import type { LonLat, Ring, YardPoint } from '../../core/spaces.ts';
import type { YardFrame } from '../../core/yard.ts';
import type { Xy } from '../drawing/index.ts';

/** Where a loose yard is drawn: round latitude 0, longitude 0, so that one code path serves both kinds. */
const NOWHERE: LonLat = { lonDeg: 0, latDeg: 0 };

/** The web map's plane ends at 85.05° and is stretched eleven times there; a yard beyond this is drawn as a loose one is. */
const MOST_LAT_DEG = 84;

/** Web-map pixels of the whole world at zoom 0, as Leaflet counts them. */
const WORLD_PX = 256;

/**
 * Carries yard metres to the web map's own plane and back. For drawing only: this plane stretches with
 * latitude and nothing is measured in it. Kept as a class because rings are projected once and remembered.
 */
export class YardOnMap {
  readonly origin: LonLat;
  readonly #rings = new WeakMap<Ring, Float64Array>();
  /** Corners outlive the rings they are in: while one is dragged, all the others are the same objects. */
  readonly #points = new WeakMap<YardPoint, Xy>();

  constructor(frame: YardFrame) {
    const onMap = frame.kind === 'placed' && Math.abs(frame.origin.latDeg) <= MOST_LAT_DEG;
    this.origin = onMap ? frame.origin : NOWHERE;
  }

  /** Longitudes run on past 180° on the far side of the antimeridian: a yard across it is drawn in one piece. */
  toLonLat(at: YardPoint): LonLat {
    const { lonDeg, latDeg } = yardToLonLat(this.origin, at);
    return { lonDeg: lonDeg - 360 * Math.round((lonDeg - this.origin.lonDeg) / 360), latDeg };
  }

  /** Web-map pixels at zoom 0. */
  toWorld(at: YardPoint): Xy {
    const known = this.#points.get(at);
    if (known !== undefined) return known;
    const world = this.#project(at);
    this.#points.set(at, world);
    return world;
  }

  #project(at: YardPoint): Xy {
    const { lonDeg, latDeg } = this.toLonLat(at);
    const sin = Math.sin((latDeg * Math.PI) / 180);
    return {
      x: WORLD_PX * (lonDeg / 360 + 0.5),
      y: WORLD_PX * (0.5 - Math.atanh(sin) / (2 * Math.PI)),
    };
  }

  fromWorld(at: Xy): YardPoint {
    const lonDeg = (at.x / WORLD_PX - 0.5) * 360;
    const latDeg = (Math.asin(Math.tanh((0.5 - at.y / WORLD_PX) * 2 * Math.PI)) * 180) / Math.PI;
    return lonLatToYard(this.origin, { lonDeg, latDeg });
  }

  /** x0, y0, x1, y1, … of a ring or line, web-map pixels at zoom 0. */
  ringToWorld(ring: Ring): Float64Array {
    const known = this.#rings.get(ring);
    if (known !== undefined) return known;
    const flat = new Float64Array(ring.length * 2);
    for (const [i, corner] of ring.entries()) {
      const { x, y } = this.toWorld(corner);
      flat[2 * i] = x;
      flat[2 * i + 1] = y;
    }
    this.#rings.set(ring, flat);
    return flat;
  }

  /** Ground metres that one pixel spans at a zoom, in the middle of the yard. */
  metresPerPx(zoom: number): number {
    const a = this.fromWorld(this.toWorld({ xM: 0, yM: 0 }));
    const here = this.toWorld(a);
    const there = this.fromWorld({ x: here.x + 1e-4, y: here.y });
    return Math.hypot(there.xM - a.xM, there.yM - a.yM) / 1e-4 / 2 ** zoom;
  }
}
