import { describe, expect, it } from 'vitest';
import { plan } from '../../../../src/core/day/plan.ts';
import { expandFormula, whyNoPlan } from '../../../../src/core/day/plan/expand.ts';
import type { Kitchen, Step, Wait } from '../../../../src/core/day/plan/types.ts';
import type { Filling, Process } from '../../../../src/core/formula/formula.ts';
import type { Recipe } from '../../../../src/core/formula/recipe.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../../../machines/support/recipe.ts';
import { checkPlan } from '../support/check-plan.ts';
import { MONDAY } from '../support/instances.ts';

const HOUR = 3_600_000;
const KITCHEN: Kitchen = { fridgePlaces: 4, bowls: 2, pots: 1, temperatureC: 24 };
const names = (steps: readonly Step[]): string[] => steps.map(({ name }) => name);
const step = (steps: readonly Step[], name: string): Step =>
  steps.find((one) => one.name === name)!;
const waitOf = (steps: readonly Step[], name: string): Wait => step(steps, name).wait as Wait;

describe('a recipe as touches and waits', () => {
  const steps = expandFormula(RECIPE, KITCHEN);

  it('has a retarded, filled loaf’s steps in order, load after load', () => {
    expect(names(steps)).toEqual([
      'feed levain',
      'mix',
      'salt and water',
      'divide',
      'shape',
      'to fridge',
      ...[1, 2].flatMap((i) => [`load ${i}`, `lid lift ${i}`, `unload ${i}`]),
    ]);
    const bulk = step(steps, 'salt and water');
    expect(bulk.during!.map(({ name, at }) => [name, at])).toEqual([
      ['fold 1', 30],
      ['lamination', 60],
      ['fold 2', 90],
    ]);
    expect(bulk.uses).toEqual({ bowls: 1 });
  });

  it('keeps the trade’s limits: rest, bench, retard, heating, recovery, cooling', () => {
    const limits = (name: string): [number, number] => {
      const { min, max } = waitOf(steps, name);
      return [min, max];
    };
    expect(limits('mix')).toEqual([15, 60]);
    expect(limits('divide')).toEqual([10, 30]);
    expect(limits('to fridge')).toEqual([480, 2880]);
    expect(limits('unload 1')).toEqual([5, 15]);
    expect(limits('unload 2')).toEqual([60, 900]);
    expect(step(steps, 'to fridge').beforeNext).toMatchObject({ hands: 5, min: 30, max: 75 });
    const timer = expandFormula(RECIPE, { ...KITCHEN, ovenTimer: true });
    expect(step(timer, 'to fridge').beforeNext).toMatchObject({ hands: 0 });
  });

  it('a load is a block of 45 minutes; what waits is in the fridge', () => {
    const load = ['load 1', 'lid lift 1', 'unload 1'].map((name) => step(steps, name));
    const block = load.reduce((sum, { hands }) => sum + hands, 0) + 15 + 15;
    expect(block).toBe(45);
    expect(load.map(({ uses }) => uses)).toEqual([
      { oven: 1, fridge: 1 },
      { oven: 1, fridge: 1 },
      { fridge: 1 },
    ]);
    expect(step(steps, 'unload 2')).toMatchObject({ ovenAfter: 5 });
    expect(step(steps, 'unload 2').uses).toBeUndefined();
  });

  it('a tin has no lid, a stone is vented, a spooned dough is not divided', () => {
    expect(names(expandFormula(TIN, KITCHEN))).not.toContain('lid lift 1');
    expect(names(expandFormula(STONE, KITCHEN))).toContain('vent 1');
    const scooped = names(expandFormula(SCOOP, KITCHEN));
    expect(scooped).toContain('spoon');
    expect(scooped).not.toContain('divide');
  });

  it('levain, bulk and warm proof are slower in a cold kitchen, quicker for a quick starter', () => {
    const minutes = (temperatureC: number, mean = 0): number[] => {
      const some = expandFormula(TIN, { ...KITCHEN, temperatureC }, { mean, sd: 0.25 });
      const { choices } = step(some, 'feed levain').wait as { choices: Wait[] };
      return [choices[1]!, waitOf(some, 'salt and water'), waitOf(some, 'shape')].map(
        ({ typicalFrom }) => typicalFrom,
      );
    };
    const usual = minutes(24);
    minutes(20).forEach((one, i) => expect(one).toBeGreaterThan(usual[i]!));
    minutes(24, 0.2).forEach((one, i) => expect(one).toBeLessThan(usual[i]!));
  });

  it('the feeds’ windows hold bakers’ usual times: common practice, no source', () => {
    const at = (temperatureC: number, name: string) => {
      const { choices } = step(expandFormula(RECIPE, { ...KITCHEN, temperatureC }), 'feed levain')
        .wait as { choices: (Wait & { name: string })[] };
      return choices.find((one) => one.name === name)!;
    };
    const holds = ({ typicalFrom, typicalTo }: Wait, from: number, to: number): void => {
      expect(typicalFrom).toBeLessThan(to);
      expect(typicalTo).toBeGreaterThan(from);
    };
    holds(at(26, '1:1:1'), 230, 250);
    holds(at(24, '1:5:5'), 480, 600);
    holds(at(21.5, '1:10:10'), 720, 840);
  });

  it.each([RECIPE, STONE, TIN, SCOOP])('has a plan that keeps every rule', (recipe) => {
    const input = {
      planFrom: MONDAY,
      blocked: [{ name: 'night', from: MONDAY + 22 * HOUR, to: MONDAY + 30 * HOUR }],
      ratherNot: [],
      kitchen: KITCHEN,
      batches: [{ name: 'bread', steps: expandFormula(recipe, KITCHEN), due: MONDAY + 40 * HOUR }],
    };
    const result = plan(input);
    if (!result.fits) throw new Error('No plan.');
    expect(checkPlan(input, result).wrong).toEqual([]);
  });
});

