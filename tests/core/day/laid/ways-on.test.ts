import { describe, expect, it } from 'vitest';
import { planAndFallback, type Trouble } from '../../../../src/core/day/laid/came-up.ts';
import { missedFold } from '../../../../src/core/day/laid/missed-fold.ts';
import { laidAgain } from '../../../../src/core/day/laid/moved.ts';
import { waysOn } from '../../../../src/core/day/laid/ways-on.ts';
import { plan } from '../../../../src/core/day/plan.ts';
import type { BakePlace } from '../../../../src/core/records/position.ts';
import { TIN } from '../../../machines/support/recipe.ts';
import {
  askedDay,
  at,
  bakeAt,
  dayPlan,
  HOUR,
  hoursIn,
  kitchenWith,
  live,
  MINUTE,
  NAME,
  OVEN_OFF,
  touchOf,
} from '../support/live-day.ts';

const asked = askedDay();
const first = dayPlan(asked);
const { t, ended } = hoursIn(first);

/** A bulk in its last wait; `spread`: minutes from likely to either end. */
const bulk = (spread: number): BakePlace =>
  bakeAt(
    'bulk.proving',
    { 'mix.salt': t('salt and water'), 'bulk.proving': ended('fold 2') },
    {
      touches: 3,
      marks: {
        earliest: t('divide') - spread * MINUTE,
        likely: t('divide'),
        latest: t('divide') + spread * MINUTE,
      },
    },
  );

const ways = async (trouble: Trouble, place: BakePlace, now: number) => {
  const { day } = live(first, asked, kitchenWith(place), now);
  const found = await planAndFallback(waysOn(trouble, day), ({ input }) =>
    plan(input, { why: false }),
  );
  return found;
};

