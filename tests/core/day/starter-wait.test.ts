import { describe, expect, it } from 'vitest';
import { notAtNight, starterWait } from '../../../src/core/day/starter-wait.ts';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import { NO_STARTER, type Starter } from '../../../src/core/records/starter.ts';
import { DAY, HOUR, MINUTE } from '../../../src/core/units.ts';

const MIDNIGHT = 1_000 * DAY;
const NIGHT = { midnight: MIDNIGHT, from: 22 * 60, to: 6 * 60 };
const at = (hours: number): number => MIDNIGHT + hours * HOUR;

const fed = (flour: number, celsius: number, hour = 9): Starter => ({
  ...NO_STARTER,
  fed: { at: at(hour), flour, celsius },
  put: { at: at(hour), where: 'counter', fresh: true },
});
const ask = (starter: Starter, now = starter.put!.at, prior = OPENING_BELIEF) =>
  starterWait({ starter, now, prior, night: NIGHT });
const hoursTo = (starter: Starter, mark: string): number =>
  (ask(starter).marks[mark]! - starter.put!.at) / HOUR;

describe('a starter fed on the counter', () => {
  // Bakers' usual times: common practice, no source.
  it.each([
    [1, 26, 4],
    [5, 24, 8.5],
    [10, 21.5, 13],
  ])('1 : %i at %f °C is ripe after about %f h', (flour, celsius, hours) => {
    expect(Math.abs(hoursTo(fed(flour, celsius), 'likely') - hours)).toBeLessThan(0.5);
  });

  it('is usable for a while after, and calls when it is ripe', () => {
    const { earliest, likely, latest, until, remind } = ask(fed(1, 24)).marks;
    expect([earliest! < likely!, likely! < latest!, until! > likely!]).toEqual([true, true, true]);
    expect(remind).toBe(likely);
  });

  it('is ripe sooner the warmer it is and the less it was fed', () => {
    expect(hoursTo(fed(2, 27), 'likely')).toBeLessThan(hoursTo(fed(2, 22), 'likely'));
    expect(hoursTo(fed(1, 24), 'likely')).toBeLessThan(hoursTo(fed(5, 24), 'likely'));
  });

  it('is slower by a slow starter', () => {
    const slow = ask(fed(2, 24), at(9), { mean: Math.log(0.8), sd: 0.1 });
    expect(slow.marks['likely']).toBeGreaterThan(ask(fed(2, 24)).marks['likely']!);
  });

  it('is reckoned anew by two looks, and says what they taught; one look moves nothing', () => {
    const one = { ...fed(1, 24), signs: [{ at: at(14), percent: 20 }] };
    const two = { ...one, signs: [...one.signs, { at: at(16), percent: 40 }] };
    expect(ask(one, at(14))).toEqual(ask(fed(1, 24), at(14)));
    const { belief, marks } = ask(two, at(16));
    expect(belief!.mean).toBeLessThan(-0.1);
    expect(marks['likely']).toBeGreaterThan(ask(one, at(14)).marks['likely']!);
  });

  it('a look after its reminder lets that stand as it is', () => {
    const late = { ...fed(1, 24), marks: { remind: at(14) } };
    const signs = [
      { at: at(15), top: 'domed' as const },
      { at: at(16), top: 'fallen' as const },
    ];
    expect(ask({ ...late, signs }, at(16)).marks['remind']).toBe(at(14));
  });

  it('calls in the morning where it is ripe at night', () => {
    const evening = fed(2, 24, 20);
    const { likely, remind } = ask(evening).marks;
    expect(likely).toBeLessThan(at(30));
    expect(remind).toBe(at(30));
  });

  it('says that a hot kitchen makes it a guess', () => {
    expect(ask(fed(1, 32)).doubt).toBe('kitchenHot');
    expect(ask(fed(1, 24)).doubt).toBeUndefined();
  });
});

describe('a starter that rests', () => {
  it('is good for two weeks in the fridge, and calls then', () => {
    const put = { at: at(9), where: 'fridge' } as const;
    expect(ask({ ...NO_STARTER, put }).marks).toEqual({
      until: at(9) + 14 * DAY,
      remind: at(9) + 14 * DAY,
    });
  });

  it('wants its feed the same day once it is out of the fridge', () => {
    const put = { at: at(9), where: 'counter' } as const;
    expect(ask({ ...fed(1, 24, -50), put }).marks).toEqual({ until: at(21), remind: at(13) });
  });
});

describe('the night', () => {
  it.each([
    [21.9, 21.9],
    [22, 30],
    [29.9, 30],
    [30, 30],
    [2, 6],
    [24 * 9 + 23, 24 * 10 + 6],
  ])('hour %f becomes %f', (hour, then) => {
    expect(Math.abs(notAtNight(at(hour), NIGHT) - at(then))).toBeLessThan(MINUTE);
  });

  it('by day, as another kitchen has it, or not at all', () => {
    const day = { midnight: MIDNIGHT, from: 9 * 60, to: 17 * 60 };
    expect(notAtNight(at(12), day)).toBe(at(17));
    expect(notAtNight(at(20), day)).toBe(at(20));
    expect(notAtNight(at(3), null)).toBe(at(3));
  });
});
