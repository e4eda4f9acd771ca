import type { MarkKind, OutlineKind } from '../../core/yard.ts';

/** What the page calls each kind of thing that is drawn. */
export const KIND_WORDS: Readonly<Record<OutlineKind | MarkKind, string>> = {
  zone: 'zone',
  bed: 'bed',
  hardscape: 'hardscape',
  building: 'building',
  water: 'water',
  tree: 'tree ring',
  'keep-off': 'keep-off strip',
  'check-plot': 'check plot',
  spigot: 'spigot',
  landmark: 'landmark',
};
