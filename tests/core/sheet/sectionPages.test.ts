import { expect, test } from 'vitest';
import { MANY_SECTIONS, NINE_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';
import { sheetOf, textsOf } from '../../support/sheetPages.ts';

test('up to two dozen sections get a page each in the order they are walked', () => {
  const titles = sheetOf(NINE_SECTIONS).map((page) => textsOf(page.marks)[0]);
  expect(titles.filter((title) => title?.startsWith('Section'))).toHaveLength(9); // sections in the fixture
});

test('more are drawn four to a page, none left out', () => {
  const pages = sheetOf(MANY_SECTIONS).filter((page) => textsOf(page.marks)[0]?.startsWith('Sections'));
  expect(pages).toHaveLength(8); // 30 sections: 7 pages of four and one of two
  const ids = pages.flatMap((page) => textsOf(page.marks)).filter((word) => /^A\d+$/.test(word));
  for (let i = 1; i <= 30; i++) expect(ids).toContain(`A${i}`);
});

test('a section page names its neighbours on the map', () => {
  const words = textsOf(sheetOf(THREE_ZONES)[3]?.marks ?? []);
  for (const word of ['Section A2', 'A1', 'A3']) expect(words).toContain(word);
});
