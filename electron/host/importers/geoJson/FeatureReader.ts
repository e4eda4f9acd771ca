import type { Problem } from '../../../../core/problems.ts';
import type { LonLat } from '../../../../core/spaces.ts';
import type { BroughtMark, BroughtOutline } from '../brought.ts';
import { kindOf, nameOf, type SaidKind } from './kindOf.ts';
import { type PositionFault, readPosition, readRing, type ToLonLat } from './readPositions.ts';

type Members = Readonly<Record<string, unknown>>;

/** Collections within collections deeper than this are no map anybody drew. */
const MOST_NESTING = 16;
/** A yard has hundreds of outlines and thousands of corners; these keep a hostile file from filling memory. */
const MOST_PARTS = 20_000;
const MOST_POSITIONS = 200_000;
/** A person mends these one by one; a longer list is not read. */
const MOST_PROBLEMS = 20;
/** Sorts of things passed over that are told of. */
const MOST_NOTES = 12;
/** Roles of the features in a plan written by `platpace plan --json`: results, not ground. */
const PLAN_ROLES: readonly unknown[] = ['net-area', 'section', 'cut-line', 'pass'];

/** Gathers outlines and marks from features one by one, and everything that is wrong with them. */
export class FeatureReader {
  readonly outlines: BroughtOutline[] = [];
  readonly marks: BroughtMark[] = [];
  readonly problems: Problem[] = [];
  readonly #fileName: string;
  readonly #toLonLat: ToLonLat;
  readonly #leftOut = new Map<string, number>();
  #positions = 0;
  #isOver = false;

  constructor(fileName: string, toLonLat: ToLonLat) {
    this.#fileName = fileName;
    this.#toLonLat = toLonLat;
  }

  /** True once reading on is pointless: too much in the file, or too much wrong with it. */
  get isOver(): boolean {
    return this.#isOver || this.problems.length >= MOST_PROBLEMS;
  }

