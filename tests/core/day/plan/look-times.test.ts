import { describe, expect, it } from 'vitest';
import { seeded } from '../support/seeded.ts';
import { chanceReady, lookingCosts, lookTimes } from '../../../../src/core/day/plan/look-times.ts';

const MINUTE = 60_000;
const T0 = Date.UTC(2031, 4, 5, 8);
const at = (minutes: number): number => T0 + minutes * MINUTE;
const minutes = (instant: number): number => (instant - T0) / MINUTE;
const window = (p10: number, p50: number, p90: number) => ({
  p10: at(p10),
  p50: at(p50),
  p90: at(p90),
});
const always = { now: T0, free: () => true };
const VAGUE = window(180, 240, 330);

describe('when to go and look', () => {
  // Times of an earlier prototype of the same rule: they test the port, not the truth.
  it.each([
    { of: [225, 240, 260], looks: [245, 260, 275], chances: [0.63, 0.9, 0.99], expected: 1.5 },
    {
      of: [210, 240, 285],
      looks: [240, 265, 285, 305],
      chances: [0.5, 0.76, 0.9, 0.97],
      expected: 1.9,
    },
    {
      of: [180, 240, 330],
      looks: [225, 260, 295, 325],
      chances: [0.37, 0.61, 0.78, 0.89],
      expected: 2.5,
    },
  ])('for $of: at $looks', ({ of, looks, chances, expected }) => {
    const [p10, p50, p90] = of as [number, number, number];
    const found = lookTimes(window(p10, p50, p90), always);
    expect(found.map((one) => minutes(one.at))).toEqual(looks);
    found.forEach((one, i) => expect(one.chanceReady).toBeCloseTo(chances[i]!, 2));
    const all = found.map((one) => one.at);
    for (let more = at(looks.at(-1)! + 20); more < at(700); more += 20 * MINUTE) all.push(more);
    expect(lookingCosts(window(p10, p50, p90), all, always).looks).toBeCloseTo(expected, 0);
  });

  it('goes where it is free: after an errand, with what that costs', () => {
    const away = (instant: number): boolean => instant < at(215) || instant >= at(260);
    const normal = window(210, 240, 285);
    const [first] = lookTimes(normal, { now: T0, free: away });
    expect(minutes(first!.at)).toBe(260);
    expect(first!.chanceReady).toBeCloseTo(0.72, 2);
    const over = (looks: number[]): number => lookingCosts(normal, looks.map(at), always).overshoot;
    expect(over([260, 285, 305, 325, 345])).toBeCloseTo(16, 0);
    expect(over([240, 265, 285, 305, 325])).toBeCloseTo(7, 0);
  });

  it('costs less than a look every half hour, or than waiting for the late end', () => {
    const normal = window(210, 240, 285);
    const cost = (looks: readonly number[]): number => {
      const { looks: count, overshoot } = lookingCosts(normal, looks, always);
      return 10 * count + overshoot;
    };
    const every = (first: number): number[] =>
      Array.from({ length: 30 }, (_, i) => at(first + 30 * i));
    const first = lookTimes(normal, always).map((one) => one.at);
    const later = lookTimes(normal, { ...always, now: first.at(-1)! }).map((one) => one.at);
    const best = cost([...first, ...later]);
    expect(best).toBeCloseTo(25.96, 0);
    expect(cost(every(210))).toBeCloseTo(33.1, 0);
    expect(cost(every(285))).toBeCloseTo(45.3, 0);
  });

  it('costs what a thousand doughs that are really looked at cost, within two in a hundred', () => {
    const random = seeded(7);
    /** A ready time of two half normals, by Box and Muller. */
    const drawn = ({ p10, p50, p90 }: ReturnType<typeof window>): number => {
      const z = Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next());
      return p50 + z * ((z < 0 ? p50 - p10 : p90 - p50) / 1.2815515655446004);
    };
    for (const times of [window(225, 240, 260), window(210, 240, 285), VAGUE]) {
      const looks = lookTimes(times, always).map((one) => one.at);
      // Whoever has looked so often looks on every twenty minutes.
      for (let at = looks.at(-1)! + 20 * MINUTE; at < T0 + 800 * MINUTE; at += 20 * MINUTE)
        looks.push(at);
      let [count, over] = [0, 0];
      const doughs = 200_000;
      for (let n = 0; n < doughs; n += 1) {
        const ready = drawn(times);
        const seen = looks.findIndex((one) => one >= ready);
        count += seen + 1;
        over += Math.max(0, (looks[seen]! - ready) / MINUTE - 10);
      }
      const told = lookingCosts(times, looks, always);
      const [cost, simulated] = [10 * told.looks + told.overshoot, (10 * count + over) / doughs];
      expect(Math.abs(cost / simulated - 1)).toBeLessThan(0.02);
      expect(Math.abs((told.looks * doughs) / count - 1)).toBeLessThan(0.02);
    }
  });

  it('its chances go through the three points', () => {
    for (const [p, share] of [
      [180, 0.1],
      [240, 0.5],
      [330, 0.9],
    ] as const)
      expect(chanceReady(VAGUE, at(p))).toBeCloseTo(share, 9);
    const known = { p10: at(240), p50: at(240), p90: at(240) };
    expect([chanceReady(known, at(239)), chanceReady(known, at(240))]).toEqual([0, 1]);
    expect(lookTimes(known, always).map((one) => minutes(one.at))).toEqual([240]);
  });

  it('has none where nothing is free, and refuses times out of order', () => {
    expect(lookTimes(VAGUE, { now: T0, free: () => false })).toEqual([]);
    expect(() => lookTimes(window(240, 180, 330), always)).toThrow('in order');
  });
});
