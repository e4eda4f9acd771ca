import { AMOUNTS_BY_WORDS } from '../slope/index.ts';
import { areaFigure, formatDial, formatRate, sum, volumeFigure } from '../units/index.ts';
import type { PageBox } from './drawing.ts';
import { sectionsOfFill, zonesOfFill } from './fillWords.ts';
import type { LedgerColumn } from './ledger.ts';
import { cardHeightMm, drawCard } from './mixCard.ts';
import { drawHeading, type FlowItem, flowOverPages } from './pageFlow.ts';
import { paperPlan } from './paper.ts';
import type { PageMark } from './page.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import type { FillFigures } from './sheetFigures.ts';

const CARD_GAP_MM = 4;
const CARDS_ACROSS = 2;

/** The loads in one table that adds up, then a card to mix each one by. */
export function mixPages(context: SheetContext): DraftPage[] {
  const paper = paperPlan(context.paper, 'portrait');
  const { fills } = context.figures;
  const cardRows: FlowItem[] = [];
  for (let start = 0; start < fills.length; start += CARDS_ACROSS) {
    const row = fills.slice(start, start + CARDS_ACROSS);
    const cardMm = Math.max(...row.map(cardHeightMm));
    cardRows.push({
      kind: 'block',
      heightMm: cardMm + CARD_GAP_MM + (start === 0 ? 6.5 : 0),
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
        { title: 'sections', share: 1.4, align: 'left' },
        { title: 'zone', share: 1.7, align: 'left' },
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
      rows: figures.fills.map((load) => [
        String(load.number),
        sectionsOfFill(load),
        zonesOfFill(load),
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
        areaFigure(sum(figures.fills.map(({ mixedM2 }) => mixedM2)), units).text,
        volumeFigure(figures.productTotalL, units, productUnit).text,
        volumeFigure(figures.carrierTotalL, units, carrierUnit).text,
        '',
      ],
    },
  };
}

function drawCards(context: SheetContext, box: PageBox, fills: readonly FillFigures[]): PageMark[] {
  const widthMm = (box.widthMm - CARD_GAP_MM * (CARDS_ACROSS - 1)) / CARDS_ACROSS;
  return fills.flatMap((fill, i) =>
    drawCard(context, fill, {
      xMm: box.xMm + i * (widthMm + CARD_GAP_MM),
      yMm: box.yMm,
      widthMm,
      heightMm: cardHeightMm(fill),
    }),
  );
}
