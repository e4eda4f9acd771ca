import { BoxIndex, ringBounds, ringPerimeterM } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { sum } from '../units/index.ts';
import type { UntreatedGround } from '../zones/index.ts';
import { byKind, type Coverage, type SectionCoverage, sumCoverage } from './coverage.ts';
import { coverSection } from './coverSection.ts';
import { boxOf, outsideOnto } from './outsideOnto.ts';
import type { Pass } from './pass.ts';
import { type SwathPiece, swathPieces } from './swathPieces.ts';

export interface CoverageRequest {
  /** All treated ground, without overlap, in walking order. */
  readonly sections: readonly { readonly id: string; readonly region: Region }[];
  /** What lies beside it, as far as it was drawn. */
  readonly untreated: readonly UntreatedGround[];
  readonly passes: readonly Pick<Pass, 'line' | 'lengthM' | 'sectionId' | 'round'>[];
  readonly swathM: number;
  readonly rounds: 1 | 2;
}

/** Swath beside its section that is less than this for each metre of its edge is rounding onto the kernel grid. */
const GRID_SLACK_M = 2e-6;

/**
 * What the passes treat, by laying their swaths on the ground: never by adding lengths up. Section after section, so
 * that only what is near is looked at; the whole is their sum.
 *
 * Accuracy: rounding of a double, and 1 mm at round joins of swaths; swath that leaves its section by less than the
 *   kernel grid is not outside. Checked against points counted on a grid, whole in
 *   tests/oracle/coverage.test.ts and by section in coverageBySection.test.ts, the sweep itself against GEOS in tests/oracle/sweepLayers.test.ts
 * Cost: as `sweepLayers` for each section and the swaths that reach it
 */
export function measureCoverage(request: CoverageRequest): Coverage {
  const { sections, untreated, passes, swathM, rounds } = request;
  const pieces = swathPieces(passes, swathM);
  const index = new BoxIndex(pieces, ({ bounds }) => bounds);
  const treated = sections.map(({ region }) => region);
  const counted = new Set<string>();
  const covered = sections.map((section): SectionCoverage => {
    const { strayedM2, ...figures } = coverSection(
      section,
      index.meeting(ringBounds(section.region.outer)),
      rounds,
    );
    const own = pieces.filter(({ sectionId }) => sectionId === section.id);
    const before = (): SwathPiece[] =>
      index.meeting(boxOf(own)).filter(({ sectionId }) => counted.has(sectionId));
    const outsideOntoM2 =
      strayedM2 > GRID_SLACK_M * edgesM(own)
        ? outsideOnto(own, before(), treated, untreated)
        : byKind(() => 0);
    counted.add(section.id);
    const lengthM = sum(
      passes.filter(({ sectionId }) => sectionId === section.id).map((pass) => pass.lengthM),
    );
    return {
      sectionId: section.id,
      ...figures,
      outsideM2: sum(Object.values(outsideOntoM2)),
      outsideOntoM2,
      sweptM2: lengthM * swathM,
    };
  });
  return { ...sumCoverage(covered, rounds), sections: covered };
}

function edgesM(pieces: readonly SwathPiece[]): number {
  return sum(pieces.flatMap(({ rings }) => rings.map(ringPerimeterM)));
}
