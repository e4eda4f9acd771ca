import { OVERLAP_RULES, type Outline, type OverlapRule } from '../../core/yard.ts';
import { outline } from './builders.ts';
import { between, pick, type Random, randomStar, randomYard } from './randomYards.ts';

/** Zones that overlap in twos and threes, some claiming, some with strips; cut-outs and keep-offs over all. */
export function overlappingYard(random: Random): {
  readonly outlines: readonly Outline[];
  readonly rule: OverlapRule;
} {
  const spot = () => ({ xM: between(random, -15, 15), yM: between(random, -15, 15) });
  const zones = Array.from({ length: 2 + Math.floor(random() * 5) }, (_, i) => ({
    ...outline('zone', `zone ${i}`, randomStar(random, 9, spot(), between(random, 4, 20), 0.5)),
    claimsOverlaps: random() < 0.2,
    keepOffM: random() < 0.3 ? between(random, 0.1, 3) : null,
  }));
  const others = randomYard(random, 5, 6).beds.map((ring, i) => ({
    ...outline(pick(random, ['bed', 'water', 'building', 'keep-off', 'check-plot']), `other ${i}`, ring),
    keepOffM: random() < 0.3 ? between(random, 0.1, 3) : null,
  }));
  return { outlines: [...zones, ...others], rule: pick(random, OVERLAP_RULES) };
}
