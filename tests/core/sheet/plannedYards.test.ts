import { describe, expect, test } from 'vitest';
import { planJob } from '../../../core/plan/index.ts';
import { boxesOverlap, boxInside, growBox, textBox } from '../../../core/sheet/drawing.ts';
import { layoutSheet, type SheetPage } from '../../../core/sheet/index.ts';
import type { Job } from '../../../core/yard.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { LONG_NAMES, NINE_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

/** Bottle sizes in litres that cut these yards into a few sections and into many. */
const BOTTLES_L = [0.06, 0.13, 0.5] as const;

function planned(ground: typeof THREE_ZONES, capacityL: number) {
  const made = handMadePlan(ground).yard;
  const yard = { ...made, applicators: made.applicators.map((applicator) => ({ ...applicator, capacityL })) };
  const plan = planJob(yard, 'j');
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  const job = yard.jobs[0] as Job;
  const sheet = layoutSheet({
    yard,
    plan: plan.value,
    job,
    paper: 'letter',
    scale: 'auto',
    madeOn: '2026-11-25',
  });
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.problems));
  return { plan: plan.value, pages: sheet.value };
}

function clashesOn(page: SheetPage): string[] {
  const marks = textMarksOf(page.marks);
  const boxes = marks.map((mark) => growBox(textBox(mark), -0.1));
  const paper = growBox({ xMm: 0, yMm: 0, widthMm: page.widthMm, heightMm: page.heightMm }, -12);
  return boxes.flatMap((box, a) => {
    const outside = boxInside(box, paper) ? [] : [`${marks[a]?.text} is outside`];
    const over = boxes
      .slice(a + 1)
      .flatMap((other, b) =>
        boxesOverlap(box, other) ? [`${marks[a]?.text} | ${marks[a + 1 + b]?.text}`] : [],
      );
    return [...outside, ...over];
  });
}

describe('the sheet of a plan made by the planners', () => {
  for (const [name, ground] of Object.entries({ THREE_ZONES, NINE_SECTIONS, LONG_NAMES })) {
    for (const capacityL of BOTTLES_L) {
      test(`${name} with a bottle of ${capacityL} L: nothing overlaps, every pass is numbered`, () => {
        const { plan, pages } = planned(ground, capacityL);
        for (const page of pages) expect(clashesOn(page)).toEqual([]);
        for (const section of plan.ground.sections) {
          const page = pages.find((candidate) => textsOf(candidate.marks)[0] === `Section ${section.id}`);
          const numbers = textMarksOf(page?.marks ?? []).filter(
            (mark) => mark.face === 'condensed-bold' && mark.sizeMm === 2.3,
          );
          const own = plan.ground.passes
            .filter((pass) => pass.sectionId === section.id)
            .map((pass) => String(pass.order));
          expect(
            numbers.map((mark) => mark.text),
            section.id,
          ).toEqual(own);
        }
      });
    }
  }
});
