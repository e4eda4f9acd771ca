import type { Outline, Traced, Yard } from '../../../core/yard.ts';

/** What of a yard a GeoJSON file of it does not carry, each counted; none is dropped without a word. */
export function leftBehindIn(yard: Yard): readonly string[] {
  const { pictures, elevations, checks, products, applicators, jobs, outlines } = yard;
  const of = (is: (outline: Outline) => boolean): number => outlines.filter(is).length;
  const counts: readonly (readonly [count: number, one: string, more: string])[] = [
    [pictures.length, 'picture', 'pictures'],
    [elevations.length, 'elevation grid', 'elevation grids'],
    [checks.length, 'taped check', 'taped checks'],
    [products.length, 'product', 'products'],
    [applicators.length, 'sprayer', 'sprayers'],
    [jobs.length, 'job', 'jobs'],
    [of(hasEdgeStrip), 'outline’s strip along an edge', 'outlines’ strips along an edge'],
    [of(isSureByItself), 'outline’s own accuracy', 'outlines’ own accuracy'],
  ];
  const words = counts
    .filter(([count]) => count > 0)
    .map(([count, one, more]) => `${count} ${count === 1 ? one : more}`);
  const curved = of(isCurved);
  return [
    ...words,
    ...(curved === 0
      ? []
      : [`the curves of ${curved} ${curved === 1 ? 'outline' : 'outlines'}, written as corners`]),
  ];
}

function rings({ outer, holes }: Outline): readonly Traced[] {
  return [outer, ...holes];
}

function hasEdgeStrip(outline: Outline): boolean {
  const alongEdge = (ring: Traced): boolean =>
    ring.kind === 'corners' && ring.corners.some(({ keepOffM }) => keepOffM !== undefined);
  return rings(outline).some(alongEdge);
}

function isCurved(outline: Outline): boolean {
  return rings(outline).some(
    (ring) => ring.kind !== 'corners' || ring.corners.some(({ run }) => run !== undefined),
  );
}

function isSureByItself({ placing }: Outline): boolean {
  return placing.sigmaM !== null || placing.pictureId !== null || placing.by !== 'hand';
}
