import { AMOUNTS_BY_WORDS } from '../slope/index.ts';
import { areaFigure, dialFigure, type Figure, formatDial, formatRate, volumeFigure } from '../units/index.ts';
import { at, boxOutline, INK, line, type PageBox, pen, RULE, shape, SOFT_INK, text } from './drawing.ts';
import type { LedgerColumn } from './ledger.ts';
import { shortenText, textWidthMm } from './measureText.ts';
import { drawHeading, type FlowItem, flowOverPages } from './pageFlow.ts';
import { paperPlan } from './paper.ts';
import type { PageMark } from './page.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

const CARD_MM = 33;
const CARD_GAP_MM = 4;
const CARDS_ACROSS = 2;

/** The loads in one table that adds up, then a card to mix each one by. */
export function mixPages(context: SheetContext): DraftPage[] {
  const paper = paperPlan(context.paper, 'portrait');
  const { loads } = context.figures;
  const cardRows: FlowItem[] = [];
  for (let start = 0; start < loads.length; start += CARDS_ACROSS) {
    const row = loads.slice(start, start + CARDS_ACROSS);
    cardRows.push({
      kind: 'block',
      heightMm: CARD_MM + CARD_GAP_MM + (start === 0 ? 6.5 : 0),
      draw: (box) => [
        ...(start === 0 ? drawHeading(box, box.yMm, 'Cards', 'one to a fill; cross off as you go') : []),
        ...drawCards(context, { ...box, yMm: box.yMm + (start === 0 ? 6.5 : 0) }, row),
      ],
    });
  }
  return flowOverPages(paper.body, [loadTable(context), ...cardRows]).map((marks) => ({
    paper,
    title: 'Mix',
    subtitle: `${context.product.name}, ${formatRate(context.product.rateLPerM2, context.units)}`,
    scaleWords: '',
    marks,
  }));
}

function loadTable({ figures, units, applicator }: SheetContext): FlowItem {
  const hoseEnd = applicator.kind === 'hose-end';
  const { productUnit, carrierUnit } = figures;
  const last: LedgerColumn = hoseEnd
    ? { title: 'dial', share: 1.2, align: 'right' }
    : { title: `tank filled to, ${carrierUnit}`, share: 1.2, align: 'right' };
  return {
    kind: 'ledger',
    title: 'Loads',
    note: figures.isMixedBySurface
      ? `${applicator.name}; by ${AMOUNTS_BY_WORDS.surface}, not ${AMOUNTS_BY_WORDS.plan}`
      : applicator.name,
    ledger: {
      columns: [
        { title: 'load', share: 0.6, align: 'right' },
        { title: 'section', share: 0.8, align: 'left' },
        { title: 'zone', share: 1.8, align: 'left' },
        {
          title: `${figures.isMixedBySurface ? 'surface' : 'treats'}, ${areaFigure(0, units).unit}`,
          share: 1,
          align: 'right',
        },
        { title: `product, ${productUnit}`, share: 1.1, align: 'right' },
        {
          title: `${hoseEnd ? 'water through hose' : 'carrier'}, ${carrierUnit}`,
          share: 1.3,
          align: 'right',
        },
        last,
      ],
      rows: figures.loads.map((load) => [
        String(load.load),
        load.section.id,
        load.section.zoneName,
        areaFigure(load.mixedM2, units).text,
        volumeFigure(load.productL, units, productUnit).text,
        volumeFigure(load.carrierL, units, carrierUnit).text,
        hoseEnd
          ? formatDial(load.dialRatio ?? 0, units)
          : volumeFigure(load.productL + load.carrierL, units, carrierUnit).text,
      ]),
      sum: [
        '',
        'all',
        '',
        areaFigure(
          figures.loads.reduce((sum, load) => sum + load.mixedM2, 0),
          units,
        ).text,
        volumeFigure(figures.productTotalL, units, productUnit).text,
        volumeFigure(figures.carrierTotalL, units, carrierUnit).text,
        '',
      ],
    },
  };
}

