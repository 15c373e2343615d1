import { describe, expect, it } from 'vitest';
import { planOutline } from '../../../src/core/day/outline.ts';
import { BAKE_STAGES } from '../../../src/core/records/stage.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const now = Date.UTC(2031, 4, 3, 6);
const walk = (from: (typeof BAKE_STAGES)[number], kitchen = 24) =>
  planOutline({ recipe: RECIPE, kitchen, from, now });

describe('the outline of a bake', () => {
  it('goes forward in time and ends with two loads through one pot', () => {
    const { touches, out, cooled, loads, cold } = walk('read.plan');
    for (let i = 1; i < touches.length; i += 1) {
      expect(touches[i]!.at).toBeGreaterThanOrEqual(touches[i - 1]!.at);
    }
    expect(loads).toBe(2);
    const load = touches.find((t) => t.stage === 'oven.queued')!;
    // 2 × (18 + 20) + 10 min of recovery (trade: loads·bake + (loads − 1)·recovery)
    expect((out - load.at) / MINUTE).toBe(86);
    expect((cooled - out) / MINUTE).toBe(120);
    expect((cold!.to - cold!.from) / HOUR).toBe(14);
  });

  it('has a fold, the sheet and a fold in its bulk, half an hour apart', () => {
    const bulk = walk('read.plan').touches.filter((t) => /fold|spread/.test(t.stage));
    expect(bulk.map((t) => t.stage)).toEqual(['bulk.fold', 'bulk.spread', 'bulk.fold']);
    expect((bulk[1]!.at - bulk[0]!.at) / MINUTE).toBe(30 + bulk[0]!.hands);
  });

  it('adds up the hands it names, more for more loaves, and is shorter joined later', () => {
    const whole = walk('read.plan');
    expect(whole.handsOn).toBe(whole.touches.reduce((sum, t) => sum + t.hands, 0));
    const four = planOutline({
      recipe: { ...RECIPE, loaves: 4 },
      kitchen: 24,
      from: 'read.plan',
      now,
    });
    expect(four.handsOn).toBeGreaterThan(whole.handsOn);
    expect(walk('shape.divide').out).toBeLessThan(walk('mix.weigh').out);
  });

  it('takes fewer loads, and less time, with more places in the oven', () => {
    const eight = {
      recipe: { ...RECIPE, loaves: 8 },
      kitchen: 24,
      from: 'read.plan',
      now,
    } as const;
    const [one, four] = [1, 4].map((perLoad) => planOutline({ ...eight, perLoad }));
    expect([one!.loads, four!.loads]).toEqual([8, 2]);
    expect(one!.out).toBeGreaterThan(four!.out);
  });

  it('ends in a window around its usual end, and in none where no dough decides', () => {
    const { ends, out } = walk('read.plan');
    expect(ends.likely).toBe(out);
    // sd .30: the levain's 6.5 hours and the bulk's 4.9, each a third less or half as much again
    expect((out - ends.earliest) / HOUR).toBeGreaterThan(2);
    expect((ends.latest - out) / HOUR).toBeGreaterThan((out - ends.earliest) / HOUR);
    const shaped = walk('shape.divide');
    expect(shaped.ends).toEqual({ earliest: shaped.out, likely: shaped.out, latest: shaped.out });
  });

  it('can be walked from every stage, and never ends before it begins', () => {
    for (const from of BAKE_STAGES) {
      const { out, handsOn, ends } = walk(from);
      expect(out, from).toBeGreaterThanOrEqual(now);
      expect(handsOn, from).toBeGreaterThanOrEqual(0);
      expect(ends.earliest, from).toBeLessThanOrEqual(ends.latest);
    }
  });

  it('takes longer in a cold kitchen', () => {
    expect(walk('read.plan', 18).out).toBeGreaterThan(walk('read.plan', 24).out + 4 * HOUR);
  });
});
