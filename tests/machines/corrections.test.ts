import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at, stepOn, walkTo } from './support/onward.ts';

const DOUGH = (celsius: number) => ({ what: 'doughTemperature', celsius }) as const;
const place = (hand: Hand) => hand.kitchen.bakes['a']!.context;

describe('a correction', () => {
  const measured = () => {
    const hand = at(new Hand(), 'mix.temperature');
    hand.dough('a', 29);
    const target = hand.records.at(-1)!.fact.id;
    const taken = hand.now;
    hand.press('a', 'touchNow');
    return { hand, target, taken };
  };

  it('moves the deadline from then on, and speaks of the instant that was measured', () => {
    const { hand, target, taken } = measured();
    while (hand.stage('a') !== 'bulk.proving') {
      for (const act of ['folded', 'touchNow', 'spread', 'rolled']) {
        if (hand.stage('a') !== 'bulk.proving') hand.press('a', act);
        if (hand.stage('a') === 'bulk.scatter') stepOn(hand, 'a');
      }
    }
    const look = hand.deadline('a')!;
    hand.turn(20);
    expect(hand.do({ kind: 'correct', target, reading: DOUGH(25) })).toBe(true);
    expect(hand.deadline('a')).toBe(look + 40 * MINUTE);
    expect(place(hand).readings['doughTemperature']).toEqual({ at: taken, reading: DOUGH(25) });
  });

  it('may itself be corrected, by the same target', () => {
    const { hand, target, taken } = measured();
    hand.turn(3);
    hand.do({ kind: 'correct', target, reading: DOUGH(25) });
    hand.turn(3);
    expect(hand.do({ kind: 'correct', target, reading: DOUGH(24) })).toBe(true);
    expect(place(hand).readings['doughTemperature']).toEqual({ at: taken, reading: DOUGH(24) });
  });

  it('of an older reading leaves a newer one standing', () => {
    const { hand, target } = measured();
    hand.turn(10);
    hand.dough('a', 26);
    const newer = place(hand).readings['doughTemperature'];
    hand.turn(10);
    expect(hand.do({ kind: 'correct', target, reading: DOUGH(22) })).toBe(true);
    expect(place(hand).readings['doughTemperature']).toEqual(newer);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('of an older reading counts once the newer one is taken back', () => {
    const { hand, target, taken } = measured();
    hand.turn(10);
    hand.dough('a', 26);
    hand.do({ kind: 'correct', target, reading: DOUGH(22) });
    expect(hand.takeBack()).toBe(true);
    expect(place(hand).readings['doughTemperature']).toEqual({ at: taken, reading: DOUGH(22) });
  });

  it('made in a later wait of the same name leaves an earlier one its own end', () => {
    const { hand, target } = measured();
    hand.takeBack();
    const touch = hand.deadline('a');
    hand.turn(5);
    hand.press('a', 'touchNow');
    hand.press('a', 'folded');
    hand.turn(5);
    hand.do({ kind: 'correct', target, reading: DOUGH(25) });
    expect(hand.deadline('a')).not.toBe(touch);
    hand.takeBack();
    hand.takeBack();
    expect(hand.stage('a')).toBe('bulk.between');
    expect(hand.deadline('a')).toBe(touch);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('made at a look moves the wait that a take-back leads back to', () => {
    const hand = at(new Hand(), 'mix.temperature');
    hand.dough('a', 29);
    const target = hand.records.at(-1)!.fact.id;
    walkTo(hand, 'a', 'bulk.proving');
    const look = hand.deadline('a')!;
    hand.turn(10);
    hand.press('a', 'doughSeen');
    hand.do({ kind: 'correct', target, reading: DOUGH(25) });
    hand.turn(10);
    hand.takeBack();
    expect(hand.deadline('a')).toBe(look + 40 * MINUTE);
    hand.press('a', 'doughSeen');
    hand.takeBack();
    expect(hand.deadline('a')).toBe(look + 40 * MINUTE);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is refused once its reading is withdrawn, and goes with it', () => {
    const { hand, target } = measured();
    hand.do({ kind: 'correct', target, reading: DOUGH(25) });
    hand.takeBack();
    expect(hand.stage('a')).toBe('bulk.between');
    hand.takeBack();
    expect(hand.stage('a')).toBe('mix.temperature');
    expect(place(hand).readings).toEqual({});
    expect(hand.do({ kind: 'correct', target, reading: DOUGH(25) })).toBe(false);
  });

  it.each([
    ['another kind of reading', { what: 'firstPiece', grams: 900 }],
    ['a reading of the room', { what: 'kitchenTemperature', celsius: 22 }],
  ] as const)('is refused where it is %s', (_, reading) => {
    const { hand, target } = measured();
    expect(hand.do({ kind: 'correct', target, reading })).toBe(false);
  });

  it('of a press, or of nothing, is refused', () => {
    const { hand } = measured();
    const press = hand.records.at(-1)!.fact.id;
    expect(hand.do({ kind: 'correct', target: press, reading: DOUGH(25) })).toBe(false);
    expect(hand.do({ kind: 'correct', target: 'f99', reading: DOUGH(25) })).toBe(false);
  });
});