function drawCards(context: SheetContext, box: PageBox, loads: readonly LoadFigures[]): PageMark[] {
  const widthMm = (box.widthMm - CARD_GAP_MM * (CARDS_ACROSS - 1)) / CARDS_ACROSS;
  return loads.flatMap((load, i) =>
    drawCard(context, load, {
      xMm: box.xMm + i * (widthMm + CARD_GAP_MM),
      yMm: box.yMm,
      widthMm,
      heightMm: CARD_MM,
    }),
  );
}

function drawCard(context: SheetContext, load: LoadFigures, box: PageBox): PageMark[] {
  const { units, figures, applicator } = context;
  const hoseEnd = applicator.kind === 'hose-end';
  const left = box.xMm + 3;
  const right = box.xMm + box.widthMm - 3;
  const small = { sizeMm: 2.6, face: 'condensed', colour: SOFT_INK } as const;
  const head = `Load ${load.load}`;
  const headMm = textWidthMm(head, 4.4, 'condensed-bold');
  const place = shortenText(
    `${load.section.id}, ${load.section.zoneName}`,
    3.3,
    'condensed',
    right - left - headMm - 6,
  );
  const entries: readonly (readonly [string, Figure<string>])[] = [
    [hoseEnd ? 'in the bottle' : 'product', volumeFigure(load.productL, units, figures.productUnit)],
    [hoseEnd ? 'water' : 'carrier', volumeFigure(load.carrierL, units, figures.carrierUnit)],
    hoseEnd
      ? ['dial', dialFigure(load.dialRatio ?? 0, units)]
      : ['fill to', volumeFigure(load.productL + load.carrierL, units, figures.carrierUnit)],
    [figures.isMixedBySurface ? 'surface' : 'treats', areaFigure(load.mixedM2, units)],
  ];
  const marks: PageMark[] = [
    shape([boxOutline(box)], null, pen(INK, 0.3)),
    text(left, box.yMm + 6.3, head, { sizeMm: 4.4, face: 'condensed-bold' }),
    text(right, box.yMm + 6.3, place, { sizeMm: 3.3, face: 'condensed', align: 'right' }),
    line([at(left, box.yMm + 8.6), at(right, box.yMm + 8.6)], pen(INK, 0.25)),
  ];
  const columnMm = (right - left) / entries.length;
  entries.forEach(([words, amount], i) => {
    const x = left + i * columnMm;
    const amountMm = textWidthMm(amount.text, 4.6, 'condensed-bold');
    const unit = shortenText(amount.unit, 2.8, 'condensed', columnMm - amountMm - 2);
    marks.push(text(x, box.yMm + 13, words, small));
    marks.push(text(x, box.yMm + 19, amount.text, { sizeMm: 4.6, face: 'condensed-bold' }));
    if (unit !== '') marks.push(text(x + amountMm + 1, box.yMm + 19, unit, { ...small, sizeMm: 2.8 }));
  });
  const footY = box.yMm + CARD_MM - 4;
  marks.push(line([at(left, footY - 5.6), at(right, footY - 5.6)], pen(RULE, 0.25)));
  marks.push(...tick(left, footY, 'mixed'), ...tick(left + 17, footY, 'done'));
  marks.push(text(left + 34, footY, 'left over', small));
  marks.push(line([at(left + 45, footY + 0.6), at(right, footY + 0.6)], pen(SOFT_INK, 0.2)));
  return marks;
}

function tick(xMm: number, footMm: number, words: string): PageMark[] {
  return [
    shape([boxOutline({ xMm, yMm: footMm - 2.7, widthMm: 3.2, heightMm: 3.2 })], null, pen(INK, 0.25)),
    text(xMm + 4.4, footMm, words, { sizeMm: 2.9, face: 'condensed' }),
  ];
}
