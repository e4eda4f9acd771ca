import type { Yard } from '../../core/yard.ts';
import type { WalkContext } from '../../renderer/drawing/index.ts';
import { rect, region } from './builders.ts';
import { Hand } from './drawing.ts';
import { type HandMadeGround, handMadePlan } from './handMadePlan.ts';

/** A lawn of 20 × 10 m with its corner at the origin, a cut straight north at 8 m, a load of 100 m². */
const LAWN: HandMadeGround = {
  name: 'Lawn',
  units: 'metric',
  zones: [
    {
      name: 'Lawn',
      ring: [
        [0, 0],
        [20, 0],
        [20, 10],
        [0, 10],
      ],
      cutsAtXM: [8],
    },
  ],
};

/** A hand on the page of the walk; its plan stays the first one, as if a newer one were not there yet. */
export class WalkHand extends Hand {
  constructor(mayEdit = true) {
    const { yard, plan } = handMadePlan(LAWN);
    super(yard);
    this.mayEdit = false;
    const request = { ...plan.ground.request, loadAreaM2: 100, heldCuts: [], tapeSides: [] };
    // The hand-made plan’s ground lies in its sections; here it is one piece, as the planners find it.
    const zones = plan.ground.resolved.zones.map((zone) => ({
      ...zone,
      treated: [region(rect(0, 0, 20, 10))],
    }));
    const ground = { ...plan.ground, request, resolved: { ...plan.ground.resolved, zones } };
    const walkOf = (now: Yard): WalkContext | null => {
      const job = now.jobs.at(-1);
      return job ? { job, plan: ground, mayEdit } : null;
    };
    this.walkOf = walkOf;
  }

  /** Ends of the cuts the job holds: [from east, from north, to east, to north]. */
  get held(): readonly (readonly number[])[] {
    const cuts = this.yard.jobs.at(-1)?.heldCuts ?? [];
    return cuts.map(({ from, to }) =>
      [from.xM, from.yM, to.xM, to.yM].map((m) => Math.round(m * 1000) / 1000),
    );
  }

  /** The plan's cut at 8 m, taken in hand as from the ledger. */
  takeCut(): this {
    return this.do({ kind: 'choose', selection: { kind: 'cut', id: '8.00 0.00 8.00 10.00' } });
  }
}
