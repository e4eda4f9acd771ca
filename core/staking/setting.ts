import type { TieSide } from '../tape/index.ts';
import type { NamedPoint } from './namedPoints.ts';

/** How a flag is set. Every distance is a whole number of steps of the tape, as it is printed. */
export type Setting = EdgeSetting | LineSetting | TapesSetting;

/** Along a straight side of an outline and, where `off` says so, then square to it. */
export interface EdgeSetting {
  readonly kind: 'edge';
  readonly corner: NamedPoint;
  readonly towards: NamedPoint;
  readonly alongM: number;
  /** Into the ground of the outline the side belongs to, or out of it. */
  readonly off: { readonly byM: number; readonly side: 'in' | 'out' } | null;
}

/** Along the straight line between two flags that stand already; past the second when it is farther than that. */
export interface LineSetting {
  readonly kind: 'line';
  readonly from: NamedPoint;
  readonly towards: NamedPoint;
  readonly alongM: number;
}

/** Where two tapes meet, on that side of the way from the first point to the second. */
export interface TapesSetting {
  readonly kind: 'tapes';
  readonly first: TapeFrom;
  readonly second: TapeFrom;
  readonly side: TieSide;
}

export interface TapeFrom {
  readonly point: NamedPoint;
  readonly tapeM: number;
}

/** A way to set a flag, where its printed figures put it, and how hard it is to do. */
export interface Way {
  readonly setting: Setting;
  readonly asSet: { readonly xM: number; readonly yM: number };
  /** Work and doubt, in tens of metres of tape. */
  readonly cost: number;
}
