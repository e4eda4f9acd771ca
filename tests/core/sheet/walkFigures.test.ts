import { describe, expect, test } from 'vitest';
import { planGround } from '../../../core/plan/index.ts';
import { walkFigures, walkText, wetWords } from '../../../core/sheet/index.ts';
import { lengthUnitM } from '../../../core/units/index.ts';
import { lShape, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { planRequest } from '../../support/planRequest.ts';
import { resolvedOf } from '../../support/randomGround.ts';

// Round a bed and its corner some treated turf is walked over.
const front = region(lShape(30, 20, 12, 9), rect(4, 4, 6, 5));
const planned = planGround(
  resolvedOf({ Front: [front] }),
  planRequest({ loadAreaM2: 100, swathM: 1.8, startAt: { xM: 0, yM: 0 } }),
);
if (!planned.ok) throw new Error('no plan');
const ground = planned.value;

describe.each(['us', 'metric'] as const)('walks shown in %s units', (units) => {
  const walks = walkFigures(ground, units);

  test.each([
    ['walkM', ground.onLengthM + ground.offLengthM],
    ['onM', ground.onLengthM],
    ['wetM', ground.wetM],
  ] as const)('%s adds up as shown and is off by less than a step', (name, wholeM) => {
    const shown = (lengthM: number): number => Number(walkText(lengthM, units).replaceAll(',', ''));
    const parts = [...walks.bySection.values()].map((walk) => shown(walk[name]));
    expect(parts.length).toBe(ground.sections.length); // a figure for each
    expect(parts.reduce((sum, part) => sum + part, 0)).toBe(shown(walks.all[name])); // the law
    expectNear(walks.all[name], wholeM, 0.5 * lengthUnitM(units) + 1e-9, 'm'); // rounded once
    for (const own of ground.sectionFigures) {
      const trueM =
        name === 'walkM' ? own.onLengthM + own.offLengthM : name === 'onM' ? own.onLengthM : own.wetM;
      expectNear(walks.bySection.get(own.sectionId)?.[name] ?? Number.NaN, trueM, lengthUnitM(units), 'm');
    }
  });
});

test('what goes over treated turf is said in a line, also where it is nothing', () => {
  const walks = walkFigures(ground, 'us');
  expect(wetWords({ ...walks, all: { ...walks.all, wetM: 0 } }, 'us')).toBe(
    'none of the walk is over turf treated before',
  );
  const wet = { bySection: walks.bySection, all: { ...walks.all, wetM: 1200 * 0.3048 } }; // 1 ft = 0.3048 m by definition
  expect(wetWords(wet, 'us')).toBe('1,200 ft of the walk over turf treated before');
});
