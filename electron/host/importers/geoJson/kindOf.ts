import { MARK_KINDS, type MarkKind, OUTLINE_KINDS, type OutlineKind } from '../../../../core/yard.ts';

/** What a feature's `kind` says; `unknown` keeps a word that is none of ours. */
export interface SaidKind {
  readonly outline: OutlineKind | null;
  readonly mark: MarkKind | null;
  readonly unknown: string | null;
}

export function kindOf(properties: Readonly<Record<string, unknown>>): SaidKind {
  const said = properties.kind;
  if (typeof said !== 'string' || said.trim() === '') return { outline: null, mark: null, unknown: null };
  const word = said.trim().toLowerCase();
  const outline = OUTLINE_KINDS.find((kind) => kind === word) ?? null;
  const mark = MARK_KINDS.find((kind) => kind === word) ?? null;
  return { outline, mark, unknown: outline === null && mark === null ? said.trim().slice(0, 40) : null };
}

/** The feature's name, in whichever of the usual spellings; null when it has none. */
export function nameOf(properties: Readonly<Record<string, unknown>>): string | null {
  const said = [properties.name, properties.Name, properties.NAME].find(
    (each): each is string => typeof each === 'string' && each.trim() !== '',
  );
  return said === undefined ? null : said.trim().slice(0, 120);
}
