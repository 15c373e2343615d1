import { afterEach, describe, expect, it } from 'vitest';
import type { Laid } from '../../../src/core/day/laid/came-up.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { hourOrDay, nextMidnight, tellDay } from '../../../src/core/speech/tell-day.ts';
import { tellMove, tellMoved } from '../../../src/core/speech/tell-moved.ts';
import { tellWay } from '../../../src/core/speech/tell-ways.ts';
import { askedDay, at, dayPlan, HOUR, NAME, touchOf } from '../day/support/live-day.ts';

const time = (instant: number): string => new Date(instant).toISOString().slice(11, 16);
const words = (text: string): number => text.split(/[ \u00a0]/).length;
const midnightOf = (instant: number): number => Math.floor(instant / (24 * HOUR)) * 24 * HOUR;
const plan = dayPlan(askedDay());
const clock = (now: number) => ({
  now,
  midnight: nextMidnight(now, midnightOf),
  hour: time,
  day: (instant: number) =>
    ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'][new Date(instant).getUTCDay()]!,
});

afterEach(() => speakIn('en'));

describe('what today looks like', () => {
  it('is three sentences: the next touch, today’s hands, the bread', () => {
    const { shown, said } = tellDay(plan, clock(at(5, 7)));
    expect(shown).toEqual([
      'Oven on at 07:30.',
      'Hands needed 7 times today, 35\u00a0min in all.',
      'Bread ready 12:00.',
    ]);
    expect(said).toEqual([
      'seven thirty is when your hands go in.',
      'Hands for thirty-five minutes.',
      'Ready about twelve o’clock.',
    ]);
  });

  it('another day has its name, and bread is said in hours', () => {
    const { shown, said } = tellDay(plan, clock(at(3, 20)));
    expect(shown[0]).toMatch(/^Feed the levain at Fri \d\d:\d\d\.$/);
    expect(shown[1]).toBe('No more hands needed today.');
    expect(shown[2]).toBe('Bread ready Sat 12:00.');
    expect(said).toEqual(['Ready in about forty, four zero, hours.']);
  });

  it('no sentence is longer than twelve words', () => {
    for (let hour = 0; hour < 70; hour += 1)
      for (const text of tellDay(plan, clock(at(3, 0) + hour * HOUR)).shown)
        expect(words(text)).toBeLessThanOrEqual(12);
  });

  it('the day is told where the hour is not today’s', () => {
    expect(hourOrDay(at(3, 23), clock(at(3, 20)))).toBe('23:00');
    expect(hourOrDay(at(4, 1), clock(at(3, 20)))).toBe('Fri 01:00');
  });
});

describe('what moved, and why', () => {
  const move = { batch: NAME, name: 'mix', from: at(4, 12), to: at(4, 13) };
  const why = { batch: NAME, touch: 'feed levain', by: 120 } as const;

  it.each([
    ['fold 2', 'le rabat 2 a 30\u00a0min de retard'],
    ['lamination', 'l’étirage a 30\u00a0min de retard'],
    ['divide', 'la division a 30\u00a0min de retard'],
  ])('of %s has its article in French', (touch, late) => {
    speakIn('fr', fr);
    const overdue = { why: 'overdue', batch: NAME, touch, by: 30 } as const;
    const told = tellMoved([{ ...move, name: 'shape' }], [overdue], time);
    expect(told).toBe(`Façonnage passe à 13:00\u202f: ${late}.`);
  });

  it('is one sentence of the first touch that moves', () => {
    expect(tellMoved([move], [{ ...why, why: 'wait' }], time)).toBe(
      'Mix flour and water moves to 13:00: the levain is ready 2\u00a0h later.',
    );
    const sooner = { why: 'wait', batch: NAME, touch: 'salt and water', by: -40 } as const;
    expect(tellMoved([{ ...move, name: 'divide' }], [sooner], time)).toBe(
      'Divide moves to 13:00: the dough is ready 40\u00a0min sooner.',
    );
    const late = { why: 'done', batch: NAME, touch: 'mix', by: 30 } as const;
    expect(tellMoved([{ ...move, name: 'salt and water' }], [late], time)).toBe(
      'Work in salt and water moves to 13:00: the mix was 30\u00a0min late.',
    );
    expect(tellMoved([{ ...move, name: 'ready' }], [], time)).toBe(
      'Bread moves to 13:00, from 12:00.',
    );
    expect(tellMoved([], [], time)).toBeNull();
    expect(tellMove(move, time)).toEqual({
      name: 'Mix flour and water',
      was: '12:00',
      now: '13:00',
    });
  });
});

describe('the ways on', () => {
  const result = {
    fits: true as const,
    cost: 0,
    atMostFromBest: 0,
    touches: [touchOf(plan, 'divide')],
    ready: [...plan.ready],
  };
  const standing = (touch: string) =>
    ({ touch, is: 'wait', since: at(4, 12), side: 0, marks: {}, fixed: {} }) as const;
  const live = { input: askedDay(), done: {}, at: { [NAME]: standing('salt and water') } };
  const units = { heat: 'C', weight: 'g' } as const;
  const laid = (more: Partial<Laid>): Laid => ({
    way: 'asPlanned',
    live,
    ask: plan.ask,
    result,
    ...more,
  });

  it.each([
    [laid({}), 'Just go.'],
    [laid({ way: 'leaveFolds', without: ['fold 1', 'fold 2'] }), 'Leave out fold 1, fold 2.'],
    [
      laid({ way: 'coolRoom', place: { celsius: 18, from: at(4, 14) } }),
      'Stand the dough in the coolest room at 14:00.',
    ],
    [
      laid({ way: 'warmPlace', place: { celsius: 26, from: at(4, 14) } }),
      'Stand the dough warmer, at about 26 °C.',
    ],
    [laid({ way: 'later', by: 60 }), 'Bread is ready 1\u00a0h later, at 12:00.'],
  ])('say what to do, then the next touch', (way, text) => {
    const [first, then] = tellWay(way, time, units);
    expect(first).toBe(text);
    expect(then).toBe(`Then divide at ${time(touchOf(plan, 'divide').at)}.`);
  });

  it('of two that wait for different things none is named', () => {
    const both = { ...live.at, rye: standing('feed levain') };
    const place = { celsius: 26, from: at(4, 14) };
    expect(
      tellWay(laid({ way: 'warmPlace', live: { ...live, at: both }, place }), time, units)[0],
    ).toBe('Stand it warmer, at about 26 °C.');
  });

  it('the fridge says what it still does', () => {
    const fridge = laid({ way: 'fridge', works: 133.3, place: { celsius: 4, from: at(4, 14) } });
    expect(tellWay(fridge, time, units).slice(0, 2)).toEqual([
      'Put the dough into the fridge at 14:00.',
      'It still rises there, as much as in 2\u00a0h\u00a015 out here.',
    ]);
  });
});
