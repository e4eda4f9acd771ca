import { describe, expect, test } from 'vitest';
import {
  begunAfter,
  inFillingOrder,
  leftUnfilled,
  NOTHING_BEGUN,
  shareOf,
} from '../../../core/sections/fillLoads.ts';
import type { Rest } from '../../../core/sections/share.ts';
import { rect, region } from '../../support/builders.ts';

const EVEN = { loadAreaM2: 100, policy: 'even', swathM: 2 } as const;
const FEWEST = { ...EVEN, policy: 'fewest' } as const;

function strip(areaM2: number) {
  return region(rect(0, 0, areaM2 / 10, 10));
}

function cutTo(areaM2: number, roomM2: number, spareM2: number): (string | number)[] {
  const { loads, rests } = shareOf(strip(areaM2), FEWEST, { roomM2, spareM2 });
  return [loads, ...rests.map((rest) => `${rest.end} ${Math.round(rest.areaM2 * 1e6) / 1e6}`)];
}

describe('even', () => {
  test('takes as many equal loads as the area asks for, whatever was begun', () => {
    expect(shareOf(strip(250), EVEN, { roomM2: 40, spareM2: 9 })).toMatchObject({ loads: 3, rests: [] }); // 250 / 100
    expect(shareOf(strip(300), EVEN, NOTHING_BEGUN)).toMatchObject({ loads: 3, rests: [] }); // 300 / 100
  });
});

describe('fewest', () => {
  test('fills the load begun, then full loads, and begins one with what is left', () => {
    expect(cutTo(250, 30, 10)).toEqual([2, 'head 30', 'tail 20']); // 30 + 2 x 100 + 20
    expect(cutTo(250, 0, 50)).toEqual([2, 'tail 50']);
    expect(cutTo(230, 30, 0)).toEqual([2, 'head 30']); // 30 + 2 x 100: nothing left over
  });

  test('puts a zone whole into the load begun when there is room', () => {
    expect(cutTo(25, 30, 10)).toEqual([0, 'head 25']);
  });

  test('cuts off no end less than a tenth of a load when the loads can spare it', () => {
    expect(cutTo(250, 8, 9)).toEqual([2, 'tail 50']); // 8 m² of room are less than 10 and can be spared
    expect(cutTo(250, 8, 5)).toEqual([2, 'head 8', 'tail 42']); // they cannot: the number of loads goes first
    expect(cutTo(131, 30, 9)).toEqual([1, 'head 21', 'tail 10']); // 9 m² less in the head make the tail 10
    expect(cutTo(203, 0, 9)).toEqual([2, 'tail 10']); // 3.5 m² less in each of the two
    expect(cutTo(203, 0, 5)).toEqual([2, 'tail 3']); // 7 m² cannot be spared
    expect(cutTo(9, 8, 60)).toEqual([0, 'tail 9']); // a zone that small is done whole
  });

  test('parts no ground that fits a load, when the loads can spare what was begun', () => {
    expect(cutTo(99, 18, 19)).toEqual([0, 'tail 99']); // 18 m² of room can be spared: one section
    expect(cutTo(99, 18, 17)).toEqual([0, 'head 18', 'tail 81']); // they cannot: the number of loads goes first
    expect(cutTo(250, 18, 19)).toEqual([2, 'head 18', 'tail 32']); // it is parted anyway
  });

  test('cuts off nothing less than a square of one swath either', () => {
    const { rests } = shareOf(strip(250), { ...FEWEST, swathM: 5 }, { roomM2: 20, spareM2: 21 });
    expect(rests.map(({ end }) => end)).toEqual(['tail']); // 20 m² of room are less than 5 x 5 m
  });

  test('leaves the tail to grow by no more than the loads can spare', () => {
    const { rests } = shareOf(strip(250), FEWEST, { roomM2: 30, spareM2: 7 });
    expect(rests.map(({ mostM2 }) => mostM2)).toEqual([30, 27]); // what is begun holds 30; 20 + 7 m²
  });
});

describe('the load begun after a piece', () => {
  const part = (areaM2: number, end: Rest['end'] | null) => ({
    region: strip(areaM2),
    loads: end === null ? 1 : 0,
    rests: end === null ? [] : [{ end, areaM2, mostM2: 100 }],
  });

  test('has what the tail left; what was not filled is no longer to spare', () => {
    const parts = [part(20, 'tail'), part(99, null), part(28, 'head')];
    expect(begunAfter(parts, 100, { roomM2: 30, spareM2: 10 })).toEqual({ roomM2: 80, spareM2: 7 }); // 2 + 1 m² unused
    expect(inFillingOrder(parts)).toEqual([parts[2], parts[1], parts[0]]); // head, full, tail
  });

  test('is the same one, less a zone that went in whole', () => {
    expect(begunAfter([part(20, 'head')], 100, { roomM2: 30, spareM2: 5 })).toEqual({
      roomM2: 10,
      spareM2: 5,
    });
  });

  test('may be left as it is, which is then no longer to spare', () => {
    expect(leftUnfilled({ roomM2: 30, spareM2: 50 })).toEqual({ roomM2: 0, spareM2: 20 }); // 50 - 30
    expect(leftUnfilled({ roomM2: 30, spareM2: 5 })).toEqual({ roomM2: 0, spareM2: 0 }); // one load more than hoped
  });

  test('is none after a full load', () => {
    expect(begunAfter([part(100, null)], 100, { roomM2: 0, spareM2: 5 })).toEqual({ roomM2: 0, spareM2: 5 });
  });
});
