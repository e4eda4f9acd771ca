import { expect, test } from 'vitest';
import { orderStops, type StepM } from '../../../core/plan/orderStops.ts';
import { seededRandom } from '../../support/randomYards.ts';

/** Steps between places on a line, the start and the finish where given. */
function onLine(atM: readonly number[], startM: number | null = null, finishM: number | null = null): StepM {
  return (from, to) => {
    const a = from === null ? startM : (atM[from] as number);
    const b = to === null ? finishM : (atM[to] as number);
    return a === null || b === null ? 0 : Math.abs(a - b);
  };
}

test('places along a line are walked along it', () => {
  const order = orderStops([[0], [1], [2], [3]], onLine([30, 0, 20, 10])).flat();
  expect([order, order.toReversed()]).toContainEqual([1, 3, 2, 0]); // by place: 0, 10, 20, 30 m
});

test('the way begins where the person comes from, and ends where it should', () => {
  expect(orderStops([[0], [1], [2]], onLine([0, 10, 20], 25)).flat()).toEqual([2, 1, 0]); // from the far end
  expect(orderStops([[0], [1], [2]], onLine([0, 10, 20], null, 0)).flat()).toEqual([2, 1, 0]); // home to 0 m
});

test('what stays together does, come to at the end that suits', () => {
  const order = orderStops([[0, 1], [2], [3]], onLine([20, 10, 0, 30], 0));
  expect(order).toEqual([[2], [1, 0], [3]]); // 0, then 10 and 20 in that direction, then 30 m
});

test('many places are ordered no worse than a sweep from west to east, and always alike', () => {
  const random = seededRandom(11);
  const spots = Array.from({ length: 60 }, () => ({ x: random() * 100, y: random() * 10 }));
  const stepM: StepM = (from, to) => {
    const [a, b] = [spots[from ?? -1], spots[to ?? -1]];
    return a === undefined || b === undefined ? 0 : Math.hypot(a.x - b.x, a.y - b.y);
  };
  const wayM = (order: readonly number[]): number =>
    order.reduce((sum, place, i) => sum + stepM(order[i - 1] ?? null, place), 0);
  const stops = spots.map((_, i) => [i]);
  const order = orderStops(stops, stepM).flat();
  expect(order.toSorted((a, b) => a - b)).toEqual(spots.map((_, i) => i)); // each once
  const sweep = spots.map((_, i) => i).sort((a, b) => (spots[a]?.x ?? 0) - (spots[b]?.x ?? 0));
  expect(wayM(order)).toBeLessThan(wayM(sweep)); // a plain rule to beat
  expect(orderStops(stops, stepM).flat()).toEqual(order); // the law: same in, same out
});

test('no stops need no order', () => {
  expect(orderStops([], onLine([]))).toEqual([]); // none
});
