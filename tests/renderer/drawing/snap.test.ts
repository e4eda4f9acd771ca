import { tracedRing } from '../../../core/curves/index.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceM } from '../../../core/kernel/index.ts';
import { type Snap, type SnapAsk, snapPoint } from '../../../renderer/drawing/snap.ts';
import { SnapIndex, snapIndexOf } from '../../../renderer/drawing/snapIndex.ts';
import { outline, points, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';

const yard = yardOf({
  outlines: [outline('building', 'house', rect(0, 0, 10, 8)), outline('bed', 'bed', rect(20, 0, 5, 5))],
  marks: [{ id: 'm', kind: 'landmark', name: 'post', at: { xM: -5, yM: 0 } }],
});

function snap(xM: number, yM: number, part: Partial<SnapAsk> = {}): Snap {
  return snapPoint(new SnapIndex(yard), { at: { xM, yM }, reachM: 0.5, chain: [], except: null, ...part });
}

describe('snapping', () => {
  test('a corner within reach wins over the edges that meet there, and is named', () => {
    expect(snap(10.3, 0.2)).toEqual({ at: { xM: 10, yM: 0 }, to: 'corner', words: 'corner of house' }); // its south-east corner
  });

  test('a mark is a place to snap to', () => {
    expect(snap(-5.1, 0.1)).toEqual({ at: { xM: -5, yM: 0 }, to: 'mark', words: 'post' }); // where it stands
  });

  test('an edge draws the point to its nearest place', () => {
    expect(snap(4, 8.3)).toEqual({ at: { xM: 4, yM: 8 }, to: 'edge', words: 'edge of house' }); // straight down on the north wall
  });

  test('nothing in reach leaves the point alone', () => {
    expect(snap(15, 4)).toEqual({ at: { xM: 15, yM: 4 }, to: 'nothing', words: '' }); // 5 m from anything
  });

  test('an outline does not snap to itself', () => {
    expect(snap(10.3, 0.2, { except: 'house' }).to).toBe('nothing');
  });

  test('the first corner closes from the third corner on, and not before', () => {
    const chain = points([50, 50], [60, 50], [60, 60]);
    expect(snap(50.2, 50.1, { chain }).to).toBe('first-corner');
    expect(snap(50.2, 50.1, { chain: chain.slice(0, 2) }).to).not.toBe('first-corner');
  });

  test('a right angle to the last edge is found', () => {
    const chain = points([50, 50], [60, 50]);
    expect(snap(60.3, 57, { chain })).toMatchObject({ at: { xM: 60, yM: 57 }, to: 'square' }); // due north of the last corner
  });

  test('straight on from the last edge is found', () => {
    const chain = points([50, 50], [60, 50]);
    expect(snap(70, 50.3, { chain })).toMatchObject({ at: { xM: 70, yM: 50 }, to: 'straight' }); // on the same line
  });

  test('where a right angle meets an edge, the place is on both', () => {
    const chain = points([-4, -9], [3, -9]);
    const snapped = snap(3.2, -0.2, { chain });
    expect(snapped).toMatchObject({ at: { xM: 3, yM: 0 }, to: 'square' }); // due north of (3, -9) on the south wall y = 0
    expect(snapped.words).toContain('edge of house');
  });

  test('never further than the reach, and never to something further than what it could have had', () => {
    const index = new SnapIndex(yard);
    const place = fc.double({ min: -15, max: 35, noNaN: true });
    const reach = fc.double({ min: 0, max: 3, noNaN: true });
    const corner = fc.record({ xM: place, yM: place });
    fc.assert(
      fc.property(corner, reach, fc.array(corner, { maxLength: 5 }), (at, reachM, chain) => {
        const snapped = snapPoint(index, { at, reachM, chain, except: null });
        expect(distanceM(snapped.at, at)).toBeLessThanOrEqual(reachM * (1 + 1e-9));
        if (snapped.to === 'corner') {
          for (const { outer } of yard.outlines) {
            for (const other of tracedRing(outer)) {
              expect(distanceM(snapped.at, at)).toBeLessThanOrEqual(distanceM(other, at));
            }
          }
        }
        expect(snapped.words === '').toBe(snapped.to === 'nothing');
      }),
      { seed: 11, numRuns: 500 },
    );
  });

  test('snapping twice gives the same place as snapping once', () => {
    const index = new SnapIndex(yard);
    const place = fc.double({ min: -15, max: 35, noNaN: true });
    fc.assert(
      fc.property(place, place, (xM, yM) => {
        const ask = { reachM: 0.5, chain: [], except: null };
        const once = snapPoint(index, { ...ask, at: { xM, yM } });
        const twice = snapPoint(index, { ...ask, at: once.at });
        // An edge may lead on to its own corner, which is nearer than the reach; a corner or mark stays.
        if (once.to === 'corner' || once.to === 'mark') expect(twice).toEqual(once);
      }),
      { seed: 12, numRuns: 500 },
    );
  });

  test('a yard is indexed once', () => {
    expect(snapIndexOf(yard)).toBe(snapIndexOf(yard));
  });
});
