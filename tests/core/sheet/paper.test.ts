import { expect, test } from 'vitest';
import { boxInside } from '../../../core/sheet/drawing.ts';
import { paperPlan } from '../../../core/sheet/paper.ts';
import { expectNear } from '../../support/expectNear.ts';

test('Letter is 8.5 by 11 inches and A4 is 210 by 297 mm', () => {
  const letter = paperPlan('letter', 'portrait');
  expectNear(letter.widthMm, 8.5 * 25.4, 1e-9, 'mm'); // ANSI A: 8.5 in of 25.4 mm
  expectNear(letter.heightMm, 11 * 25.4, 1e-9, 'mm'); // ANSI A: 11 in of 25.4 mm
  const a4 = paperPlan('a4', 'portrait');
  expect([a4.widthMm, a4.heightMm]).toEqual([210, 297]); // ISO 216
});

test('landscape is the same paper turned', () => {
  const { widthMm, heightMm } = paperPlan('a4', 'landscape');
  expect([widthMm, heightMm]).toEqual([297, 210]); // ISO 216
});

test('header, body and title block lie inside the margins, one below the other', () => {
  for (const paper of ['letter', 'a4'] as const) {
    const { margins, header, body, titleBlock } = paperPlan(paper, 'portrait');
    for (const part of [header, body, titleBlock]) expect(boxInside(part, margins)).toBe(true);
    expect(header.yMm + header.heightMm).toBeLessThan(body.yMm);
    expect(body.yMm + body.heightMm).toBeLessThan(titleBlock.yMm);
  }
});
