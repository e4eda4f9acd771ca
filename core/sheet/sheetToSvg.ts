import type { PagePoint } from '../spaces.ts';
import type {
  PageColour,
  PageMark,
  PageSubpath,
  PathMark,
  PictureMark,
  SheetPage,
  TextMark,
} from './page.ts';

const FONT: Readonly<Record<TextMark['face'], string>> = {
  regular: `font-family="'IBM Plex Sans',sans-serif" font-weight="400"`,
  bold: `font-family="'IBM Plex Sans',sans-serif" font-weight="600"`,
  condensed: `font-family="'IBM Plex Sans Condensed',sans-serif" font-weight="400"`,
  'condensed-bold': `font-family="'IBM Plex Sans Condensed',sans-serif" font-weight="600"`,
};

const ANCHOR: Readonly<Record<TextMark['align'], string>> = { left: 'start', centre: 'middle', right: 'end' };

/** Where the picture with a hash can be loaded from; null leaves it out. */
export type PictureHref = (imageHash: string) => string | null;

/**
 * One page as an SVG document, one user unit a millimetre, for showing on the screen what will be printed.
 *
 * @param page a page made by layoutSheet
 * @param pictureHref address for a base picture; by default none is shown
 * @returns SVG text; the same page gives the same text
 */
export function sheetToSvg(page: SheetPage, pictureHref: PictureHref = () => null): string {
  const clips: string[] = [];
  const body = marksToSvg(page.marks, clips, pictureHref);
  const size = `width="${mm(page.widthMm)}mm" height="${mm(page.heightMm)}mm"`;
  const viewBox = `viewBox="0 0 ${mm(page.widthMm)} ${mm(page.heightMm)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} ${viewBox}>`,
    `<rect width="${mm(page.widthMm)}" height="${mm(page.heightMm)}" fill="#fff"/>`,
    clips.length > 0 ? `<defs>${clips.join('')}</defs>` : '',
    body,
    '</svg>',
  ].join('');
}

function marksToSvg(marks: readonly PageMark[], clips: string[], pictureHref: PictureHref): string {
  return marks.map((mark) => markToSvg(mark, clips, pictureHref)).join('');
}

function markToSvg(mark: PageMark, clips: string[], pictureHref: PictureHref): string {
  switch (mark.kind) {
    case 'path':
      return pathToSvg(mark);
    case 'text':
      return textToSvg(mark);
    case 'picture':
      return pictureToSvg(mark, pictureHref);
    case 'clip': {
      const path = pathData(mark.subpaths);
      const id = `clip${clips.length}-${fingerprint(path)}`;
      clips.push(`<clipPath id="${id}"><path clip-rule="evenodd" d="${path}"/></clipPath>`);
      return `<g clip-path="url(#${id})">${marksToSvg(mark.marks, clips, pictureHref)}</g>`;
    }
  }
}

function pathToSvg(mark: PathMark): string {
  const fill = mark.fill === null ? 'none' : colour(mark.fill);
  const stroke =
    mark.stroke === null
      ? ''
      : ` stroke="${colour(mark.stroke.colour)}" stroke-width="${mm(mark.stroke.widthMm)}" stroke-linejoin="round"${
          mark.stroke.dashMm === null ? '' : ` stroke-dasharray="${mark.stroke.dashMm.map(mm).join(' ')}"`
        }`;
  return `<path d="${pathData(mark.subpaths)}" fill="${fill}" fill-rule="evenodd"${stroke}/>`;
}

function textToSvg(mark: TextMark): string {
  const turn = mark.turnDeg === 0 ? '' : ` transform="rotate(${mm(mark.turnDeg)} ${pair(mark.at)})"`;
  return `<text x="${mm(mark.at.xMm)}" y="${mm(mark.at.yMm)}" font-size="${mm(mark.sizeMm)}" ${FONT[mark.face]} text-anchor="${
    ANCHOR[mark.align]
  }" fill="${colour(mark.colour)}"${turn}>${escapeXml(mark.text)}</text>`;
}

function pictureToSvg(mark: PictureMark, pictureHref: PictureHref): string {
  const href = pictureHref(mark.imageHash);
  if (href === null) return '';
  const [nw, ne, sw] = mark.corners;
  // The picture is a unit square carried to its three corners.
  const matrix = [ne.xMm - nw.xMm, ne.yMm - nw.yMm, sw.xMm - nw.xMm, sw.yMm - nw.yMm, nw.xMm, nw.yMm];
  return `<image href="${escapeXml(href)}" width="1" height="1" preserveAspectRatio="none" opacity="${mm(
    mark.opacity,
  )}" transform="matrix(${matrix.map(mm).join(' ')})"/>`;
}

/**
 * Eight hex digits of a text (FNV-1a, 32 bit). Pages shown in one document share its ids: a clip is named by
 * what it is, so that two of one name are the same clip.
 */
function fingerprint(words: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < words.length; i++) hash = Math.imul(hash ^ words.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

function pathData(subpaths: readonly PageSubpath[]): string {
  return subpaths.map(({ points, closed }) => `M${points.map(pair).join('L')}${closed ? 'Z' : ''}`).join('');
}

function pair(point: PagePoint): string {
  return `${mm(point.xMm)} ${mm(point.yMm)}`;
}

/** To a thousandth of a millimetre, without trailing zeros. */
function mm(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

function colour([red, green, blue]: PageColour): string {
  return `#${[red, green, blue].map((part) => part.toString(16).padStart(2, '0')).join('')}`;
}

function escapeXml(words: string): string {
  // Control characters have no place in XML, escaped or not.
  return [...words]
    .filter((character) => character >= ' ')
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
