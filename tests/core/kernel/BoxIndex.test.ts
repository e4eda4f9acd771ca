import { expect, test } from 'vitest';
import { BoxIndex, type RingBounds, ringBounds } from '../../../core/kernel/index.ts';
import { rect } from '../../support/builders.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

test('an index of nothing finds nothing', () => {
  expect(new BoxIndex<RingBounds>([], (box) => box).meeting(ringBounds(rect(0, 0, 1, 1)))).toEqual([]);
});

test('finds what meets a box, touching included, in the order given, as looking at every one does', () => {
  const random = seededRandom(3);
  const box = () =>
    ringBounds(rect(Math.round(between(random, 0, 60)), Math.round(between(random, 0, 60)), 3, 2));
  const boxes = Array.from({ length: 300 }, box);
  const index = new BoxIndex(boxes, (row) => row);
  let found = 0;
  for (let i = 0; i < 100; i++) {
    const a = box();
    const meets = boxes.filter(
      (b) => a.minXM <= b.maxXM && b.minXM <= a.maxXM && a.minYM <= b.maxYM && b.minYM <= a.maxYM,
    );
    expect(index.meeting(a)).toEqual(meets);
    found += meets.length;
  }
  expect(found).toBeGreaterThan(200); // on whole metres many touch
});
