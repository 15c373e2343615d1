import { beforeAll, describe, expect, it } from 'vitest';
import { clockOf } from '../../machines/kitchen/at-door.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { dayOfBake } from '../../src/core/log/day-of-bake.ts';
import type { LoafDay } from '../../src/core/log/loaf-day.ts';
import { readLoaf } from '../../src/core/log/read-loaf.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { bakedYear } from './support/baked-year.ts';
import { Hand } from './support/hand.ts';
import { walkTo, walkToEnd } from './support/onward.ts';
import { RECIPE, SCOOP, TIN } from './support/recipe.ts';

type Press = Extract<Fact, { kind: 'press' }>;

const dayOf = (hand: Hand, start = 'f1', cutAt = hand.now): LoafDay =>
  dayOfBake([hand.records], start, { cutAt })!;
const hand = (from = 'mix.weigh', recipe = RECIPE): Hand => {
  const baker = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  baker.start('a', from, ['a1', 'a2'], recipe);
  return baker;
};

describe('the days of a year of bakes', () => {
  let records: readonly LogRecord[] = [];
  beforeAll(() => {
    records = bakedYear({ bakes: 12, seed: 5 });
  });
  const starts = () => records.flatMap(({ fact }) => (fact.kind === 'start' ? [fact] : []));
  const gone = () =>
    new Set(records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])));
  const pressesOf = (loaves: readonly string[], bake: string): readonly Press[] =>
    records.flatMap(({ fact }) =>
      fact.kind === 'press' &&
      !gone().has(fact.id) &&
      (fact.who === bake || fact.loaves?.some((loaf) => loaves.includes(loaf)))
        ? [fact]
        : [],
    );

  it('have what their own facts say, and every number is one', () => {
    let risen = 0;
    for (const { id, bake, loaves, recipe } of starts()) {
      const day = dayOfBake([records], id, { cutAt: Infinity })!;
      const presses = pressesOf(loaves, bake);
      const end = presses.findIndex(({ act }) => act === 'bulkReady');
      const told = presses
        .slice(0, end)
        .findLast(
          ({ act, item, value }) => act === 'answer' && item === 'rise' && /\d/.test(value!),
        );
      if (end >= 0 && told && day.rise) {
        risen += 1;
        expect(day.rise).toMatchObject({
          percent: Number(told.value),
          wanted: recipe.process.rise,
        });
        expect(day.rise.doubt).toBeGreaterThanOrEqual(10);
      }
      expect(day.filled).toBe(recipe.formula.fillings.length > 0);
      expect(JSON.stringify(day)).not.toContain('null');
      expect(Object.values(day)).not.toContain(undefined);
      const fridge = presses.find(({ act }) => act === 'inFridge');
      const loaded = presses.find(({ act }) => act === 'loaded');
      if (fridge && loaded) expect(day.coldHours).toBeCloseTo((loaded.at - fridge.at) / HOUR, 6);
      if (day.q !== undefined)
        expect([day.q > 0.2, day.q < 2.5, day.qDoubt! > 0]).toEqual([true, true, true]);
    }
    expect(risen).toBeGreaterThan(4);
  });
});

describe('the proof index at the door', () => {
  it.each([
    ['a cold loaf', RECIPE, 'mix.weigh'],
    ['a warm one', TIN, 'mix.weigh'],
    ['one joined as it is divided', RECIPE, 'shape.divide'],
  ])('of %s is what the clock had there', (_, recipe, from) => {
    const baker = hand(from, recipe);
    if (from === 'mix.weigh') {
      walkTo(baker, 'a', 'bulk.proving');
      baker.dough('a', 24);
      baker.turn(120);
      baker.measure('a', { what: 'rise', percent: 40, of: 'dough' });
    }
    walkTo(baker, 'oven', 'load');
    const known = clockOf(baker.kitchen, baker.kitchen.bakes['a']!).q!;
    walkToEnd(baker);
    const { q, qDoubt } = dayOf(baker);
    expect(q).toBeCloseTo(known, 1);
    expect(qDoubt).toBeGreaterThan(0.05);
  });

  it('is left out where nobody saw it shaped or go cold, and of a spooned dough', () => {
    expect(dayOf(walkToEnd(hand('oven.queued')))).not.toHaveProperty('q');
    expect(dayOf(walkToEnd(hand('proof.retard')))).not.toHaveProperty('q');
    expect(dayOf(walkToEnd(hand('shape.scoop', SCOOP)))).not.toHaveProperty('q');
  });

  it('heeds no core of the oven: that is no loaf in a fridge', () => {
    const without = walkToEnd(hand());
    const baker = walkTo(hand(), 'oven', 'judge');
    baker.measure('a', { what: 'coreTemperature', celsius: 97 });
    walkToEnd(baker);
    expect(dayOf(baker).q).toBeCloseTo(dayOf(without).q!, 6);
  });
});

