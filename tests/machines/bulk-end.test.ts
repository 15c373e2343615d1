import { describe, expect, it } from 'vitest';
import { bakePage, type BakePage } from '../../src/core/log/bake-page.ts';
import { bulkEnd, coldHours } from '../../src/core/log/bulk-end.ts';
import { Hand } from './support/hand.ts';
import { RECIPE } from './support/recipe.ts';
import { at, walkTo, walkToEnd } from './support/onward.ts';

const pageOf = (hand: Hand): BakePage => bakePage(hand.records, 'a')!;
const endOf = (hand: Hand) => bulkEnd(pageOf(hand));
const atLook = (from = 'mix.first'): Hand => at(new Hand(), 'bulk.look', from);
const risen = (hand: Hand, percent: number, more: { odd?: true; in?: 'jar' } = {}): boolean =>
  hand.measure('a', { what: 'rise', percent, of: 'dough', ...more });

describe('the end of a bulk', () => {
  it('is the press that says ready, with the last rise that was read before it', () => {
    const hand = atLook();
    risen(hand, 40);
    hand.turn(60);
    risen(hand, 70);
    hand.turn(30);
    expect(endOf(hand)).toBeNull();
    hand.press('a', 'bulkReady');
    const ended = hand.now;
    hand.turn(5);
    expect(endOf(hand)).toMatchObject({ at: ended, over: false });
    expect(endOf(hand)!.rise).toMatchObject({ percent: 70, before: 30, atLeast: false });
  });

  it('doubts a rise the more the older it is', () => {
    const doubts = [0, 30, 120].map((minutes) => {
      const hand = atLook();
      risen(hand, 60);
      hand.turn(minutes).press('a', 'bulkReady');
      return Math.round(endOf(hand)!.rise!.doubt);
    });
    // A dough may rise 20 points an hour: √(10² + 10²), √(10² + 40²).
    expect(doubts).toEqual([10, 14, 41]);
  });

  it('has the rise that was told by picture as the look was left', () => {
    const hand = atLook();
    hand.answer('a', { rise: '100', edge: 'domed', bubbles: 'many' });
    hand.press('a', 'bulkReady');
    expect(pageOf(hand).looks.map(({ reading }) => reading.what)).toEqual(['rise', 'edge']);
    expect(endOf(hand)!.rise).toMatchObject({ percent: 100, atLeast: true, before: 0 });
  });

  it('goes by the last word: not yet, a further look, gone over', () => {
    const hand = atLook();
    hand.answer('a', { rise: '50' });
    hand.press('a', 'bulkNotYet');
    expect(endOf(hand)).toBeNull();
    walkTo(hand, 'a', 'bulk.look').answer('a', { rise: '100' });
    hand.press('a', 'bulkOver');
    expect(endOf(hand)).toMatchObject({ at: hand.now, over: true, rise: { percent: 100 } });
  });

  it('asks no jar, no levain, no odd reading, and none after it', () => {
    const hand = atLook();
    risen(hand, 90, { in: 'jar' });
    hand.measure('a', { what: 'rise', percent: 95, of: 'levain' });
    risen(hand, 240, { odd: true });
    hand.press('a', 'bulkReady');
    hand.turn(5);
    risen(hand, 80);
    expect(endOf(hand)!.rise).toBeNull();
  });

  it('reads what was corrected as it does now, and nothing that was taken back', () => {
    const hand = atLook();
    risen(hand, 70);
    const target = hand.records.at(-1)!.fact.id;
    risen(hand, 20);
    hand.takeBack();
    hand.do({ kind: 'correct', target, reading: { what: 'rise', percent: 75, of: 'dough' } });
    hand.press('a', 'bulkReady');
    expect(endOf(hand)!.rise!.percent).toBe(75);
    hand.takeBack();
    expect(endOf(hand)).toBeNull();
  });

  it('has its hours from the minute levain met flour, and none where that was not seen', () => {
    const hand = atLook();
    const mixed = pageOf(hand).stages.find(({ stage }) => stage === 'mix.first')!.from;
    hand.press('a', 'bulkReady');
    expect(endOf(hand)!.hours).toBeCloseTo((hand.now - mixed) / 3_600_000, 6);
    const joined = atLook('bulk.proving');
    joined.press('a', 'bulkReady');
    expect(endOf(joined)!.hours).toBeNull();
  });

  it('is none of a bake that was given up in it, or joined behind it', () => {
    const given = atLook();
    given.press('a', 'ended');
    expect(endOf(given)).toBeNull();
    expect(endOf(at(new Hand(), 'shape.preshape', 'shape.divide'))).toBeNull();
  });
});

describe('the hours of cold', () => {
  it('are from the first loaf in the fridge to the first in the oven', () => {
    const hand = at(new Hand(), 'proof.retard');
    const put = hand.now;
    expect(coldHours(pageOf(hand))).toBeNull();
    walkToEnd(hand, 'a');
    const first = hand.records.find(({ fact }) => fact.kind === 'press' && fact.act === 'loaded')!;
    expect(coldHours(pageOf(hand))).toBeCloseTo((first.fact.at - put) / 3_600_000, 6);
  });

  it('are none at all for a warm proof', () => {
    const recipe = { ...RECIPE, process: { ...RECIPE.process, retard: 0, warm: 90 } };
    const hand = new Hand();
    hand.start('a', 'mix.first', ['a1'], recipe);
    walkToEnd(hand, 'a');
    expect(coldHours(pageOf(hand))).toBe(0);
  });

  it('are not known of a bake that was joined in the fridge or behind it', () => {
    for (const from of ['proof.retard', 'oven.queued'] as const) {
      const hand = new Hand();
      hand.start('a', from);
      walkToEnd(hand, 'a');
      expect(pageOf(hand).loads.length).toBeGreaterThan(0);
      expect(coldHours(pageOf(hand))).toBeNull();
    }
  });
});
