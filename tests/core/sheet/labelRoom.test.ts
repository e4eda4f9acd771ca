import { expect, test } from 'vitest';
import { at, boxesOverlap, boxOutline } from '../../../core/sheet/drawing.ts';
import {
  centredBox,
  findRoomBeside,
  findRoomInside,
  isFree,
  emptyRoom,
} from '../../../core/sheet/labelRoom.ts';
import { edgesMeetBox, insideSubpaths } from '../../../core/sheet/pageGeometry.ts';

const FRAME = { xMm: 0, yMm: 0, widthMm: 100, heightMm: 100 };
const REGION = [boxOutline({ xMm: 10, yMm: 10, widthMm: 40, heightMm: 30 })];

test('the first label of a region stands in its middle', () => {
  expect(findRoomInside(emptyRoom(FRAME), REGION, 8, 4)).toEqual(at(30, 25)); // 10 + 40/2, 10 + 30/2
});

test('labels placed one after the other never touch and stay inside', () => {
  const room = emptyRoom(FRAME);
  for (let i = 0; i < 40; i++) {
    const place = findRoomInside(room, REGION, 8, 4);
    if (place === undefined) break;
    const box = centredBox(place, 8, 4);
    expect(room.taken.some((other) => boxesOverlap(other, box))).toBe(false);
    expect(edgesMeetBox(REGION, box)).toBe(false);
    expect(insideSubpaths(REGION, place)).toBe(true);
    room.taken.push(box);
  }
  expect(room.taken.length).toBeGreaterThan(10);
  // 40 × 30 mm hold at most 37 labels of 8 × 4 mm, so the search did end for want of room
  expect(findRoomInside(room, REGION, 8, 4)).toBeUndefined();
});

test('a label keeps off a line where it can, and refuses to cross one when told', () => {
  const room = emptyRoom(FRAME);
  room.lines.add({ points: [at(0, 25), at(100, 25)], closed: false });
  const place = findRoomInside(room, REGION, 8, 4);
  expect(Math.abs((place?.yMm ?? 25) - 25)).toBeGreaterThan(2); // half its height away from the line
  for (let y = 11; y < 40; y += 2) room.lines.add({ points: [at(0, y), at(100, y)], closed: false });
  expect(findRoomInside(room, REGION, 8, 4, 0)).toBeUndefined();
  expect(findRoomInside(room, REGION, 8, 4)).toBeDefined();
});

test('a label larger than its region has no room', () => {
  expect(findRoomInside(emptyRoom(FRAME), REGION, 45, 4)).toBeUndefined();
});

test('a label beside a thing does not lie on it, and stays in the frame', () => {
  const thing = { xMm: 94, yMm: 50, widthMm: 4, heightMm: 4 };
  const place = findRoomBeside(emptyRoom(FRAME), thing, 20, 3);
  if (place === undefined) throw new Error('no room');
  const box = centredBox(place, 20, 3);
  expect(boxesOverlap(box, thing)).toBe(false);
  expect(isFree(emptyRoom(FRAME), box)).toBe(true);
});
