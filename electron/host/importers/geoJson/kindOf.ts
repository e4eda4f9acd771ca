import { MOST_GRADE } from '../../../../core/slope/index.ts';
import { WIDEST_STRIP_M } from '../../../../core/zones/index.ts';
import { MARK_KINDS, type MarkKind, OUTLINE_KINDS, type OutlineKind } from '../../../../core/yard.ts';

/** What a feature says it is; `unknown` keeps a word that is none of ours. */
export interface SaidKind {
  readonly outline: OutlineKind | null;
  readonly mark: MarkKind | null;
  readonly unknown: string | null;
  /** Rise over run of a zone; null = not stated, or not as a grade. */
  readonly slopeGrade: number | null;
  /** Whether a slope is stated that is no grade a lawn can have. */
  readonly slopeIsOdd: boolean;
  /** Width of a strip all round; null = not stated, or not as a width. */
  readonly keepOffM: number | null;
  readonly claimsOverlaps: boolean;
  /** Whether a hose goes round it; null = not stated. */
  readonly blocksHose: boolean | null;
}

export function kindOf(properties: Readonly<Record<string, unknown>>): SaidKind {
  const said = properties.kind;
  const claimsOverlaps = properties.claimsOverlaps === true;
  const blocksHose = typeof properties.blocksHose === 'boolean' ? properties.blocksHose : null;
  const more = { ...slopeOf(properties), keepOffM: keepOffOf(properties), claimsOverlaps, blocksHose };
  if (typeof said !== 'string' || said.trim() === '') {
    return { outline: null, mark: null, unknown: null, ...more };
  }
  const word = said.trim().toLowerCase();
  const outline = OUTLINE_KINDS.find((kind) => kind === word) ?? null;
  const mark = MARK_KINDS.find((kind) => kind === word) ?? null;
  const unknown = outline === null && mark === null ? said.trim().slice(0, 40) : null;
  return { outline, mark, unknown, ...more };
}

function slopeOf({
  slopeGrade,
}: Readonly<Record<string, unknown>>): Pick<SaidKind, 'slopeGrade' | 'slopeIsOdd'> {
  if (slopeGrade === undefined || slopeGrade === null) return { slopeGrade: null, slopeIsOdd: false };
  const isGrade = typeof slopeGrade === 'number' && slopeGrade >= 0 && slopeGrade <= MOST_GRADE;
  return isGrade ? { slopeGrade, slopeIsOdd: false } : { slopeGrade: null, slopeIsOdd: true };
}

function keepOffOf({ keepOffM }: Readonly<Record<string, unknown>>): number | null {
  return typeof keepOffM === 'number' && keepOffM >= 0 && keepOffM <= WIDEST_STRIP_M ? keepOffM : null;
}

/** The feature's name, in whichever of the usual spellings; null when it has none. */
export function nameOf(properties: Readonly<Record<string, unknown>>): string | null {
  const said = [properties.name, properties.Name, properties.NAME].find(
    (each): each is string => typeof each === 'string' && each.trim() !== '',
  );
  return said === undefined ? null : said.trim().slice(0, 120);
}
