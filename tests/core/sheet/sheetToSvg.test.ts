import { expect, test } from 'vitest';
import { at, boxOutline, INK, line, pen, text } from '../../../core/sheet/drawing.ts';
import { type PageMark, sheetToSvg } from '../../../core/sheet/index.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { sheetOf, textMarksOf } from '../../support/sheetPages.ts';

function svgOf(...marks: PageMark[]): string {
  return sheetToSvg({ widthMm: 210, heightMm: 297, marks });
}

test('a page is as large as its paper, one unit a millimetre', () => {
  expect(svgOf()).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
});

test('a dashed line keeps its pen, its dashes and its points', () => {
  const svg = svgOf(line([at(1, 2), at(3.5, 4)], pen(INK, 0.25, [1, 0.5])));
  expect(svg).toContain('<path d="M1 2L3.5 4" fill="none"');
  expect(svg).toContain('stroke="#23282a" stroke-width="0.25"'); // INK is 35, 40, 42
  expect(svg).toContain('stroke-dasharray="1 0.5"');
});

test('text is set in the named face and cannot break out of the document', () => {
  const svg = svgOf(
    text(10, 20, '<b> & "x"\u0007', { sizeMm: 3, face: 'condensed-bold', align: 'right', turnDeg: -90 }),
  );
  expect(svg).toContain('&lt;b&gt; &amp; &quot;x&quot;</text>');
  expect(svg).toContain(
    `font-family="'IBM Plex Sans Condensed',sans-serif" font-weight="600" text-anchor="end"`,
  );
  expect(svg).toContain('transform="rotate(-90 10 20)"');
});

function clipTo(sizeMm: number, marks: PageMark[]): PageMark {
  return {
    kind: 'clip',
    subpaths: [boxOutline({ xMm: 0, yMm: 0, widthMm: sizeMm, heightMm: sizeMm })],
    marks,
  };
}

test('clips nest, each with its own path', () => {
  const svg = svgOf(clipTo(5, [clipTo(4, [line([at(0, 0), at(1, 1)], pen(INK, 1))])]));
  const ids = [...svg.matchAll(/<clipPath id="([^"]+)"/g)].map((match) => match[1]);
  expect(new Set(ids).size).toBe(2); // an outer and an inner clip
  expect(svg).toContain(`<g clip-path="url(#${ids[0]})"><g clip-path="url(#${ids[1]})">`);
});

test('pages shown together do not clip each other: one id is one shape', () => {
  const idOf = (sizeMm: number) => /<clipPath id="([^"]+)"/.exec(svgOf(clipTo(sizeMm, [])))?.[1];
  expect(idOf(5)).toBe(idOf(5));
  expect(idOf(5)).not.toBe(idOf(6));
});

test('a picture is a unit square carried to its corners, and shown only where it has an address', () => {
  const picture: PageMark = {
    kind: 'picture',
    imageHash: 'ab',
    corners: [at(10, 20), at(30, 20), at(10, 50)],
    opacity: 0.4,
  };
  const page = { widthMm: 210, heightMm: 297, marks: [picture] };
  expect(sheetToSvg(page)).not.toContain('<image');
  // 30 - 10 wide, 50 - 20 high, at 10, 20
  expect(sheetToSvg(page, (hash) => `yard:${hash}`)).toContain('href="yard:ab"');
  expect(sheetToSvg(page, () => 'x')).toContain('opacity="0.4" transform="matrix(20 0 0 30 10 20)"');
});

test('every word of a page is in its preview', () => {
  for (const page of sheetOf(THREE_ZONES)) {
    const svg = sheetToSvg(page);
    expect(svg.match(/<text /g)?.length).toBe(textMarksOf(page.marks).length);
  }
});
