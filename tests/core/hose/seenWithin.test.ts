import { test } from 'vitest';
import { tracedRing } from '../../../core/curves/index.ts';
import { seenWithin } from '../../../core/hose/seenWithin.ts';
import { SightLines, signedAreaM2 } from '../../../core/kernel/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const areaM2 = (...seen: Parameters<typeof seenWithin>) =>
  signedAreaM2(tracedRing({ kind: 'corners', corners: seenWithin(...seen) }));

test('with nothing in the way a disc is seen, or the sector asked for', () => {
  const none = new SightLines([]);
  expectNear(areaM2(none, at(1, 1), null, 3), Math.PI * 9, 1e-6, 'm²'); // π r²
  expectNear(areaM2(none, at(1, 1), { fromRad: 3, sweepRad: 0.5 }, 4), 0.25 * 16, 1e-6, 'm²'); // ½ φ r²
});

test('a wall hides what lies behind it', () => {
  // A wall from (2, −50) up: of the disc of 4 m what is left of x = 2 is seen.
  const wall = new SightLines([region(rect(2, -50, 1, 100))]);
  const segmentM2 = 16 * Math.acos(0.5) - 2 * Math.sqrt(16 - 4); // r² acos(d/r) − d √(r² − d²), d = 2
  expectNear(areaM2(wall, at(0, 0), null, 4), Math.PI * 16 - segmentM2, 1e-6, 'm²');
});

test('a post hides its shadow', () => {
  // Seen from the origin a square of 2 m beginning at x = 4 hides what lies behind its near side, from atan(−1/4) to atan(1/4).
  const post = new SightLines([region(rect(4, -1, 2, 2))]);
  const shadowM2 = Math.atan(1 / 4) * 100 - 4; // ½ · 2 atan(1/4) · 10² less the triangle in front, ½ · 2 · 4
  expectNear(areaM2(post, at(0, 0), null, 10), Math.PI * 100 - shadowM2, 1e-6, 'm²');
});
