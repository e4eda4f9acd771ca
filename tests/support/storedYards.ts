import { straight, tracedRing } from '../../core/curves/index.ts';
import { createHash } from 'node:crypto';
import type { Edit } from '../../core/edits/index.ts';
import { newJob, newOutline, putRow } from '../../core/edits/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { Mark, Outline, Yard, YardFrame } from '../../core/yard.ts';
import type { NewImage } from '../../core/yardFile/index.ts';

/** An image of a few bytes; what is in them does not matter to a store. */
export function imageOf(content: Uint8Array): NewImage {
  const imageHash = createHash('sha256').update(content).digest('hex');
  return { imageHash, mediaType: 'image/png', bytes: content };
}

export const SKETCH = imageOf(Uint8Array.of(137, 80, 78, 71, 1, 2, 3));

export const PLACED: YardFrame = {
  kind: 'placed',
  origin: { lonDeg: -105.08123456789, latDeg: 40.58765432101 },
};

export function point(xM: number, yM: number): YardPoint {
  return { xM, yM };
}

/** Counter-clockwise rectangle outline with its lower left corner at (x, y). */
export function rectOutline(
  id: string,
  kind: Outline['kind'],
  x: number,
  y: number,
  width: number,
  height: number,
  holes: readonly Ring[] = [],
): Outline {
  const outer = [point(x, y), point(x + width, y), point(x + width, y + height), point(x, y + height)];
  return newOutline({ id, kind, name: `${kind} ${id}`, outer: straight(outer), holes: holes.map(straight) });
}

/** A yard with a row in every part and every table, and coordinates no decimal writes exactly. */
export function fullYard(frame: YardFrame = PLACED): Yard {
  const corner: Mark = { id: 'm2', kind: 'landmark', name: 'NW house corner', at: point(-1 / 3, 1e-300) };
  return {
    details: {
      id: 'yard',
      name: 'Maple Court 7 – “front & back”',
      groundDate: '2026-05-01',
      unitSystem: 'us',
      frame,
      cornerSigmaM: 0.05,
      overlapRule: 'smaller',
      amountsBy: 'surface',
    },
    pictures: [
      {
        id: 'p1',
        name: 'sketch.png',
        imageHash: SKETCH.imageHash,
        mediaType: 'image/png',
        widthPx: 640,
        heightPx: 480,
        placement: {
          kind: 'scaled',
          lengths: [
            { fromPx: { xPx: 0.5, yPx: 1 / 7 }, toPx: { xPx: 600, yPx: 1 / 7 }, lengthM: 30.48 },
            { fromPx: { xPx: 20, yPx: 10 }, toPx: { xPx: 20, yPx: 400 }, lengthM: 19.9 },
          ],
          corners: [point(-16, 12), point(16, 12), point(16, -12), point(-16, -12)],
        },
        attribution: 'drawn by hand',
        cornerSigmaM: null,
        scaleSigma: 1 / 300,
      },
    ],
    outlines: [
      rectOutline('z1', 'zone', 0, 0, 30.1, 20.7),
      rectOutline('b1', 'bed', 2, 2, Math.SQRT2, Math.PI),
      rectOutline('k1', 'keep-off', 0, 0, 30.1, 1),
      rectOutline('z2', 'zone', -40, 0, 20, 20, [
        [point(-30, 5), point(-30, 9), point(-26, 9), point(-26, 5)],
      ]),
      rectOutline('c1', 'check-plot', -39, 1, 2, 2),
      newOutline({
        id: 'z3',
        kind: 'zone',
        name: 'round the oak',
        outer: {
          kind: 'corners',
          corners: [
            { ...point(60, 0), run: { kind: 'arc', via: point(70.1, -2.3) } },
            { ...point(80, 0), keepOffM: 0.9 },
            { ...point(80, 20), run: { kind: 'smooth' } },
            { ...point(70, 23), run: { kind: 'smooth' }, keepOffM: 1 / 3 },
            point(60, 20),
          ],
        },
        holes: [{ kind: 'circle', centre: point(70, 10), radiusM: Math.SQRT1_2 }],
        placing: { by: 'picture', pictureId: 'p1', sigmaM: 0.12 },
        keepOffM: 1.5,
        slope: { kind: 'elevation', elevationId: 'e1' },
        claimsOverlaps: true,
        blocksHose: false,
      }),
      newOutline({
        id: 't1',
        kind: 'tree',
        name: 'oak',
        outer: { kind: 'ellipse', centre: point(90, 10), halfLengthM: 3, halfWidthM: 2, bearingDeg: 33.3 },
        slope: { kind: 'grade', grade: 1 / 7 },
      }),
      rectOutline('h1', 'hardscape', 28, 15, 5, 5),
    ],
    marks: [{ id: 'm1', kind: 'spigot', name: 'Spigot', at: point(30.1, 10) }, corner],
    elevations: [
      {
        id: 'e1',
        name: 'ground.tif',
        columns: 2,
        rows: 3,
        corners: [point(50, 30), point(90, 30), point(90, -10), point(50, -10)],
        heightsMm: [1000, 1250, null, 900, -12, 0],
      },
    ],
    checks: [{ id: 'x1', name: 'diagonal', from: point(0, 0), to: point(30.1, 20.7), tapedM: 36.55 }],
    products: [
      {
        id: 'f1',
        name: 'Green Sample 12-0-0',
        use: 'fertilizer',
        rateLPerM2: 0.00095,
        mostRateLPerM2: null,
        leastCarrierLPerM2: 0.04,
      },
    ],
    applicators: [
      {
        id: 'a1',
        name: 'hose-end',
        kind: 'hose-end',
        capacityL: 0.946352946,
        carrierLPerM2: 0.08,
        swathM: 1.8,
        paceMPerS: 0.7,
        stepM: 0.65,
      },
    ],
    jobs: [
      newJob({ id: 'j1', name: 'May', zoneIds: ['z1', 'z2'], productId: 'f1', applicatorId: 'a1' }),
      newJob({
        id: 'j2',
        name: 'June',
        productId: 'f1',
        applicatorId: 'a1',
        policy: 'fewest',
        heading: { kind: 'turned', lastDeg: 92.5, byDeg: 45 },
        rounds: 2,
        heldCuts: [{ id: 'c1', zoneId: 'z1', from: { xM: 1, yM: 0.5 }, to: { xM: 1, yM: 7.25 } }],
        startAt: { xM: -3, yM: 0.1 },
        finishAt: { xM: 4, yM: -2 },
        hose: { lengthM: 22.86, spigotIds: ['m1'], clearanceM: 0.15 },
      }),
    ],
  };
}

/** The edit that moves the first corner of an outline. */
export function moveCorner(yard: Yard, outlineId: string, to: YardPoint): Edit {
  const outline = yard.outlines.find((row) => row.id === outlineId);
  if (outline === undefined) throw new Error(`no outline ${outlineId}`);
  const moved = { ...outline, outer: straight([to, ...tracedRing(outline.outer).slice(1)]) };
  return { label: `move corner of ${outline.name}`, changes: [putRow(yard, 'outlines', moved)] };
}
