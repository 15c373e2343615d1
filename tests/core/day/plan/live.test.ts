import { describe, expect, it } from 'vitest';
import { betterPlans, plan } from '../../../../src/core/day/plan.ts';
import type { PlanInput, PlannedTouch, PlanResult } from '../../../../src/core/day/plan/types.ts';
import { checkPlan } from '../support/check-plan.ts';
import { anyInstance, bakeSteps, MONDAY, wait } from '../support/instances.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const at = (day: number, hour: number, minute = 0): number =>
  MONDAY + (day * 24 + hour) * HOUR + minute * MINUTE;

type Fits = Extract<PlanResult, { fits: true }>;
const planned = (input: PlanInput): Fits => {
  const result = plan(input);
  if (!result.fits) throw new Error('No plan.');
  return result;
};
const touchOf = ({ touches }: Fits, name: string): PlannedTouch =>
  touches.find((one) => one.name === name)!;

const steps = bakeSteps({ loaves: 2, pots: 1, retarded: true, warmth: 1, ovenTimer: false });
const input: PlanInput = {
  planFrom: at(0, 7),
  blocked: [
    { name: 'night 0', from: at(0, 22), to: at(1, 6) },
    { name: 'night 1', from: at(1, 22), to: at(2, 6) },
  ],
  ratherNot: [],
  kitchen: { fridgePlaces: 4, bowls: 1, pots: 1, temperatureC: 24 },
  batches: [{ name: 'bread', steps, due: at(1, 18) }],
};

/** What is left from a step on, behind a marker without hands that begins at the real time. */
const from = (
  name: string,
  now: number,
  more: Partial<PlanInput['batches'][number]> = {},
): PlanInput => {
  const rest = steps.slice(steps.findIndex((step) => step.name === name));
  const marker = { name: 'now', hands: 0, wait: wait(0, 0, 600, 1200, 0, 0) };
  const batch = { ...input.batches[0]!, steps: [marker, ...rest], startAt: now, ...more };
  return { ...input, planFrom: now, now, batches: [batch] };
};

describe('planning anew while it runs', () => {
  const first = planned(input);

  it('a divide half an hour late leaves the first load where it was', () => {
    const late = touchOf(first, 'divide').at + 30 * MINUTE;
    const stays = Object.fromEntries(
      first.touches
        .filter((one) => one.at > late)
        .map((one) => [one.name, { at: one.at, costPer5Min: 0.02 }]),
    );
    const again = planned(from('divide', late, { stayPut: stays }));
    expect(touchOf(again, 'now').at).toBe(late);
    expect(touchOf(again, 'load 1').at).toBe(touchOf(first, 'load 1').at);
    expect(again.ready).toEqual(first.ready);
  });

  it('the price of moving keeps touches where they were announced', () => {
    const now = touchOf(first, 'divide').at + 10 * MINUTE;
    const wanted = Object.fromEntries(
      ['shape', 'to fridge'].map((name) => [
        name,
        { at: touchOf(first, name).at, costPer5Min: 0.02 },
      ]),
    );
    const moved = (stayPut: typeof wanted): number => {
      const again = planned(from('divide', now, { stayPut }));
      return ['shape', 'to fridge'].reduce(
        (sum, name) => sum + Math.abs(touchOf(again, name).at - touchOf(first, name).at),
        0,
      );
    };
    expect(moved(wanted)).toBeLessThanOrEqual(moved({}));
  });

  it('lid and unload stand once the load is in; other touches give way', () => {
    const load = touchOf(first, 'load 1').at;
    const fixed = {
      'load 1': load,
      'lid lift 1': load + 20 * MINUTE,
      'unload 1': load + 40 * MINUTE,
    };
    const other = {
      name: 'rye',
      steps: [{ name: 'feed', hands: 15, wait: wait(60, 60, 60, 90, 1) }],
      due: load + 20 * MINUTE + 75 * MINUTE,
    };
    const one = from('load 1', load, { fixed });
    const both = { ...one, batches: [...one.batches, other] };
    const result = planned(both);
    expect(checkPlan(both, result).wrong).toEqual([]);
    for (const [name, instant] of Object.entries(fixed))
      expect(touchOf(result, name)).toMatchObject({ at: instant, frozen: true });
    const feed = touchOf(result, 'feed');
    expect(feed.at + 15 * MINUTE <= load + 20 * MINUTE || feed.at >= load + 25 * MINUTE).toBe(true);
    // Without the alarm at the oven it would be fed at that very time.
    expect(planned({ ...both, batches: [other] }).touches[0]!.at).toBe(load + 20 * MINUTE);
  });

  it('an alarm at the oven stands in a blocked window too', () => {
    const load = at(1, 14);
    const fixed = { 'load 1': load, 'lid lift 1': load + 20 * MINUTE };
    const one = from('load 1', load, { fixed });
    const away = { name: 'school run', from: load + 15 * MINUTE, to: load + 35 * MINUTE };
    const result = planned({ ...one, blocked: [...one.blocked, away] });
    expect(touchOf(result, 'lid lift 1').at).toBe(load + 20 * MINUTE);
  });
});

describe('plans that get better', () => {
  it('of three batches the first is there at once, the last is no dearer, and each keeps the rules', () => {
    let asked = 0;
    for (let seed = 1; asked < 2; seed += 1) {
      const three = {
        ...anyInstance(seed, 3),
        kitchen: { fridgePlaces: 12, bowls: 2, pots: 2, temperatureC: 24 },
      };
      const costs: number[] = [];
      for (const result of betterPlans(three, { limitMs: 300 })) {
        if (!result.fits) continue;
        expect(checkPlan(three, result).wrong).toEqual([]);
        costs.push(result.cost - result.atMostFromBest, result.cost);
      }
      if (costs.length === 0) continue;
      asked += 1;
      expect(costs.at(-1)!).toBeLessThanOrEqual(costs[1]!);
      expect(costs.at(-2)!).toBeGreaterThanOrEqual(costs[0]! - 1e-9);
    }
  });

  it('stop when the caller’s clock says so', () => {
    let calls = 0;
    const now = (): number => (calls += 1) * 1000;
    const results = [...betterPlans(anyInstance(4, 2), { limitMs: 1, now })];
    expect(results.length).toBeGreaterThan(0);
    expect(calls).toBeLessThan(5);
  });

  it('of two batches the last is what plan says', () => {
    const two = anyInstance(4, 2);
    expect([...betterPlans(two)].at(-1)).toEqual(plan(two));
  });
});
