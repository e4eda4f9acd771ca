import { describe, expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { type Leg, walkedChain } from '../../../core/tape/index.ts';
import { placed } from '../../../core/tape/place.ts';
import { expectNear } from '../../support/expectNear.ts';
import { normalFrom } from '../../support/normal.ts';
import { seededRandom } from '../../support/randomYards.ts';
import { AWAY, EAST, kindsOf, given } from '../../support/taped.ts';

/** Latitude and departure of each leg: exercise, "Module 5 Fundamentals of Surveying". */
const LATITUDES_AND_DEPARTURES = [
  [490.71, 47.27],
  [587.12, 608.89],
  [-327.41, 786.78],
  [-1002.76, 218.32],
  [-122.67, -1116.62],
  [375.01, -544.64],
] as const;

/** Out from the middle of an octagon. */
const ALONG = { alongM: 20, leftM: 0 };

const toBearing = (lengthM: number, deg: number): Leg => ({ lengthM, direction: { kind: 'bearing', deg } });
const turned = (lengthM: number, rightDeg: number): Leg => ({
  lengthM,
  direction: { kind: 'turn', rightDeg },
});

describe('a walked chain', () => {
  test('that closes holds the area of its latitudes and departures', () => {
    const legs = LATITUDES_AND_DEPARTURES.map(([latitude, departure]) =>
      toBearing(Math.hypot(latitude, departure), (Math.atan2(departure, latitude) * 180) / Math.PI),
    );
    const chain = given(walkedChain(legs, AWAY.at));
    // the same exercise: double meridian distances give 1,715,096.27
    expectNear(signedAreaM2(chain.ring), 1_715_096.27, 0.01, 'm²');
    expectNear(chain.misclosure.lengthM, 0, 1e-9, 'm'); // the columns sum to 0, 0
    expect(chain.oneIn).toBeNull();
    expect(chain.cautions).toEqual([]);
  });

  test('shares its misclosure out by the lengths walked', () => {
    // A square of 10 m, the third leg taped 0.4 m too long.
    const chain = given(
      walkedChain([toBearing(10, 90), turned(10, -90), turned(10.4, -90), turned(10, -90)], EAST.at),
    );
    expectNear(chain.misclosure.eastM, -0.4, 1e-12, 'm'); // by hand: 10 − 10.4
    expectNear(chain.misclosure.northM, 0, 1e-12, 'm'); // by hand: 10 − 10
    expectNear(chain.oneIn ?? 0, 101, 1e-9, 'to one'); // by hand: 40.4 / 0.4
    expect(chain.cautions).toEqual([]);
    // by hand: 0.4 m east × 10, 20 and 30.4 of 40.4
    const expected = [0, 10 + 4 / 40.4, 10 + 8 / 40.4, -0.4 + 12.16 / 40.4];
    chain.ring.forEach(({ xM }, i) => {
      expectNear(xM, expected[i] as number, 1e-12, 'm');
    });
    expect(chain.ring).toHaveLength(4);
  });

  test('goes straight on where no direction is given', () => {
    const on: Leg = { lengthM: 5, direction: { kind: 'on' } };
    const chain = given(
      walkedChain([toBearing(5, 90), on, toBearing(10, 0), toBearing(10, 270), turned(10, -90)], EAST.at),
    );
    expectNear(signedAreaM2(chain.ring), 100, 1e-9, 'm²'); // by hand: 10 × 10
  });

  test('that runs clockwise is turned and keeps its start', () => {
    const chain = given(walkedChain([toBearing(3, 0), toBearing(4, 90), toBearing(5, 233.1301)], AWAY.at));
    expect(chain.ring[0]).toEqual(AWAY.at);
    expectNear(signedAreaM2(chain.ring), 6, 1e-3, 'm²'); // closed form: 3-4-5 triangle
  });

  test('with a leg left out is drawn with a caution', () => {
    const chain = given(walkedChain([toBearing(10, 90), turned(10, -90), turned(10, -90)], EAST.at));
    expect(chain.cautions.map(({ kind }) => kind)).toEqual(['value/closes-badly']);
    expectNear(chain.oneIn ?? 0, 3, 1e-9, 'to one'); // by hand: 30 walked, 10 missing
  });

  test('says how sure its corners are: as sure as errors played out at random leave them', () => {
    const normal = normalFrom(seededRandom(7));
    const n = 8;
    const truth = Array.from({ length: n }, (_, i) =>
      placed({ at: EAST.at, bearingDeg: (360 * i) / n }, ALONG),
    );
    const rounds = 4000;
    let [statedM2, realM2] = [0, 0];
    for (let round = 0; round < rounds; round += 1) {
      const legs = truth.map((from, i) => {
        const to = truth[(i + 1) % n] ?? from;
        const [east, north] = [to.xM - from.xM + 0.05 * normal(), to.yM - from.yM + 0.05 * normal()];
        return toBearing(Math.hypot(east, north), (Math.atan2(east, north) * 180) / Math.PI);
      });
      const chain = given(walkedChain(legs, truth[0] ?? EAST.at));
      statedM2 += chain.cornerSigmaM ** 2;
      for (const corner of chain.ring) {
        // The corners run the other way round from how they were walked; the nearest true one is its own.
        const missedM = Math.min(...truth.map((at) => Math.hypot(at.xM - corner.xM, at.yM - corner.yM)));
        realM2 += missedM ** 2 / (2 * n);
      }
    }
    // simulation, 4,000 rounds of 5 cm a leg: the mean squares agree to a few parts in √4000
    expectNear(Math.sqrt(statedM2 / realM2), 1, 0.03, 'of what was played out');
    // closed form for n = 8: e √((1 − 1/64) / 12), with the mean square of e = 2 × 8 × 0.05²
    expectNear(Math.sqrt(statedM2 / rounds), Math.sqrt((0.04 * (63 / 64)) / 12), 0.002, 'm');
  });

  test('is refused with too few legs, a leg of nothing, or no bearing to begin with', () => {
    expect(kindsOf(walkedChain([toBearing(3, 0), toBearing(3, 180)], EAST.at))).toEqual(['value/too-few']);
    expect(kindsOf(walkedChain([toBearing(3, 0), toBearing(0, 90), toBearing(3, 180)], EAST.at))).toEqual([
      'value/not-positive',
    ]);
    expect(kindsOf(walkedChain([turned(3, 90), turned(3, 90), turned(3, 90)], EAST.at))).toEqual([
      'value/missing',
    ]);
  });
});
