/** The kinds of sprayer, as the page says them. */
export const APPLICATOR_KINDS = [
  ['hose-end', 'hose-end sprayer'],
  ['tank', 'backpack or tank sprayer'],
] as const;
