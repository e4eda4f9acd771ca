import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceM, regionAreaM2, regionsAreaM2, unionRegions } from '../../../core/kernel/index.ts';
import { partByHeldCuts } from '../../../core/sections/heldCuts.ts';
import { planSections } from '../../../core/sections/index.ts';
import type { Region, YardPoint } from '../../../core/spaces.ts';
import type { HeldCut } from '../../../core/yard.ts';
import { rect, region, points } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomGround } from '../../support/randomGround.ts';

function held(id: string, from: readonly [number, number], to: readonly [number, number]): HeldCut {
  return {
    id,
    zoneId: 'front',
    from: { xM: from[0], yM: from[1] },
    to: { xM: to[0], yM: to[1] },
  };
}

function areasOf(parts: readonly Region[]): number[] {
  return parts.map((part) => Math.round(regionAreaM2(part) * 1e6) / 1e6).sort((a, b) => a - b);
}

const LAWN = region(rect(0, 0, 30, 10));
const ACROSS = held('across', [10, 0], [10, 10]);
const ALONG = held('along', [10, 5], [30, 5]);

describe('a cut that is held', () => {
  test('parts the ground where it was put', () => {
    const { parts, cuts, idle } = partByHeldCuts([LAWN], [ACROSS]);
    expect(areasOf(parts)).toEqual([100, 200]); // 10 x 10 m, 20 x 10 m
    expect(cuts).toEqual([{ from: { xM: 10, yM: 0 }, to: { xM: 10, yM: 10 }, heldId: 'across' }]);
    expect(idle).toEqual([]);
  });

  test.each([[[ACROSS, ALONG]], [[ALONG, ACROSS]]])(
    'ends on the other one it ended on, whichever was put first (%#)',
    (both) => {
      const { parts } = partByHeldCuts([LAWN], both);
      expect(areasOf(parts)).toEqual([100, 100, 100]); // 10 x 10 m, and 20 x 5 m twice: the west part stays whole
    },
  );

  test('is cut in two by one it crosses, and stands on both sides of it', () => {
    const { parts, cuts } = partByHeldCuts([LAWN], [ACROSS, held('long', [0, 5], [30, 5])]);
    expect(areasOf(parts)).toEqual([50, 50, 100, 100]); // 10 x 5 m twice, 20 x 5 m twice
    expect(cuts.map((cut) => cut.heldId).sort()).toEqual(['across', 'long', 'long']);
  });

  test('goes on to the edge when the outline was moved out, and stops at it when it was moved in', () => {
    const wider = region(rect(0, -3, 30, 15));
    expect(areasOf(partByHeldCuts([wider], [ACROSS]).parts)).toEqual([150, 300]); // 10 x 15 m, 20 x 15 m
    const lower = region(rect(0, 2, 30, 4));
    expect(areasOf(partByHeldCuts([lower], [ACROSS]).parts)).toEqual([40, 80]); // 10 x 4 m, 20 x 4 m
  });

  test('goes over a bed in two runs', () => {
    const withBed = region(rect(0, 0, 30, 10), rect(8, 4, 4, 2));
    const { parts, cuts } = partByHeldCuts([withBed], [ACROSS]);
    expect(areasOf(parts)).toEqual([96, 196]); // each less its half of the 4 x 2 m bed
    expect(cuts.length).toBe(2); // south and north of the bed
  });

  test('leaves ground it was not put on, though its line goes over it', () => {
    // Two arms up from a bar; the cut lies across the left one only.
    const fork = region(points([0, 0], [20, 0], [20, 10], [15, 10], [15, 4], [5, 4], [5, 10], [0, 10]));
    const { parts, cuts } = partByHeldCuts([fork], [held('left', [0, 7], [5, 7])]);
    expect(areasOf(parts)).toEqual([15, 125]); // 5 x 3 m; 20 x 4 + 2 x 5 x 6 - 15 m²
    expect(cuts.length).toBe(1);
  });

  test('takes off both arms when it was put across both', () => {
    const fork = region(points([0, 0], [20, 0], [20, 10], [15, 10], [15, 4], [5, 4], [5, 10], [0, 10]));
    const { parts } = partByHeldCuts([fork], [held('both', [0, 7], [20, 7])]);
    expect(areasOf(parts)).toEqual([15, 15, 110]); // 5 x 3 m twice; 140 - 30 m²
  });

  test('parts nothing off the ground, along its edge, twice in one place, or without length', () => {
    const useless = [
      held('off', [50, 0], [50, 10]),
      held('edge', [0, 0], [0, 10]),
      held('again', [10, 0], [10, 10]),
      held('point', [5, 5], [5, 5]),
      held('spot', [20, -30], [20, 3]),
    ];
    const { parts, idle } = partByHeldCuts([LAWN], [ACROSS, ...useless]);
    expect(areasOf(parts)).toEqual([100, 200]); // as by the first alone
    expect(idle.map((cut) => cut.id).sort()).toEqual(['again', 'edge', 'off', 'point', 'spot']);
  });
});

