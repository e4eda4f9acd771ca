import { expect, test } from 'vitest';
import { GROUND_INK, OVERLAP_INK } from '../../../core/sheet/hatch.ts';
import { drawGround, drawPictures, outlineToPage } from '../../../core/sheet/mapGround.ts';
import { regionToPage, viewOf, yardToPage } from '../../../core/sheet/mapView.ts';
import type { Region } from '../../../core/spaces.ts';
import type { Outline, Picture } from '../../../core/yard.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';

const { yard, plan } = handMadePlan(THREE_ZONES);
const VIEW = viewOf(
  { minXM: 0, minYM: 0, maxXM: 40, maxYM: 30 },
  { xMm: 10, yMm: 10, widthMm: 180, heightMm: 200 },
  240,
);

const NONE = { overlaps: [], strips: [] };

test('a building is painted after the zone whose edge its wall is', () => {
  const edges = drawGround(VIEW, yard, [], NONE).map((mark) => (mark.kind === 'path' ? mark.stroke : null));
  const lastZone = edges.lastIndexOf(GROUND_INK.zone.edge);
  expect(lastZone).toBeGreaterThanOrEqual(0);
  expect(edges.indexOf(GROUND_INK.building.edge)).toBeGreaterThan(lastZone);
});

test('every outline of the yard is drawn with its own edge', () => {
  const edges = drawGround(VIEW, yard, [], NONE).flatMap((mark) =>
    mark.kind === 'path' && mark.stroke !== null ? [[mark.stroke, mark.subpaths] as const] : [],
  );
  for (const outline of yard.outlines) {
    expect(edges).toContainEqual([GROUND_INK[outline.kind].edge, outlineToPage(VIEW, outline)]);
  }
});

test('shared ground and strips lie on the zones and under what is drawn on them', () => {
  const regions = [{ outer: straightSquare(), holes: [] }];
  const overlaps = [{ ownerId: 'a', otherId: 'b', by: 'larger', areaM2: 1, regions }] as const;
  const strips = [{ outlineId: 'a', strips: [], regions }];
  const marks = drawGround(VIEW, yard, [], { overlaps, strips });
  const strokes = marks.map((mark) => (mark.kind === 'path' ? mark.stroke : null));
  const at = strokes.indexOf(OVERLAP_INK.edge);
  expect(at).toBeGreaterThan(strokes.lastIndexOf(GROUND_INK.zone.edge));
  expect(at).toBeLessThan(strokes.indexOf(GROUND_INK.building.edge));
  expect(strokes.indexOf(GROUND_INK['keep-off'].edge)).toBeGreaterThan(at);
  const [hatch] = marks.slice(at - 1);
  expect(hatch).toMatchObject({ kind: 'clip', subpaths: regionToPage(VIEW, regions[0] as Region) });
});

function straightSquare() {
  return [
    { xM: 1, yM: 1 },
    { xM: 5, yM: 1 },
    { xM: 5, yM: 5 },
    { xM: 1, yM: 5 },
  ];
}

test('each section is tinted with its holes left out', () => {
  const regions = plan.ground.sections.map((section) => section.region);
  const [first] = drawGround(VIEW, yard, regions, NONE);
  expect(first?.kind === 'path' ? first.subpaths.length : 0).toBe(1 + (regions[0]?.holes.length ?? 0)); // outer ring and holes
});

test('holes of an outline are drawn with it', () => {
  const zone = yard.outlines[0] as Outline;
  expect(outlineToPage(VIEW, { ...zone, holes: [zone.outer] })).toHaveLength(2); // outer ring and one hole
});

test('pictures with a place are laid by three corners; those without a scale are left out', () => {
  const corners = [
    { xM: 0, yM: 30 },
    { xM: 40, yM: 30 },
    { xM: 40, yM: 0 },
    { xM: 0, yM: 0 },
  ] as const;
  const picture: Picture = {
    id: 'b',
    name: 'plan',
    imageHash: 'ab',
    mediaType: 'image/png',
    widthPx: 400,
    heightPx: 300,
    placement: { kind: 'georeferenced', crs: 'EPSG:32615', corners },
    attribution: '',
    cornerSigmaM: null,
    scaleSigma: null,
  };
  const unscaled: Picture = { ...picture, id: 'c', placement: { kind: 'unscaled' } };
  const drawn = drawPictures(VIEW, { ...yard, pictures: [picture, unscaled] }, 0.3);
  const places = [corners[0], corners[1], corners[3]].map((corner) => yardToPage(VIEW, corner));
  expect(drawn).toEqual([{ kind: 'picture', imageHash: 'ab', corners: places, opacity: 0.3 }]);
});
