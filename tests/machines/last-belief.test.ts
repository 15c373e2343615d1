import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import { carriedBelief, floursOf, toldBy } from '../../src/core/readiness/carry-over.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { bakesTaught, vigoursOf } from '../../machines/kitchen/last-belief.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { Hand } from './support/hand.ts';
import { at, walkTo } from './support/onward.ts';
import { RECIPE } from './support/recipe.ts';

const belief = (hand: Hand, bake: string) => hand.kitchen.bakes[bake]!.context.belief;

/** A bake whose dough rose quickly, and what was believed of it. */
const quickBake = (): { hand: Hand; learned: { mean: number; sd: number } } => {
  const hand = at(new Hand({ wait: waitFor }), 'bulk.proving', 'levain.feed');
  hand.turn(60);
  hand.measure('a', { what: 'rise', percent: 90, of: 'dough' });
  return { hand, learned: belief(hand, 'a') };
};

describe('a starter from bake to bake', () => {
  it('begins with the opening belief, and the next bake with what was learned', () => {
    const { hand, learned } = quickBake();
    expect(learned.mean).toBeGreaterThan(0.05);
    hand.press('a', 'ended');
    hand.turn(7 * 24 * 60);
    hand.start('b');
    const alone = toldBy(OPENING_BELIEF, learned)!;
    const flours = floursOf(RECIPE.formula);
    const past = [{ ...alone, start: 'f1', at: 0, flours }];
    expect(belief(hand, 'b')).toEqual(carriedBelief(past, flours));
    expect(belief(hand, 'b').mean).toBeGreaterThan(0.7 * learned.mean);
    expect(belief(hand, 'b').sd).toBeGreaterThan(learned.sd);
  });

  it('a bake joined at a wait is reckoned with it from the first', () => {
    const { hand } = quickBake();
    hand.start('b', 'bulk.proving');
    const fresh = new Hand({ wait: waitFor, now: hand.now });
    fresh.start('b', 'bulk.proving');
    const likely = (one: Hand) => one.kitchen.bakes['b']!.context.marks['likely']!;
    expect(likely(hand)).toBeLessThan(likely(fresh));
  });

  it('is not taught by a bake whose start, or whose reading, was taken back', () => {
    const { hand } = quickBake();
    hand.takeBack();
    hand.start('b');
    expect(belief(hand, 'b').mean).toBeCloseTo(OPENING_BELIEF.mean, 12);
  });

  it('stands the same when the log is replayed, and no model runs', () => {
    const { hand } = quickBake();
    hand.start('b');
    const again = replay(hand.records, hand.machines).kitchen;
    expect(again.bakes['b']!.context.belief).toEqual(belief(hand, 'b'));
    expect(again.starts).toEqual(hand.kitchen.starts);
  });

  it('weighs a bake that learned nothing as none, and never its own beginning', () => {
    const { hand } = quickBake();
    const told = vigoursOf(hand.kitchen, { id: '', at: hand.now });
    hand.start('b', 'bulk.proving');
    hand.press('b', 'ended');
    expect(bakesTaught(hand.kitchen)).toBe(1);
    hand.start('c');
    expect(vigoursOf(hand.kitchen, { id: '', at: hand.now })).toEqual(told);
  });
});

describe('what bakes taught, across a jump', () => {
  /** Three quick bakes, each over, and a jump behind them. */
  const jumped = (): Hand => {
    const hand = new Hand({ wait: waitFor });
    for (const bake of ['a', 'b', 'c']) {
      hand.start(bake, 'mix.first');
      walkTo(hand, bake, 'bulk.proving', bake);
      hand.turn(60);
      hand.measure(bake, { what: 'rise', percent: 90, of: 'dough' });
      hand.press(bake, 'ended');
      hand.turn(60);
    }
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    return hand;
  };
  const taughtOf = (hand: Hand) => vigoursOf(hand.kitchen, { id: '', at: hand.now });

  it('is what the last start had found; that start’s own bake is lost', () => {
    const hand = jumped();
    const c = hand.kitchen.starts[taughtOf(hand).at(-1)!.start]!;
    expect([taughtOf(hand).length, c.bake]).toEqual([2, 'b']);
    hand.turn(60);
    hand.start('d');
    expect(belief(hand, 'd').mean).toBeGreaterThan(0.1);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('of a log from before starts pinned it, is what the last bake began with', () => {
    const older = (record: LogRecord): LogRecord => ({
      ...record,
      fact: {
        ...record.fact,
        ...(record.fact.results
          ? { results: record.fact.results.map(({ vigours: _, ...rest }) => rest) }
          : {}),
      },
    });
    const hand = jumped();
    const { kitchen, trouble } = replay(hand.records.map(older), hand.machines);
    expect(trouble).toBeNull();
    hand.kitchen = kitchen;
    const began = Object.values(kitchen.starts).find(({ bake }) => bake === 'c')!.results![0]!;
    expect(taughtOf(hand)).toMatchObject([toldBy(OPENING_BELIEF, began.belief!)!]);
    hand.turn(60);
    hand.start('d');
    expect(belief(hand, 'd').mean).toBeGreaterThan(0.1);
  });

  it('is told on by a bake that runs through it', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'mix.first');
    walkTo(hand, 'a', 'bulk.proving');
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    hand.turn(60);
    hand.measure('a', { what: 'rise', percent: 90, of: 'dough' });
    expect(taughtOf(hand)).toHaveLength(1);
    expect(taughtOf(hand)[0]!.mean).toBeGreaterThan(0.1);
  });
});