describe('something came up', () => {
  it('an hour out in the middle of the bulk: go, nothing is to be done', async () => {
    const now = ended('fold 2') + 5 * MINUTE;
    const trouble = { trouble: 'away', from: now, to: now + HOUR } as const;
    const [best] = await ways(trouble, bulk(30), now);
    expect(best!.way).toBe('asPlanned');
    const divide = touchOf(best!.result, 'divide').at - t('divide');
    expect(Math.abs(divide)).toBeLessThanOrEqual(10 * MINUTE);
    expect(best!.ask.away).toEqual([{ name: 'out', from: now, to: now + HOUR }]);
  });

  it('three hours out over the end of the bulk: a cool room, else the fridge, with what each does', async () => {
    const now = ended('fold 2') + 5 * MINUTE;
    const from = now + 10 * MINUTE;
    const trouble = { trouble: 'away', from, to: from + 3 * HOUR } as const;
    const [best, other] = await ways(trouble, bulk(20), now);
    expect([best!.way, other!.way]).toEqual(['coolRoom', 'fridge']);
    expect(best!.place).toEqual({ celsius: 18, from });
    expect(other!.place!.celsius).toBe(4);
    expect(other!.works).toBeGreaterThan(60);
    expect(other!.works).toBeLessThan(240);
    for (const { result } of [best!, other!]) {
      expect(touchOf(result, 'divide').at).toBeGreaterThanOrEqual(trouble.to);
      expect(result.ready).toEqual(first.ready);
    }
  });

  it('four hours: the fridge, or be back sooner', async () => {
    const now = ended('fold 2') + 5 * MINUTE;
    const from = now + 10 * MINUTE;
    const trouble = { trouble: 'away', from, to: from + 4 * HOUR } as const;
    const [best, other] = await ways(trouble, bulk(20), now);
    expect([best!.way, other!.way]).toEqual(['fridge', 'backSooner']);
    expect(other!.by).toBe(90);
    expect(other!.ask.away[0]!.to).toBe(trouble.to - 90 * MINUTE);
  });

  it('going later: look before one goes, where it may be ready by then', async () => {
    const now = t('divide') - 60 * MINUTE;
    const from = t('divide') - 10 * MINUTE;
    const trouble = { trouble: 'away', from, to: from + 2 * HOUR } as const;
    const [best] = await ways(trouble, bulk(20), now);
    expect(best!.way).toBe('lookFirst');
    const divide = touchOf(best!.result, 'divide');
    expect(divide.at + divide.hands * MINUTE).toBeLessThanOrEqual(from);
  });

  it('folds that fall into it are left out, and stay out; a sheet fold waits', async () => {
    const now = ended('salt and water') + 10 * MINUTE;
    const place = bakeAt(
      'bulk.between',
      { 'mix.salt': t('salt and water'), 'bulk.between': ended('salt and water') },
      {
        touches: 0,
        marks: {
          earliest: t('divide') - 40 * MINUTE,
          likely: t('divide'),
          latest: t('divide') + HOUR,
          touch: ended('salt and water') + 30 * MINUTE,
        },
      },
    );
    const trouble = { trouble: 'away', from: now, to: now + 75 * MINUTE } as const;
    const [best] = await ways(trouble, place, now);
    expect(best!.way).toBe('leaveFolds');
    expect(best!.without).toEqual(['fold 1']);
    expect(touchOf(best!.result, 'lamination').at).toBeGreaterThanOrEqual(trouble.to);
    const next = laidAgain(first, best!.live, best!.result, best!.ask);
    expect(next.touches.map(({ name }) => name)).not.toContain('fold 1');
    const question = { ...asked, blocked: [...asked.blocked, { ...trouble }] };
    const again = live(next, question, kitchenWith(place), now + MINUTE);
    const sides = again.input.batches[0]!.steps[0]!.during!.map(({ name }) => name);
    expect(sides).toEqual(['lamination', 'fold 2']);
  });

  it('overslept: what was missed is now, and bread is as soon as it can be', async () => {
    const now = at(5, 10);
    const place = bakeAt(
      'proof.retard',
      { 'proof.toFridge': t('to fridge'), 'proof.retard': ended('to fridge') },
      { touches: 3, marks: { earliest: at(5, 5), likely: at(5, 8), latest: at(5, 12), look: now } },
    );
    const [best] = await ways({ trouble: 'overslept' }, place, now);
    expect(best!.way).toBe('later');
    expect(best!.result.ready[0]!.at).toBeGreaterThan(at(5, 12));
    expect(best!.ask.bakes[0]!.due).toBe(best!.result.ready[0]!.at);
    expect(touchOf(best!.result, 'oven on').at).toBeLessThanOrEqual(now + 20 * MINUTE);
  });

  it('a levain two hours late: wait, or stand it warmer', async () => {
    const now = t('mix') - HOUR;
    const place = bakeAt(
      'levain.ripening',
      { 'levain.ripening': ended('feed levain') },
      { marks: { earliest: t('mix') - HOUR, likely: t('mix'), latest: t('mix') + HOUR } },
    );
    const [best, other] = await ways({ trouble: 'levainLate', batch: NAME, by: 120 }, place, now);
    expect([best!.way, other!.way]).toEqual(['fromNow', 'warmPlace']);
    expect(touchOf(other!.result, 'mix').at).toBeLessThanOrEqual(touchOf(best!.result, 'mix').at);
    expect(touchOf(best!.result, 'mix').at).toBeGreaterThan(t('mix'));
  });

  it('a missed fold is done now, or left out', async () => {
    const now = t('fold 2') + 35 * MINUTE;
    const place = bakeAt(
      'bulk.fold',
      {
        'mix.salt': t('salt and water'),
        'bulk.between': ended('lamination'),
        'bulk.fold': t('fold 2'),
      },
      {
        touches: 2,
        marks: {
          earliest: t('divide') - HOUR,
          likely: t('divide'),
          latest: t('divide') + HOUR,
          touch: t('fold 2'),
        },
      },
    );
    const { day } = live(first, asked, kitchenWith(place), now);
    expect(missedFold(day)).toEqual({ batch: NAME, touch: 'fold 2' });
    // Called for a moment ago, or not yet: nobody has missed it.
    expect(missedFold({ ...day, now: t('fold 2') + 5 * MINUTE })).toBeNull();
    const between = kitchenWith({ ...place, stage: 'bulk.between' });
    expect(missedFold({ ...day, kitchen: between })).toBeNull();
    const found = await ways({ trouble: 'foldMissed', batch: NAME, touch: 'fold 2' }, place, now);
    expect(found.map(({ way }) => way)).toEqual(['foldNow', 'leaveFolds']);
    expect(touchOf(found[0]!.result, 'fold 2').at - now).toBeLessThanOrEqual(30 * MINUTE);
    expect(found[1]!.without).toEqual(['fold 2']);
  });

  it('a dead oven: cold loaves wait, and nothing goes in before it is hot again', async () => {
    const now = t('oven on') - 30 * MINUTE;
    const back = now + 3 * HOUR;
    const place = bakeAt(
      'proof.retard',
      { 'proof.toFridge': t('to fridge'), 'proof.retard': ended('to fridge') },
      { touches: 3, marks: { earliest: at(5, 5), likely: at(5, 8), latest: at(5, 12), look: now } },
    );
    const [best] = await ways({ trouble: 'ovenDead', from: now, to: back }, place, now);
    expect(best!.way).toBe('later');
    expect(touchOf(best!.result, 'oven on').at).toBeGreaterThanOrEqual(back);
    expect(touchOf(best!.result, 'load 1').at).toBeGreaterThan(back);
  });

  it('a loaf whose filling spoils goes nowhere but into the oven', async () => {
    const spoils = {
      ...TIN,
      formula: {
        ...TIN.formula,
        fillings: [
          { id: 'curd', name: 'Curd', pct: 15, keeps: 'perishable' as const, allergens: [] },
        ],
      },
      loaves: 1,
      process: { ...TIN.process, touches: [{ kind: 'fold' as const, after: 30 }] },
    };
    const due = at(4, 19);
    const question = askedDay([{ name: NAME, due, recipe: spoils }]);
    const today = dayPlan(question, spoils);
    const shaped = touchOf(today, 'shape');
    const since = shaped.at + shaped.hands * MINUTE;
    const load = touchOf(today, 'load 1').at;
    const marks = { earliest: load - 20 * MINUTE, likely: load, latest: load + 3 * HOUR };
    const place = bakeAt(
      'proof.warm',
      { 'shape.finalShape': shaped.at, 'proof.warm': since },
      { marks },
    );
    const now = since + 10 * MINUTE;
    const trouble = { trouble: 'away', from: now, to: now + 4 * HOUR } as const;
    const kitchen = { bakes: { [NAME]: place }, oven: OVEN_OFF, lanes: {} };
    const { day } = live(today, question, kitchen, now);
    const found = await planAndFallback(waysOn(trouble, day), ({ input }) =>
      plan(input, { why: false }),
    );
    expect(found.map(({ way }) => way)).toEqual(['backSooner']);
    const baked = touchOf(found[0]!.result, 'load 1').at;
    expect(baked - shaped.at).toBeLessThanOrEqual(120 * MINUTE);
    const stays = live(today, question, kitchen, now).input.batches[0]!.steps[0]!;
    const most = 'max' in stays.wait ? stays.wait.max : Infinity;
    expect(since + most * MINUTE - shaped.at).toBeLessThanOrEqual(120 * MINUTE);
  });
});
