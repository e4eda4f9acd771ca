import type { SheetFigures } from '../../core/sheet/index.ts';

/** How many of the loads are a zone's, and their product as printed, so that loads, zones and job agree. */
export function loadsOfZone(
  figures: Pick<SheetFigures, 'loads'>,
  zoneId: string,
): { readonly loads: number; readonly productL: number } {
  const own = figures.loads.filter((load) => load.section.zoneId === zoneId);
  return { loads: own.length, productL: own.reduce((sumL, load) => sumL + load.productL, 0) };
}
