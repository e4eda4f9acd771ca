/** Ground over a load by less than this part of it is rounding and asks for no further load. */
export const LOAD_SLACK = 1e-9;

/** How many loads ground takes, cut anywhere: at least one. Both areas in the same terms. */
export function loadsFor(areaM2: number, loadAreaM2: number): number {
  return Math.max(1, Math.ceil(areaM2 / loadAreaM2 - LOAD_SLACK));
}
