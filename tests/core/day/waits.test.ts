import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const WAITING = [
  'levain.ripening',
  'mix.rest',
  'bulk.between',
  'bulk.proving',
  'shape.benchRest',
  'proof.warm',
  'proof.counter',
  'proof.retard',
  'preheating',
  'standing',
  'lidded',
  'open',
  'recover',
  'cool.cooling',
] as const;

const input = (change: Partial<WaitInput>): WaitInput => ({
  stage: 'bulk.proving',
  now: T0 + 90 * MINUTE,
  recipe: RECIPE,
  kitchen: 24,
  entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': T0 + 90 * MINUTE },
  touches: 1,
  prior: OPENING_BELIEF,
  seen: [],
  done: [],
  again: false,
  ...change,
});
const dough = (celsius: number, at = T0 + 40 * MINUTE): WaitInput['seen'] => [
  { at, reading: { what: 'doughTemperature', celsius } },
];
const likely = (change: Partial<WaitInput>) => waitFor(input(change)).marks['likely']!;

describe('the instants of a wait', () => {
  it('are finite whole milliseconds in order for every stage and kitchen from −5 to 55 °C', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...WAITING),
        fc.double({ min: -5, max: 55, noNaN: true }),
        fc.boolean(),
        (stage, kitchen, again) => {
          const { marks } = waitFor(input({ stage, kitchen, again }));
          for (const at of Object.values(marks)) expect(Number.isInteger(at)).toBe(true);
          const { earliest, likely: middle, latest, look } = marks;
          if (earliest !== undefined && latest !== undefined) {
            expect(earliest).toBeLessThanOrEqual(middle ?? latest);
            expect(middle ?? earliest).toBeLessThanOrEqual(latest);
          }
          if (look !== undefined) expect(look).toBeGreaterThan(T0 + 90 * MINUTE);
        },
      ),
    );
  });

  it('are finite and in order whatever was read, before the bake or after now, odd or no number', () => {
    const celsius = fc.oneof(fc.double({ min: -200, max: 900 }), fc.constant(Number.NaN));
    const reading = fc.oneof(
      fc.record({
        what: fc.constantFrom('doughTemperature' as const, 'kitchenTemperature' as const),
        celsius,
      }),
      fc.record({
        what: fc.constant('rise' as const),
        of: fc.constant('dough' as const),
        percent: fc.double({ min: -400, max: 4000, noNaN: true }),
      }),
      fc.record({
        what: fc.constant('poke' as const),
        dent: fc.constantFrom('springs' as const, 'slow' as const, 'stays' as const),
      }),
    );
    const seen = fc.array(
      fc.record({ at: fc.integer({ min: T0 - 900 * HOUR, max: T0 + 900 * HOUR }), reading }),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(fc.constantFrom(...WAITING), seen, (stage, readings) => {
        const { marks, belief } = waitFor(input({ stage, seen: readings }));
        for (const at of Object.values(marks)) expect(Number.isSafeInteger(at)).toBe(true);
        const { earliest, likely: middle, latest } = marks;
        if (earliest !== undefined && middle !== undefined && latest !== undefined) {
          expect(earliest).toBeLessThanOrEqual(middle);
          expect(middle).toBeLessThanOrEqual(latest);
        }
        if (belief) expect(Number.isFinite(belief.mean) && belief.sd > 0).toBe(true);
      }),
    );
  });

  it('come no later in a warmer dough', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 29, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (celsius, more) => {
          expect(likely({ seen: dough(celsius + more) })).toBeLessThanOrEqual(
            likely({ seen: dough(celsius) }),
          );
        },
      ),
    );
  });

  it('do not move for a reading that finds the dough at the kitchen’s own temperature', () => {
    expect(Math.abs(likely({ seen: dough(24) }) - likely({}))).toBeLessThan(2000);
  });

  it('shift with what was measured: 27 °C sooner, 21 °C later, in a 24 °C kitchen', () => {
    const planned = likely({});
    expect((planned - likely({ seen: dough(27) })) / MINUTE).toBeGreaterThan(15);
    expect((likely({ seen: dough(21) }) - planned) / MINUTE).toBeGreaterThan(15);
  });

  it('follow a kitchen that turned colder', () => {
    const reading = { what: 'kitchenTemperature', celsius: 18 } as const;
    expect(likely({ seen: [{ at: T0, reading }] })).toBeGreaterThan(likely({}) + 30 * MINUTE);
  });

  it('look again 20 to 60 minutes on after a not yet, and never at once', () => {
    for (const now of [T0 + HOUR, T0 + 4 * HOUR, T0 + 9 * HOUR]) {
      const look = waitFor(input({ now, again: true })).marks['look']!;
      expect((look - now) / MINUTE).toBeGreaterThanOrEqual(20);
      expect((look - now) / MINUTE).toBeLessThanOrEqual(60);
    }
  });

  it('of a dough joined in the bowl count from the last look after a "not yet"', () => {
    const joined = { 'bulk.proving': T0 };
    const before = waitFor(input({ now: T0, entered: joined })).marks;
    const now = T0 + 3 * HOUR;
    const entered = { 'bulk.look': now - 5 * MINUTE, 'bulk.proving': now };
    const after = waitFor(input({ now, entered, again: true })).marks;
    // Its first entry has been written over by then; the look is the earliest that is still known.
    expect(after['likely']! - before['likely']!).toBe(now - 5 * MINUTE - T0);
  });

  it('begin in the room that was measured before the dough was mixed', () => {
    const reading = { what: 'kitchenTemperature', celsius: 20 } as const;
    const seen = [{ at: T0 - HOUR, reading }];
    expect(likely({ seen })).toBe(likely({ kitchen: 20 }));
  });

  it('of a levain follow the kitchen that was measured, and the dough never', () => {
    const levain = { stage: 'levain.ripening', now: T0, entered: {} } as const;
    const reading = { what: 'kitchenTemperature', celsius: 20 } as const;
    const seen = [{ at: T0 + HOUR, reading }];
    expect(likely({ ...levain, seen })).toBeGreaterThan(likely(levain) + HOUR);
    expect(likely({ ...levain, seen: dough(30) })).toBe(likely(levain));
  });

  describe('of a levain whose jar is measured', () => {
    const levain = {
      stage: 'levain.ripening',
      now: T0,
      kitchen: 22,
      entered: { 'levain.feed': T0 - 10 * MINUTE, 'levain.ripening': T0 },
      fedAt: T0,
    } as const;
    const jar = (celsius: number, hours: number): WaitInput['seen'][number] => ({
      at: T0 + hours * HOUR,
      reading: { what: 'levainTemperature', celsius },
    });

    it('come sooner from a warm jar and later from a cold one, and not by a whole warm night', () => {
      const still = likely(levain);
      const warm = likely({ ...levain, seen: [jar(28, 0)] });
      const cold = likely({ ...levain, seen: [jar(12, 0)] });
      // 6 K over the kitchen with τ 1.1 h are worth some 6·1.1 K·h, at 8 % an hour and K about half an hour.
      expect((still - warm) / MINUTE).toBeGreaterThan(20);
      expect((still - warm) / MINUTE).toBeLessThan(70);
      expect(cold - still).toBeGreaterThan(30 * MINUTE);
      expect(cold - still).toBeLessThan(2 * HOUR);
    });

    it('follow a jar that keeps warmer than the kitchen', () => {
      const one = likely({ ...levain, seen: [jar(25, 1)] });
      const kept = likely({ ...levain, seen: [jar(25, 1), jar(25, 2), jar(25, 3)] });
      expect(kept).toBeLessThan(one);
      expect(one).toBeLessThan(likely(levain));
    });

    it('leave out the starter that was measured before it was fed', () => {
      const seen = [jar(5, -0.1)];
      expect(likely({ ...levain, seen })).toBe(likely(levain));
      const again = { ...levain, now: T0 + 5 * HOUR, again: true };
      expect(likely({ ...again, seen })).toBe(likely(again));
      expect(likely({ ...again, seen: [jar(28, 0)] })).toBeLessThan(likely(again));
    });

    it('say their doubt where the jar is hot, or a reading was odd', () => {
      expect(waitFor(input({ ...levain, seen: [jar(33, 0)] })).doubt).toBe('kitchenHot');
      const { at, reading } = jar(25, 0);
      const odd = { at, reading: { ...reading, odd: true as const } };
      expect(waitFor(input({ ...levain, seen: [odd] })).doubt).toBe('oddReading');
    });
  });

  it('of a levain count from its feed after a "not yet"', () => {
    const levain = { stage: 'levain.ripening', entered: { 'levain.feed': T0 } } as const;
    const first = likely({ ...levain, now: T0 });
    expect(likely({ ...levain, now: T0 + 5 * HOUR, again: true })).toBe(first);
  });

  it.each([
    ['preheating', 'hot', false, 45],
    ['standing', 'poke', false, 20],
    ['lidded', 'lid', false, 18],
    ['open', 'colour', false, 20],
    ['open', 'colour', true, 5],
    ['recover', 'hot', false, 10],
    ['mix.rest', 'end', false, 30],
    ['shape.benchRest', 'end', false, 20],
    ['cool.cooling', 'end', false, 120],
    ['bulk.between', 'touch', false, 30],
  ] as const)('of %s: %s (again: %s) is %d min on', (stage, mark, again, minutes) => {
    const wait = input({ stage, again });
    expect((waitFor(wait).marks[mark]! - wait.now) / MINUTE).toBe(minutes);
  });

  it('say their doubt outside 3 to 28 °C and in a dough the clock was not fitted to', () => {
    expect(waitFor(input({ kitchen: 2 })).doubt).toBe('kitchenCold');
    expect(waitFor(input({ kitchen: 29 })).doubt).toBe('above28');
    expect(waitFor(input({})).doubt).toBeUndefined();
    expect(waitFor(input({ seen: dough(29) })).doubt).toBe('above28');
  });

  it('say it where a reading outside what is usual is in them, and stand wider apart', () => {
    const cold = { what: 'doughTemperature', celsius: 9 } as const;
    const at = T0 + 40 * MINUTE;
    const usual = waitFor(input({ seen: [{ at, reading: cold }] }));
    const odd = waitFor(input({ seen: [{ at, reading: { ...cold, odd: true } }] }));
    expect(odd.doubt).toBe('oddReading');
    expect(odd.marks['likely']).toBe(usual.marks['likely']);
    expect(odd.marks['earliest']).toBeLessThan(usual.marks['earliest']!);
    expect(odd.marks['latest']).toBeGreaterThan(usual.marks['latest']!);
    // A weight is no part of the window: an odd one leaves it alone.
    const weight = { what: 'weight', of: 'dough', grams: 90_000, odd: true } as const;
    expect(waitFor(input({ seen: [{ at, reading: weight }] })).doubt).toBeUndefined();
  });

  it('say their doubt where there is no end in sight, or the end is past', () => {
    // At 3 °C the last of the range, and a dough of hardly any levain: nothing within three days.
    const levain = { ...RECIPE.formula.levain, pff: 0.02 };
    const recipe = { ...RECIPE, formula: { ...RECIPE.formula, levain } };
    const cold = input({ kitchen: 3, recipe });
    expect(waitFor(cold).doubt).toBe('tooCold');
    expect(waitFor(cold).marks['latest']).toBe(T0 + 72 * HOUR);
    expect(waitFor(input({ now: T0 + 20 * HOUR, again: true })).doubt).toBe('laterThanModel');
  });

  it('of a stage that waits for nothing are an impossible call', () => {
    expect(() => waitFor(input({ stage: 'mix.first' }))).toThrow(
      'The stage mix.first does not wait.',
    );
  });
});