describe('a perishable filling', () => {
  const cheese: Filling = {
    id: 'c',
    name: 'Fresh cheese',
    pct: 12,
    keeps: 'perishable',
    allergens: [],
  };
  const filled = (process: Partial<Process>, one = cheese, loaves = 1): Recipe => {
    const all = { ...TIN.process, touches: [], ...process };
    return {
      ...TIN,
      loaves,
      process: all,
      formula: { ...TIN.formula, process: all, fillings: [one] },
    };
  };

  it('has no plan through a night in the cold, nor laminated into the bulk', () => {
    const cold = filled({ retard: 840 });
    expect(whyNoPlan(cold, KITCHEN)).toEqual({
      key: 'perishableRetarded',
      filling: 'Fresh cheese',
      within: 120,
      wouldDo: ['leaveOut', 'sameDay'],
    });
    expect(() => expandFormula(cold, KITCHEN)).toThrow(
      'Not with Fresh cheese: perishableRetarded.',
    );
    const laminated = filled({ touches: [{ kind: 'laminate', after: 60 }] });
    expect(whyNoPlan(laminated, KITCHEN)).toMatchObject({
      key: 'perishableLaminated',
      wouldDo: ['leaveOut', 'atShaping'],
    });
  });

  /** Minutes from the beginning of the final shaping to the last load, at the longest. */
  const longest = (steps: readonly Step[]): number => {
    const from = names(steps).findIndex((name) => name === 'shape' || name === 'spoon');
    const to = names(steps).findLastIndex((name) => name.startsWith('load '));
    return steps
      .slice(from, to)
      .reduce((sum, { hands, wait }) => sum + hands + (wait as Wait).max, 0);
  };

  it('is in the oven within two hours of the final shaping, the last load too', () => {
    const quick = { mean: 0.3, sd: 0.1 };
    const one = expandFormula(filled({}), KITCHEN, quick);
    expect(longest(one)).toBeLessThanOrEqual(120);
    const two = filled({}, cheese, 2);
    const open = { ...KITCHEN, pots: 2 };
    expect(longest(expandFormula(two, open, quick))).toBeLessThanOrEqual(120);
    expect(whyNoPlan(two, KITCHEN, quick)).toMatchObject({ key: 'perishableLoads' });
    const warm = { ...KITCHEN, temperatureC: 30 };
    const quicker = { mean: 0.6, sd: 0.1 };
    expect(longest(expandFormula(two, warm, quicker))).toBeLessThanOrEqual(120);
  });

  it('above 32 °C within one', () => {
    const hot = { ...KITCHEN, temperatureC: 33 };
    expect(longest(expandFormula(filled({}), hot))).toBeLessThanOrEqual(60);
    const slow = { mean: -0.4, sd: 0.1 };
    expect(whyNoPlan(filled({}), { ...hot, temperatureC: 32 }, slow)).toBeNull();
    expect(whyNoPlan(filled({}), hot, slow)).toEqual({
      key: 'perishableSlow',
      filling: 'Fresh cheese',
      within: 60,
      wouldDo: ['leaveOut', 'coolerKitchen'],
    });
  });

  it('of hard cheese or from the shelf has no such limit', () => {
    for (const keeps of ['hardCheese', 'shelf'] as const)
      expect(whyNoPlan(filled({ retard: 840 }, { ...cheese, keeps }), KITCHEN)).toBeNull();
  });
});
