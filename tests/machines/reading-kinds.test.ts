import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/core/records/fact.ts';
import { slotOf } from '../../src/core/records/reading-slot.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

const place = (hand: Hand) => hand.kitchen.bakes['a']!.context;
const lastId = (hand: Hand) => hand.records.at(-1)!.fact.id;

/** Each kind of reading, what it is mended to, and one of another kind. */
const KINDS: readonly (readonly [Reading, Reading, Reading])[] = [
  [
    { what: 'doughTemperature', celsius: 29 },
    { what: 'doughTemperature', celsius: 24 },
    { what: 'kitchenTemperature', celsius: 24 },
  ],
  [
    { what: 'kitchenTemperature', celsius: 60, odd: true },
    { what: 'kitchenTemperature', celsius: 20 },
    { what: 'coreTemperature', celsius: 20 },
  ],
  [
    { what: 'coreTemperature', celsius: 96 },
    { what: 'coreTemperature', celsius: 69 },
    { what: 'doughTemperature', celsius: 69 },
  ],
  [
    { what: 'flourTemperature', celsius: 16 },
    { what: 'flourTemperature', celsius: 21 },
    { what: 'levainTemperature', celsius: 21 },
  ],
  [
    { what: 'levainTemperature', celsius: 12 },
    { what: 'levainTemperature', celsius: 21 },
    { what: 'water', celsius: 21, of: 'tap' },
  ],
  [
    { what: 'wantedDough', celsius: 23 },
    { what: 'wantedDough', celsius: 27 },
    { what: 'doughTemperature', celsius: 27 },
  ],
  [
    { what: 'water', celsius: 12, of: 'tap' },
    { what: 'water', celsius: 21, of: 'tap' },
    { what: 'water', celsius: 21, of: 'bowl' },
  ],
  [
    { what: 'rise', percent: 60, of: 'dough' },
    { what: 'rise', percent: 50, of: 'dough' },
    { what: 'rise', percent: 50, of: 'levain' },
  ],
  [
    { what: 'rise', percent: 120, of: 'levain' },
    { what: 'rise', percent: 100, of: 'levain' },
    { what: 'rise', percent: 100, of: 'dough' },
  ],
  [
    { what: 'edge', edge: 'flat', bubbles: 'none' },
    { what: 'edge', edge: 'domed', bubbles: 'many' },
    { what: 'poke', dent: 'slow' },
  ],
  [
    { what: 'poke', dent: 'stays' },
    { what: 'poke', dent: 'unsure' },
    { what: 'crust', colour: 'dark' },
  ],
  [
    { what: 'weight', grams: 1840, of: 'dough' },
    { what: 'weight', grams: 1804, of: 'dough' },
    { what: 'weight', grams: 1804, of: 'piece' },
  ],
  [
    { what: 'weight', grams: 911, of: 'piece' },
    { what: 'weight', grams: 901, of: 'piece' },
    { what: 'firstPiece', grams: 901 },
  ],
  [
    { what: 'weight', grams: 780, of: 'loaf' },
    { what: 'weight', grams: 790, of: 'loaf' },
    { what: 'weight', grams: 790, of: 'piece' },
  ],
  [
    { what: 'firstPiece', grams: 911 },
    { what: 'firstPiece', grams: 901 },
    { what: 'weight', grams: 901, of: 'piece' },
  ],
  [
    { what: 'crust', colour: 'pale' },
    { what: 'crust', colour: 'golden' },
    { what: 'edge', edge: 'domed', bubbles: 'some' },
  ],
];

describe.each(KINDS)('%o', (first, mended, other) => {
  const slot = slotOf(first);
  const measured = () => {
    const hand = at(new Hand(), 'bulk.proving');
    hand.turn(5);
    expect(hand.measure('a', first)).toBe(true);
    const target = lastId(hand);
    const taken = hand.now;
    hand.turn(7);
    return { hand, target, taken };
  };

  it('is kept, corrected at the instant it was measured, and replayed', () => {
    const { hand, target, taken } = measured();
    expect(place(hand).readings[slot]).toEqual({ at: taken, reading: first });
    expect(hand.do({ kind: 'correct', target, reading: mended })).toBe(true);
    expect(place(hand).readings[slot]).toEqual({ at: taken, reading: mended });
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is not corrected by another kind, nor stands another kind in its way', () => {
    const { hand, target, taken } = measured();
    expect(hand.do({ kind: 'correct', target, reading: other })).toBe(false);
    expect(hand.measure('a', other)).toBe(true);
    expect(hand.do({ kind: 'correct', target, reading: mended })).toBe(true);
    expect(place(hand).readings[slot]).toEqual({ at: taken, reading: mended });
    expect(place(hand).readings[slotOf(other)]?.reading).toEqual(other);
  });

  it('goes with its correction when it is taken back', () => {
    const { hand, target } = measured();
    hand.do({ kind: 'correct', target, reading: mended });
    expect(hand.takeBack()).toBe(true);
    expect(place(hand).readings[slot]).toBeUndefined();
    expect(hand.do({ kind: 'correct', target, reading: mended })).toBe(false);
    expect(hand.replayed().trouble).toBeNull();
  });
});

describe('readings that no model uses yet', () => {
  it.each<Reading>([
    { what: 'rise', percent: 100, of: 'dough' },
    { what: 'edge', edge: 'domed', bubbles: 'many' },
    { what: 'poke', dent: 'stays' },
    { what: 'weight', grams: 1840, of: 'dough' },
  ])('leave the look where it is: %o', (reading) => {
    const hand = at(new Hand(), 'bulk.proving');
    const look = hand.deadline('a')!;
    hand.turn(30);
    expect(hand.measure('a', reading)).toBe(true);
    expect(hand.deadline('a')).toBe(look);
    expect(hand.now).toBeLessThan(look - MINUTE);
  });
});
