import { expect, test } from 'vitest';
import { schedulePages } from '../../../core/sheet/schedulePages.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { contextOf, onASlope } from '../../support/sheetContexts.ts';
import { textsOf } from '../../support/sheetPages.ts';

const words = schedulePages(contextOf(THREE_ZONES)).flatMap((page) => textsOf(page.marks));

test('areas are given by zone and by section, and how well they are covered', () => {
  for (const title of ['Zones', 'Sections', 'Ground covered']) expect(words).toContain(title);
  for (const entry of ['Back lawn', 'West side', 'Front lawn', 'A1', 'B1', 'covered once', 'missed'])
    expect(words).toContain(entry);
});

test('treated areas carry their plus-minus in both units', () => {
  // The fixture's sigma is 0.9 % of the area: the front lawn's 112 m² has 1.008 m², which is 10.85 ft²
  expect(words).toEqual(expect.arrayContaining(['± 1.0', '± 11']));
});

test('a zone whose sigma is not stated has no plus-minus', () => {
  const zones = THREE_ZONES.zones.map((zone) => ({ ...zone, sigmaM2: null }));
  const silent = schedulePages(contextOf({ ...THREE_ZONES, zones })).flatMap((page) => textsOf(page.marks));
  expect(silent.filter((word) => word.startsWith('± ') && word.length < 8)).toEqual([]);
});

test('ground another zone owns has a column of its own only where there is some', () => {
  expect(words).not.toContain('elsewhere, ft²');
  const context = contextOf(THREE_ZONES);
  const zoneSum = { ...context.figures.zoneSum, ownedByOtherM2: 3 };
  const shared = schedulePages({ ...context, figures: { ...context.figures, zoneSum } });
  expect(shared.flatMap((page) => textsOf(page.marks))).toContain('elsewhere, ft²');
});

test('plan and surface stand side by side only where a zone slopes, and which of them amounts are by is said', () => {
  expect(words.join(' ')).not.toContain('its surface'); // all level
  const context = contextOf(THREE_ZONES);
  const plan = onASlope(context.plan, 1.25);
  const { details } = context.yard;
  const yard = { ...context.yard, details: { ...details, amountsBy: 'surface' } as const };
  const sloping = { ...context, yard, plan, figures: sheetFigures(plan, context.units) };
  const said = schedulePages(sloping).flatMap((page) => textsOf(page.marks));
  expect(said.join(' ')).toContain('its surface, ');
  expect(said.join(' ')).toContain('amounts by the sloping surface');
});