describe('what was seen of the loaf', () => {
  /** Out of the first pot's judging as `act` has it, after a core of so many °C. */
  const judged = (celsius: number, act: string, minutes = 5): Hand => {
    const baker = walkTo(hand('oven.queued'), 'oven', 'judge');
    baker.measure('a', { what: 'coreTemperature', celsius });
    baker.press('oven', act);
    return act === 'crustNotYet' ? baker.turn(minutes) : baker;
  };

  it('has the core that it came out with, the coolest spot of its last look', () => {
    const baker = walkTo(hand('oven.queued'), 'oven', 'judge');
    for (const celsius of [97, 91, 95]) baker.measure('a', { what: 'coreTemperature', celsius });
    walkToEnd(baker);
    expect(dayOf(baker)).toMatchObject({ core: 91, height: 0 });
    expect(dayOf(walkToEnd(judged(91, 'crustReady'))).core).toBe(91);
  });

  it('has none where it baked on, and none that was measured as it cooled', () => {
    expect(dayOf(walkToEnd(judged(88, 'crustNotYet')))).not.toHaveProperty('core');
    const cooling = walkTo(hand('oven.queued'), 'a', 'cool.cooling');
    cooling.turn(60);
    cooling.measure('a', { what: 'coreTemperature', celsius: 35 });
    expect(dayOf(walkToEnd(cooling))).not.toHaveProperty('core');
  });

  it('has a crust where all that were told of are alike', () => {
    const told = (second: string): Hand => {
      const baker = walkTo(hand('oven.queued'), 'oven', 'judge');
      baker.answer('oven', { colour: 'dark' });
      walkTo(baker, 'oven', 'recover');
      walkTo(baker, 'oven', 'judge');
      baker.answer('oven', { colour: second });
      return walkToEnd(baker);
    };
    expect(dayOf(told('dark')).crust).toBe('dark');
    expect(dayOf(told('golden'))).not.toHaveProperty('crust');
  });

  it('has the dent that was told last, and whether the loaf was cold', () => {
    const cold = walkTo(hand('shape.divide'), 'oven', 'poke');
    cold.answer('oven', { dent: 'springs' });
    expect(dayOf(walkToEnd(cold)).poke).toEqual({ dent: 'springs', cold: true });
    const warm = walkTo(hand('shape.divide', TIN), 'a', 'proof.poke');
    warm.answer('a', { dent: 'slowly' });
    expect(dayOf(walkToEnd(warm)).poke).toEqual({ dent: 'slow', cold: false });
    const stood = walkTo(hand('shape.divide'), 'a', 'proof.look');
    stood.press('a', 'standOut');
    walkTo(stood, 'a', 'proof.poke');
    stood.answer('a', { dent: 'stays' });
    expect(dayOf(walkToEnd(stood)).poke).toEqual({ dent: 'stays', cold: false });
  });

  it('has no dent of another bake at the same door', () => {
    const baker = walkTo(hand('oven.queued'), 'oven', 'poke');
    baker.start('b', 'oven.queued', ['b1']);
    baker.answer('oven', { dent: 'springs' });
    walkToEnd(baker);
    walkToEnd(baker, 'b');
    const other = baker.records.find(({ fact }) => fact.kind === 'start' && fact.bake === 'b')!;
    expect(dayOf(baker).poke?.dent).toBe('springs');
    expect(dayOf(baker, other.fact.id)).not.toHaveProperty('poke');
  });

  it('has its time in the oven, unless some were short of it and some were not', () => {
    const { records } = walkToEnd(hand('oven.queued'));
    const bakedOf = (rows: readonly LogRecord[]) =>
      dayOfBake([rows], 'f1', { cutAt: Infinity })!.baked;
    /** The unloads of these numbers, ten minutes sooner. */
    const sooner = (which: readonly number[]): LogRecord[] => {
      let n = -1;
      return records.map((row) => {
        if (row.fact.kind !== 'press' || row.fact.act !== 'unloaded') return row;
        n += 1;
        return which.includes(n)
          ? { ...row, fact: { ...row.fact, at: row.fact.at - 10 * MINUTE } }
          : row;
      });
    };
    expect(bakedOf(records)).toEqual({ minutes: 38, least: 38 });
    expect(bakedOf(sooner([0, 1]))).toEqual({ minutes: 28, least: 38 });
    expect(bakedOf(sooner([1]))).toBeUndefined();
  });
});

describe('how long it cooled', () => {
  it('is known within two hours of the oven, and not when it is told of later', () => {
    const baker = walkTo(hand('oven.queued'), 'a', 'cool.cooling');
    const out = baker.now;
    const at = (minutes: number) => dayOf(baker, 'f1', out + minutes * MINUTE).cooledMinutes;
    expect([0, 25, 120].map(at)).toEqual([0, 25, 120]);
    expect([-1, 121, 900].map(at)).toEqual([undefined, undefined, undefined]);
  });

  it('makes a warm loaf of a gummy one', () => {
    const baker = walkTo(hand('oven.queued'), 'a', 'cool.cooling');
    const cutAt = baker.now + 20 * MINUTE;
    const { causes, because } = readLoaf(
      { crumb: 'gummy', spread: 'tall', base: 'even' },
      dayOf(baker, 'f1', cutAt),
    );
    expect(causes[0]!.cause).toBe('cutHot');
    expect(because).toContain('cooled');
  });
});

it('is none of a start that is in no log, or was taken back', () => {
  const baker = hand();
  expect(dayOfBake([[]], 'f1', { cutAt: 0 })).toBeNull();
  expect(dayOfBake([baker.records], 'f9', { cutAt: 0 })).toBeNull();
  baker.takeBack();
  expect(dayOfBake([baker.records], 'f1', { cutAt: 0 })).toBeNull();
});

it('has what there is of a bake under way', () => {
  const baker = walkTo(hand(), 'a', 'bulk.proving');
  baker.dough('a', 20);
  baker.turn(20);
  baker.dough('a', 22);
  expect(dayOf(baker)).toEqual({ doughCelsius: 21, height: 0, filled: true });
});
