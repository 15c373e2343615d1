import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { forecastError } from '../../src/core/log/forecast-error.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at, walkTo } from './support/onward.ts';

/** A bake whose dough has just been mixed, and what was first told of its bulk. */
const mixed = (from = 'mix.first') => {
  const hand = at(new Hand({ wait: waitFor }), 'bulk.between', from);
  const { likely, earliest, latest } = hand.kitchen.bakes['a']!.context.marks;
  const window = { earliest: earliest!, latest: latest! };
  return { hand, told: hand.now, likely: likely!, window };
};

const toLook = (hand: Hand): Hand => walkTo(hand, 'a', 'bulk.look');
const errorOf = (hand: Hand) => forecastError(hand.records, 'a');

describe('the first forecast of a bulk against its end', () => {
  it('is in minutes, above 0 where the dough took longer', () => {
    const { hand, told, likely, window } = mixed();
    expect(errorOf(hand)).toBeNull();
    toLook(hand).turnTo(likely + 25 * MINUTE);
    expect(errorOf(hand)).toBeNull();
    hand.press('a', 'bulkReady');
    const ended = likely + 25 * MINUTE;
    expect(errorOf(hand)).toEqual({ told, likely, window, ended, late: 25, over: false });
    expect(window.earliest).toBeLessThan(likely);
    expect(window.latest).toBeGreaterThan(likely);
  });

  it('is below 0 where it was ready sooner, whatever a reading made of the forecast meanwhile', () => {
    const { hand, likely } = mixed();
    walkTo(hand, 'a', 'bulk.proving');
    hand.turnTo(likely - 90 * MINUTE);
    hand.measure('a', { what: 'rise', percent: 85, of: 'dough' });
    const moved = hand.kitchen.bakes['a']!.context.marks['likely']!;
    expect(moved).toBeLessThan(likely - 30 * MINUTE);
    hand.turnTo(likely - 80 * MINUTE).press('a', 'bulkReady');
    expect(errorOf(hand)).toMatchObject({ likely, late: -80 });
  });

  it('goes by the last word on the dough: not yet, then ready', () => {
    const { hand, likely } = mixed();
    toLook(hand).press('a', 'bulkNotYet');
    expect(errorOf(hand)).toBeNull();
    toLook(hand).turnTo(likely + 70 * MINUTE);
    hand.press('a', 'bulkReady');
    expect(errorOf(hand)?.late).toBe(70);
  });

  it('leaves out an end that was taken back', () => {
    const { hand, likely } = mixed();
    toLook(hand).press('a', 'bulkReady');
    hand.takeBack();
    expect(errorOf(hand)).toBeNull();
    hand.turnTo(likely + 40 * MINUTE).press('a', 'bulkReady');
    expect(errorOf(hand)?.late).toBe(40);
  });

  it('is told anew where the press that began the bulk was taken back', () => {
    const { hand, told, likely } = mixed();
    hand.takeBack();
    hand.turn(10);
    walkTo(hand, 'a', 'bulk.between');
    toLook(hand).press('a', 'bulkReady');
    // The hours count from the minute levain met flour, which is as it was.
    expect(errorOf(hand)).toMatchObject({ told: told + 10 * MINUTE, likely });
  });

  it('is none of what was told on a temperature keyed wrong: the mended one told it', () => {
    const hand = at(new Hand({ wait: waitFor }), 'mix.temperature', 'mix.first');
    hand.dough('a', 18);
    const target = hand.records.at(-1)!.fact.id;
    const keyed = hand.kitchen.bakes['a']!.context.marks['likely']!;
    hand.turn(1);
    hand.do({ kind: 'correct', target, reading: { what: 'doughTemperature', celsius: 25 } });
    const likely = hand.kitchen.bakes['a']!.context.marks['likely']!;
    expect(likely).toBeLessThan(keyed);
    const told = hand.now;
    toLook(hand).turnTo(likely + 10 * MINUTE);
    hand.press('a', 'bulkReady');
    expect(errorOf(hand)).toMatchObject({ told, likely, late: 10 });
  });

  it('says that a dough was found gone over', () => {
    const { hand, likely } = mixed();
    toLook(hand).turnTo(likely + 200 * MINUTE);
    hand.press('a', 'bulkOver');
    expect(errorOf(hand)).toMatchObject({ late: 200, over: true });
  });

  it('is none of a bake that joined with its dough mixed, was given up, or was told its place', () => {
    const joined = new Hand({ wait: waitFor });
    joined.start('a', 'bulk.proving');
    toLook(joined).press('a', 'bulkReady');
    expect(errorOf(joined)).toBeNull();

    const { hand: given } = mixed();
    given.press('a', 'ended');
    expect(errorOf(given)).toBeNull();

    const { hand: jumped } = mixed();
    jumped.do({ kind: 'jump', position: jumped.records.at(-1)!.position });
    toLook(jumped).press('a', 'bulkReady');
    expect(errorOf(jumped)).toBeNull();
  });

  it('keeps two bakes apart, and reads the same from a log that was read again', () => {
    const { hand, likely } = mixed();
    hand.start('b', 'mix.first');
    toLook(hand).turnTo(likely + 15 * MINUTE);
    hand.press('a', 'bulkReady');
    expect(errorOf(hand)?.late).toBe(15);
    expect(forecastError(hand.records, 'b')).toBeNull();
    const plain = JSON.parse(JSON.stringify(hand.records)) as typeof hand.records;
    expect(forecastError(plain, 'a')).toEqual(errorOf(hand));
  });
});
