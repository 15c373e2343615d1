import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { bakeBeliefs } from '../../src/core/log/bake-beliefs.ts';
import { bakeRows } from '../../src/core/log/bake-rows.ts';
import { Hand } from './support/hand.ts';
import { walkTo } from './support/onward.ts';

const beliefsOf = (hand: Hand) => bakeBeliefs(bakeRows(hand.records, 'a')!);
/** A dough that rises, judged by the real models. */
const rising = (): Hand => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'mix.first');
  walkTo(hand, 'a', 'mix.temperature');
  hand.dough('a', 25);
  return walkTo(hand, 'a', 'bulk.proving');
};

describe('what was believed of a starter in a bake', () => {
  it('is what its facts said, each time it changed', () => {
    const hand = rising();
    const before = beliefsOf(hand)!;
    hand.turn(120);
    hand.measure('a', { what: 'rise', percent: 40, of: 'dough' });
    const after = beliefsOf(hand)!;
    expect(after.changes.slice(0, -1)).toEqual(before.changes);
    const last = after.changes.at(-1)!;
    const said = hand.records.at(-1)!.fact.results!.find(({ who }) => who === 'a')!.belief!;
    expect([last.at, last.likely]).toEqual([hand.now, Math.exp(said.mean)]);
    // Four of five of a normal lie within 1.2816 of its sd: tables of the normal distribution.
    expect(Math.log(last.high / last.likely)).toBeCloseTo(1.2816 * said.sd, 9);
    expect(Math.log(last.likely / last.low)).toBeCloseTo(1.2816 * said.sd, 9);
    expect(last.high - last.low).toBeLessThan(
      before.changes.at(-1)!.high - before.changes.at(-1)!.low,
    );
  });

  it('is not what a take-back withdrew', () => {
    const hand = rising();
    hand.turn(120);
    const before = beliefsOf(hand)!.changes;
    hand.measure('a', { what: 'rise', percent: 60, of: 'dough' });
    hand.takeBack();
    expect(beliefsOf(hand)!.changes.map(({ likely }) => likely)).toEqual(
      before.map(({ likely }) => likely),
    );
  });

  it('does not change with facts that say the same again', () => {
    const { changes, until } = beliefsOf(rising())!;
    const likely = changes.map((one) => [one.likely, one.low]);
    likely.slice(1).forEach((one, n) => expect(one).not.toEqual(likely[n]));
    expect(until).toBeGreaterThanOrEqual(changes.at(-1)!.at);
  });
});
