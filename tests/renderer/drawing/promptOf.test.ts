import { describe, expect, test } from 'vitest';
import { readPlace } from '../../../core/crs/index.ts';
import { promptOf } from '../../../renderer/drawing/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { Hand, pointing, trace, yardOf } from '../../support/drawing.ts';
import { WalkHand } from '../../support/walkHand.ts';

function said(hand: Hand, mayEdit = true) {
  return promptOf(hand.state, hand.yard.details.unitSystem, hand.yard, mayEdit);
}

describe('the foot line', () => {
  test('says how to go on at every step of a trace, and offers a field for it', () => {
    const hand = new Hand(yardOf()).do(trace('tree'));
    expect(said(hand).text).toContain('tree ring');
    expect(said(hand).typedLabel).toBe('East, north');
    hand.click([0, 0], [4, 0]);
    expect(said(hand).text).not.toContain('Enter');
    hand.click([4, 3]);
    expect(said(hand).text).toContain('Enter');
  });

  test('names what the pointer snapped to', () => {
    const yard = yardOf({ outlines: [outline('building', 'House', rect(0, 0, 10, 8))] });
    const hand = new Hand(yard).do(trace(), pointing('move', 10.1, 0, 0.5));
    expect(said(hand).snapped).toBe('snapped: corner of House');
  });

  test('says which corner is chosen and how long its edge is', () => {
    const hand = new Hand(yardOf({ outlines: [outline('zone', 'lawn', rect(0, 0, 10, 6))] })).click([5, 2]);
    hand.do({ kind: 'next-corner' }, { kind: 'next-corner' });
    expect(said(hand).text).toContain('Corner 2 of 4, 10.00 m'); // the south edge of a 10 m rectangle
  });

  test('offers to take up what was put aside', () => {
    const hand = new Hand(yardOf()).do(trace('bed')).click([0, 0]).do({ kind: 'escape' });
    expect(said(hand).text).toContain('Backspace takes up the open bed');
  });

  test('keeps its field while the ends of a tape are pointed out, so that the keys stay in it', () => {
    const yard = yardOf({ outlines: [outline('zone', 'lawn', rect(0, 0, 10, 6))] });
    const hand = new Hand(yard).do({ kind: 'take', tool: { kind: 'tape-between' } });
    const begins = said(hand);
    const ends = said(hand.click([0, 0]));
    const reads = said(hand.click([10, 6]));
    expect([begins, ends, reads].map(({ typedLabel }) => typedLabel)).toEqual(
      new Array(3).fill('Taped distance'),
    );
    expect(new Set([begins, ends, reads].map(({ text }) => text)).size).toBe(3); // each says what is next
  });

  test('carries the problem of the last thing tried', () => {
    expect(said(new Hand(yardOf()).do(trace()).type('what')).problem).not.toBeNull();
  });

  test('leads from one known place to the next, with its field always there', () => {
    const yard = yardOf({ outlines: [outline('zone', 'lawn', rect(0, 0, 10, 6))] });
    const hand = new Hand(yard).do({ kind: 'take', tool: { kind: 'place-yard', readPlace } });
    expect(said(hand).text).toContain('Click a point');
    hand.click([0, 0]);
    expect(said(hand).text).toContain('latitude, longitude');
    hand.type('40, -86');
    expect(said(hand).text).toContain('far from the first');
    hand.click([10, 0]).type('40, -85.9999');
    expect(said(hand).text).toContain('Enter');
    expect(said(hand).typedLabel).toBe('Place of the point');
  });

  test('of a yard in hand takes a shift or a turn', () => {
    const hand = new Hand(yardOf()).do({ kind: 'take', tool: { kind: 'move-yard' } });
    expect(said(hand).typedLabel).toBe('East, north, or degrees clockwise');
  });

  test('asks for nothing where nothing may be changed', () => {
    expect(said(new Hand(yardOf()).do(trace()), false).typedLabel).toBeNull();
  });
});

describe('the foot line of the walk', () => {
  test('says what a typed figure does to the part of a cut that is chosen', () => {
    const hand = new WalkHand().takeCut();
    expect(said(hand).typedLabel).toBe('Length and bearing');
    hand.do({ kind: 'next-corner' });
    expect(said(hand).typedLabel).toBe('Along the edge');
  });

  test('says which end of a new cut is next, and what it was drawn to', () => {
    const hand = new WalkHand().do({ kind: 'take', tool: { kind: 'add-cut' } });
    expect(said(hand).text).toContain('begins');
    hand.do(pointing('click', 3, 0), pointing('move', 3, 10));
    expect([said(hand).text, said(hand).snapped]).toEqual([
      'Click the edge where the cut ends, or type:',
      'snapped: the edge',
    ]);
  });

  test('says whether the start or the finish is pointed out', () => {
    const of = (end: 'start' | 'finish') =>
      said(new WalkHand().do({ kind: 'take', tool: { kind: 'place-end', end } })).text;
    expect([of('start'), of('finish')]).toEqual([
      'Click where the walk starts, or type east, north:',
      'Click where the walk finishes, or type east, north:',
    ]);
  });
});
