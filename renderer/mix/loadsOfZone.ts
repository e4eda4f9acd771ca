import type { SheetFigures } from '../../core/sheet/index.ts';

/** How many of the loads go on a zone, shared ones too, and its product as printed, so that zones and job agree. */
export function loadsOfZone(
  figures: Pick<SheetFigures, 'loads'>,
  zoneId: string,
): { readonly loads: number; readonly productL: number } {
  const own = figures.loads.filter((load) => load.section.zoneId === zoneId);
  const loads = new Set(own.map((load) => load.load));
  return { loads: loads.size, productL: own.reduce((sumL, load) => sumL + load.productL, 0) };
}
