import { describe, expect, test } from 'vitest';
import { cutsOf, loadAreaM2Of, type WalkContext } from '../../../renderer/drawing/index.ts';
import { WalkHand } from '../../support/walkHand.ts';

function walkOf(hand: WalkHand): WalkContext {
  const { walk } = hand.context;
  if (walk === null) throw new Error('no walk');
  return walk;
}

describe('the cuts a hand finds', () => {
  test('are the plan’s own, named by their places', () => {
    const [cut, ...others] = cutsOf(walkOf(new WalkHand()));
    expect([cut?.id, cut?.heldId, others.length]).toEqual(['8.00 0.00 8.00 10.00', null, 0]);
  });

  test('are the job’s once held, and not the plan’s as well', () => {
    const hand = new WalkHand().takeCut().type('');
    expect(cutsOf(walkOf(hand)).map(({ id, heldId }) => [id, heldId])).toEqual([['new-1', 'new-1']]);
  });

  test('are both until a newer plan is there, when one was moved', () => {
    const hand = new WalkHand().takeCut().drag([8, 5], [10, 5]);
    // The plan’s at 8 m stays where the plan has it, first as in the plan; the job’s is not made yet.
    expect(cutsOf(walkOf(hand)).map(({ heldId }) => heldId)).toEqual([null, 'new-1']);
  });

  test('are the job’s alone when there is no plan', () => {
    const walk = walkOf(new WalkHand().takeCut().type(''));
    expect(cutsOf({ ...walk, plan: null }).map(({ id }) => id)).toEqual(['new-1']);
  });
});

test('a load covers less of the map where amounts go by the sloping surface', () => {
  const { plan } = walkOf(new WalkHand());
  if (plan === null) throw new Error('no plan');
  const zones = plan.resolved.zones.map((zone) => ({ ...zone, amountFactor: 1.25 }));
  const [zone] = zones;
  const sloped = { ...plan, resolved: { ...plan.resolved, zones } };
  expect(loadAreaM2Of(sloped, zone?.zoneId ?? '')).toBe(80); // 100 m² / 1.25 by hand
});
