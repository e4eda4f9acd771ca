import type { PageMark, PageSubpath, SheetPage } from '../../core/sheet/index.ts';

/** A sheet as text a person can read and compare: one mark a line, millimetres to a hundredth. */
export function sheetText(pages: readonly SheetPage[]): string {
  return pages
    .map((page, i) =>
      [
        `page ${i + 1}, ${mm(page.widthMm)} x ${mm(page.heightMm)}`,
        ...page.marks.flatMap((mark) => lines(mark, '  ')),
        '',
      ].join('\n'),
    )
    .join('\n');
}

function lines(mark: PageMark, indent: string): string[] {
  switch (mark.kind) {
    case 'text':
      return [
        `${indent}text ${mm(mark.at.xMm)},${mm(mark.at.yMm)} ${mark.face} ${mm(mark.sizeMm)} ${mark.align}: ${mark.text}`,
      ];
    case 'path': {
      const fill = mark.fill === null ? '' : ` fill ${mark.fill.join('/')}`;
      const stroke =
        mark.stroke === null
          ? ''
          : ` pen ${mm(mark.stroke.widthMm)}${mark.stroke.dashMm === null ? '' : ' dashed'}`;
      return [`${indent}path${fill}${stroke} ${mark.subpaths.map(subpathText).join(' ')}`];
    }
    case 'clip':
      return [
        `${indent}clip to ${mark.subpaths.map(subpathText).join(' ')}`,
        ...mark.marks.flatMap((inner) => lines(inner, `${indent}  `)),
      ];
    case 'picture':
      return [`${indent}picture ${mark.imageHash}`];
  }
}

/** Long outlines (circles, waves) by their count: their corners are tested on their own. */
function subpathText({ points, closed }: PageSubpath): string {
  const shown =
    points.length > 6
      ? `${points.length} points`
      : points.map((point) => `${mm(point.xMm)},${mm(point.yMm)}`).join(' ');
  return `[${shown}${closed ? ' closed' : ''}]`;
}

function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}