/** Straight cuts through random places of the ground, long enough to go from edge to edge. */
const someCuts = fc.array(
  fc.record({
    part: fc.nat(7),
    along: fc.double({ min: 0, max: 1, noNaN: true }),
    turn: fc.double({ min: 0, max: 3.1, noNaN: true }),
  }),
  { maxLength: 4 },
);

describe('laws of held cuts on random yards', () => {
  test('sections are connected, within the load, disjoint, and sum to the zone, and the cuts stand where they were', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4000 }),
        someCuts,
        fc.constantFrom('even', 'fewest'),
        (seed, said, policy) => {
          const ground = randomGround(seed, 8 + (seed % 20), seed % 5);
          const wholeM2 = regionsAreaM2(ground);
          const loadAreaM2 = wholeM2 / (1.5 + (seed % 5));
          const heldCuts = said.map(({ part, along, turn }, i): HeldCut => {
            const ring = (ground[part % ground.length] as Region).outer;
            const [a, b] = [ring[0], ring[Math.floor(ring.length / 2)]] as [YardPoint, YardPoint];
            const at = { xM: a.xM + (b.xM - a.xM) * along, yM: a.yM + (b.yM - a.yM) * along };
            const [x, y] = [Math.cos(turn) * 30, Math.sin(turn) * 30];
            return held(`c${i}`, [at.xM - x, at.yM - y], [at.xM + x, at.yM + y]);
          });
          const planned = planSections(
            { zoneId: 'front', zoneName: 'Front', letter: 'A', treated: ground },
            {
              loadAreaM2,
              policy,
              headingDeg: null,
              swathM: Math.sqrt(loadAreaM2) / 10,
              markM: 0.1,
              heldCuts,
            },
          );
          if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
          const { sections, cuts, idle, filling } = planned.value;
          for (const section of sections) {
            expect(section.areaM2).toBeLessThanOrEqual(loadAreaM2 * (1 + 1e-9));
            expect(unionRegions([section.region]).filter((part) => regionAreaM2(part) > 1e-3).length).toBe(1); // connected
          }
          const regions = sections.map((section) => section.region);
          expectNear(regionsAreaM2(regions), wholeM2, 1e-8 * wholeM2, 'm²'); // the law: nothing lost in sum
          expectNear(regionsAreaM2(unionRegions(regions)), wholeM2, 1e-5 * wholeM2, 'm²'); // nor counted twice
          expect([...filling].sort()).toEqual(sections.map(({ id }) => id).sort());
          for (const { id, from, to } of heldCuts) {
            const own = cuts.filter((cut) => cut.heldId === id);
            expect(own.length > 0).toBe(!idle.some((cut) => cut.id === id));
            const lengthM = distanceM(from, to);
            for (const at of own.flatMap((cut) => [cut.from, cut.to])) {
              const offM =
                ((at.xM - from.xM) * (to.yM - from.yM) - (at.yM - from.yM) * (to.xM - from.xM)) / lengthM;
              expectNear(offM, 0, 1e-6, 'm'); // the law: on the line it was put on
            }
          }
        },
      ),
      { seed: 4, numRuns: 60 },
    );
  });
});