  /** How many things of each sort were passed over, as sentences. */
  get notes(): readonly string[] {
    return [...this.#leftOut]
      .slice(0, MOST_NOTES)
      .map(([what, times]) => (times === 1 ? `Left out: ${what}.` : `Left out ${times} times: ${what}.`));
  }

  readFeature(value: unknown, index: number): void {
    const where = `feature ${index + 1}`;
    if (!isMembers(value) || value.type !== 'Feature') {
      this.#unreadable(`${where} is not a feature`);
      return;
    }
    const properties = isMembers(value.properties) ? value.properties : {};
    if (PLAN_ROLES.includes(properties.role)) {
      this.#leaveOut('a part of a plan, which is worked out anew');
      return;
    }
    if (value.geometry === null || value.geometry === undefined) {
      this.#leaveOut('a feature without a shape');
      return;
    }
    const name = nameOf(properties);
    this.readGeometry(
      value.geometry,
      kindOf(properties),
      name,
      name === null ? where : `${where} (“${name}”)`,
    );
  }

  readGeometry(geometry: unknown, kind: SaidKind, name: string | null, feature: string): void {
    if (kind.unknown !== null) this.#leaveOut(`the kind “${kind.unknown}”, which is not known here`);
    if (kind.slopeIsOdd) this.#leaveOut('a slope that is no grade (rise over run) from 0 to 2');
    const outlinesBefore = this.outlines.length;
    const marksBefore = this.marks.length;
    this.#walk(geometry, kind, name, feature, 0);
    numberParts(this.outlines, outlinesBefore);
    numberParts(this.marks, marksBefore);
  }

  #walk(geometry: unknown, kind: SaidKind, name: string | null, feature: string, depth: number): void {
    if (this.isOver) return;
    if (!isMembers(geometry)) {
      this.#broken(feature, 'it has no shape');
      return;
    }
    const { type, coordinates } = geometry;
    switch (type) {
      case 'Polygon':
        this.#polygon(coordinates, kind, name, feature);
        break;
      case 'MultiPolygon':
        this.#each(coordinates, feature, (part) => this.#polygon(part, kind, name, feature));
        break;
      case 'Point':
        this.#point(coordinates, kind, name, feature);
        break;
      case 'MultiPoint':
        this.#each(coordinates, feature, (part) => this.#point(part, kind, name, feature));
        break;
      case 'LineString':
      case 'MultiLineString':
        this.#leaveOut('a line; only outlines and points are read');
        break;
      case 'GeometryCollection':
        if (depth >= MOST_NESTING) {
          this.#unreadable(`${feature} has collections nested too deep`);
          return;
        }
        this.#each(geometry.geometries, feature, (part) => this.#walk(part, kind, name, feature, depth + 1));
        break;
      default:
        this.#broken(
          feature,
          `it has an unknown type of shape${typeof type === 'string' ? `, “${type.slice(0, 40)}”` : ''}`,
        );
    }
  }

  #each(parts: unknown, feature: string, read: (part: unknown) => void): void {
    if (!Array.isArray(parts)) {
      this.#broken(feature, 'it has no list of parts');
      return;
    }
    for (const part of parts) {
      if (this.isOver) return;
      read(part);
    }
  }

  #polygon(rings: unknown, kind: SaidKind, name: string | null, feature: string): void {
    if (kind.mark !== null) {
      this.#leaveOut(`an outline said to be a ${kind.mark}, which is a point`);
      return;
    }
    if (!Array.isArray(rings)) {
      this.#broken(feature, 'it has no list of rings');
      return;
    }
    if (rings.length === 0) {
      this.#leaveOut('an outline without a ring');
      return;
    }
    const read: (readonly LonLat[])[] = [];
    for (const [at, ring] of rings.entries()) {
      if (!this.#count(Array.isArray(ring) ? ring.length : 1)) return;
      const points = readRing(ring, this.#toLonLat);
      if ('kind' in points) {
        this.#fault(feature, at === 0 ? '' : `hole ${at}: `, points);
        return;
      }
      read.push(points);
    }
    const [outer = [], ...holes] = read;
    const { slopeGrade, keepOffM, claimsOverlaps, blocksHose } = kind;
    const said = { slopeGrade, keepOffM, claimsOverlaps, blocksHose };
    this.outlines.push({ kind: kind.outline ?? 'zone', name, feature, outer, holes, ...said });
  }

  #point(coordinates: unknown, kind: SaidKind, name: string | null, feature: string): void {
    if (kind.outline !== null) {
      this.#leaveOut(`a point said to be a ${kind.outline}, which has an outline`);
      return;
    }
    if (!this.#count(1)) return;
    const at = readPosition(coordinates, this.#toLonLat);
    if ('kind' in at) {
      this.#fault(feature, '', at);
      return;
    }
    this.marks.push({ kind: kind.mark ?? 'landmark', name, at });
  }

  #count(positions: number): boolean {
    this.#positions += positions;
    const isTooMuch =
      this.#positions > MOST_POSITIONS || this.outlines.length + this.marks.length >= MOST_PARTS;
    if (isTooMuch && !this.#isOver) {
      this.#unreadable('it holds more outlines and corners than a yard can have');
      this.#isOver = true;
    }
    return !isTooMuch;
  }

  #fault(feature: string, part: string, fault: PositionFault): void {
    if (fault.kind === 'broken') {
      this.#broken(feature, `${part}${fault.detail}`);
      return;
    }
    const { swappedLikely } = fault;
    const where = { fileName: this.#fileName };
    this.problems.push({ kind: 'file/coordinates-out-of-range', where, facts: { feature, swappedLikely } });
  }

  #broken(feature: string, detail: string): void {
    const where = { fileName: this.#fileName };
    this.problems.push({ kind: 'file/broken-ring', where, facts: { feature, detail } });
  }

  #unreadable(detail: string): void {
    this.problems.push({ kind: 'file/unreadable', where: { fileName: this.#fileName }, facts: { detail } });
  }

  #leaveOut(what: string): void {
    this.#leftOut.set(what, (this.#leftOut.get(what) ?? 0) + 1);
  }
}

export function isMembers(value: unknown): value is Members {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Several parts of one named feature become “name (1 of 3)” and so on. */
function numberParts(rows: { name: string | null }[] | (BroughtOutline | BroughtMark)[], from: number): void {
  const parts = rows.length - from;
  if (parts < 2) return;
  for (let at = from; at < rows.length; at++) {
    const row = rows[at];
    if (row?.name == null) continue;
    rows[at] = { ...row, name: `${row.name} (${at - from + 1} of ${parts})` } as never;
  }
}
