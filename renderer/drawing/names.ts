import type { MarkKind, OutlineKind, Yard } from '../../core/yard.ts';

/** The kinds as the screen says them. */
export const OUTLINE_WORDS: Readonly<Record<OutlineKind, string>> = {
  zone: 'zone',
  bed: 'bed',
  hardscape: 'hardscape',
  building: 'building',
  water: 'water',
  tree: 'tree ring',
  'keep-off': 'keep-off strip',
  'check-plot': 'check plot',
};

export const MARK_WORDS: Readonly<Record<MarkKind, string>> = { spigot: 'spigot', landmark: 'landmark' };

/** The first free name of a kind: "Zone 1", "Bed 2". */
export function nextName(yard: Yard, kind: OutlineKind | MarkKind): string {
  const words: Readonly<Record<string, string>> = { ...OUTLINE_WORDS, ...MARK_WORDS };
  const word = words[kind] ?? kind;
  const base = `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
  const taken = new Set([...yard.outlines, ...yard.marks].map(({ name }) => name));
  let number = 1;
  while (taken.has(`${base} ${number}`)) number += 1;
  return `${base} ${number}`;
}
