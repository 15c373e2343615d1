import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leadTasks } from '../../../src/core/day/lead-tasks.ts';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import type { Filling } from '../../../src/core/formula/formula.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../../machines/support/recipe.ts';
import { T0, waitOf } from './support/wait-of.ts';

const filled = (fillings: readonly Filling[], recipe: Recipe = RECIPE): Recipe => ({
  ...recipe,
  formula: { ...recipe.formula, fillings },
});
const filling = (prepare: Filling['prepare'], keeps: Filling['keeps'] = 'shelf'): Filling => ({
  id: 'f',
  name: 'filling',
  pct: 10,
  keeps,
  allergens: [],
  ...(prepare ? { prepare } : {}),
});
const NUTS = filled([filling(['toast', 'cut'])]);
/** The same without a sheet: they go in as the loaves are shaped. */
const SHAPED: Recipe = { ...NUTS, process: { ...NUTS.process, touches: [] } };

/** A tin whose loaf was in the fridge. */
const COLD_TIN = { ...TIN, process: { ...TIN.process, retard: 720 } };

const input = (change: Partial<WaitInput>): WaitInput =>
  waitOf({ stage: 'bulk.between', recipe: NUTS, ...change });
/** Minutes from the wait's beginning to each task, of a wait that ends in `minutes`. */
const due = (minutes: number, change: Partial<WaitInput> = {}) =>
  Object.fromEntries(
    Object.entries(leadTasks(input(change), T0 + minutes * MINUTE)).map(([task, at]) => [
      task,
      (at - T0) / MINUTE,
    ]),
  );

describe('what a wait asks of free hands', () => {
  it('has the bench cleared as the dough is left, and not once more after each "not yet"', () => {
    const proving = { stage: 'bulk.proving' } as const;
    expect(due(60, proving)).toEqual({ tidyBulk: 0 });
    expect(due(60, { ...proving, again: true })).toEqual({});
  });

  it('toasts in time for the sheet, though a fold comes before it', () => {
    // A fold after 30 min, the sheet 30 later: nuts toasted 45 min before it, cut 25 before.
    expect(due(30)).toEqual({ toast: 15 });
    expect(due(30, { touches: 1 })).toEqual({ toast: 0, cut: 5, bench: 27 });
    expect(due(30, { touches: 1, done: ['toast'] })).toEqual({ cut: 5, bench: 27 });
  });

  it('has two at most beside the time as the wait begins; the others call in their turn', () => {
    const many = filled([filling(['soak', 'toast', 'drain', 'cut', 'coat'], 'hardCheese')]);
    expect(due(30, { recipe: many, touches: 1 })).toEqual({
      soak: 0,
      takeOut: 0,
      toast: 4,
      drain: 8,
      cut: 5,
      coat: 15,
      bench: 27,
    });
    // What is done makes room for the next.
    expect(due(30, { recipe: many, touches: 1, done: ['soak'] })).toMatchObject({
      takeOut: 0,
      toast: 0,
      drain: 4,
    });
    // A wait too short for turns asks at once, as before.
    expect(due(3, { recipe: many, touches: 1 })).toMatchObject({ toast: 0, drain: 0 });
  });

  it('asks for nothing after the sheet, and nothing of a plain dough', () => {
    expect(due(30, { touches: 2 })).toEqual({});
    const plain = { ...RECIPE, process: { ...RECIPE.process, touches: [] } };
    expect(due(30, { recipe: plain })).toEqual({});
  });

  it('takes only what may stand out of the fridge early', () => {
    const cheese = filled([filling(undefined, 'hardCheese')]);
    const spoils = filled([filling(undefined, 'perishable')]);
    expect(due(60, { recipe: cheese, touches: 1 })).toHaveProperty('takeOut', 0);
    expect(due(60, { recipe: spoils, touches: 1 })).toEqual({ bench: 27 });
  });

  describe('for a filling that goes in as the loaves are shaped', () => {
    const shaped = (fillings: readonly Filling[], recipe: Recipe = RECIPE): Recipe => ({
      ...filled(fillings, recipe),
      process: { ...recipe.process, touches: [{ kind: 'fold', after: 30 }] },
    });
    const NUTTY = shaped([filling(['toast', 'cut'])]);

    it('calls before the look at the dough, for a bench rest of 20 min is all that follows', () => {
      expect(due(60, { stage: 'bulk.proving', recipe: NUTTY })).toEqual({
        tidyBulk: 0,
        toast: 35,
        cut: 55,
      });
      const rest = { stage: 'shape.benchRest', recipe: NUTTY } as const;
      // Nobody toasted by then: it is asked for at once, and again for no other reason.
      expect(due(20, rest)).toEqual({ toast: 0, cut: 0, baskets: 10, tidyBench: 4 });
      expect(due(20, { ...rest, done: ['toast', 'cut'] })).toEqual({ baskets: 10, tidyBench: 0 });
    });

    it('calls between folds what takes longer than the rise that follows', () => {
      const soaked = shaped([filling(['soak', 'cut'], 'hardCheese')]);
      const between = (ready: number) =>
        Object.fromEntries(
          Object.entries(
            leadTasks(input({ recipe: soaked }), T0 + 30 * MINUTE, T0 + ready * MINUTE),
          ).map(([task, at]) => [task, (at - T0) / MINUTE]),
        );
      // Ready in 120 min at the earliest, shaped 20 later: soaked two hours before.
      expect(between(120)).toEqual({ soak: 20 });
      expect(between(60)).toEqual({ soak: 0, takeOut: 20 });
      // A window that lies before the next fold is not believed: hands are in the dough until then.
      expect(between(10)).toEqual({ soak: 0, takeOut: 0, cut: 25 });
      expect(between(400)).toEqual({});
    });

    it('leaves what spoils in the fridge, and wets no bench for a sheet that never comes', () => {
      const stages = ['bulk.between', 'bulk.proving', 'shape.benchRest'] as const;
      const asked = (keeps: Filling['keeps']) =>
        stages.flatMap((stage) =>
          Object.keys(due(20, { stage, recipe: shaped([filling(undefined, keeps)]), touches: 0 })),
        );
      expect(asked('hardCheese')).toContain('takeOut');
      expect(asked('perishable')).not.toContain('takeOut');
      expect([...asked('hardCheese'), ...asked('perishable')]).not.toContain('bench');
    });

    it('has a scooped dough’s filling ready by the look: there is no bench rest', () => {
      const rye = filled([filling(['toast'])], SCOOP);
      expect(due(90, { stage: 'bulk.proving', recipe: rye })).toEqual({
        tidyBulk: 0,
        toast: 45,
        grease: 80,
      });
    });

    it('stands among the marks of the waits before it', () => {
      const { marks } = waitFor(input({ stage: 'bulk.proving', recipe: NUTTY }));
      expect(marks['lead.toast']! - marks['look']!).toBe(-25 * MINUTE);
      const soaked = shaped([filling(['soak'])]);
      const early = waitFor(input({ stage: 'bulk.between', recipe: soaked, kitchen: 40 })).marks;
      const ready = Math.max(early['earliest']!, early['touch']!);
      expect(early['lead.soak']).toBe(Math.max(T0, ready - 100 * MINUTE));
    });
  });

  it('soaks seeds while the levain rises, two hours before it is ripe', () => {
    const seeds = filled([filling(['soak'])]);
    expect(due(480, { stage: 'levain.ripening', recipe: seeds })).toEqual({ soak: 360 });
    expect(due(480, { stage: 'levain.ripening' })).toEqual({});
  });

  it.each([
    ['shape.benchRest', RECIPE, 20, { tidyBench: 0, baskets: 10 }],
    ['shape.benchRest', TIN, 20, { tidyBench: 0, grease: 10 }],
    ['bulk.proving', SCOOP, 90, { tidyBulk: 0, grease: 80 }],
    ['bulk.proving', RECIPE, 90, { tidyBulk: 0 }],
    ['mix.rest', RECIPE, 30, { tidyMix: 0 }],
    ['proof.counter', RECIPE, 20, { shelf: 10 }],
    ['preheating', RECIPE, 45, { parchment: 30, fetch: 35 }],
    ['preheating', STONE, 60, { parchment: 45, kettle: 50, fetch: 50 }],
    ['preheating', TIN, 30, {}],
    ['preheating', COLD_TIN, 30, { fetch: 20 }],
    ['recover', COLD_TIN, 10, { fetch: 0 }],
    ['open', RECIPE, 20, { rack: 15 }],
  ] as const)('in %s', (stage, recipe, minutes, tasks) => {
    expect(due(minutes, { stage, recipe })).toEqual(tasks);
  });

  it('asks for boiling water before every load on a stone, for parchment once', () => {
    const done = ['parchment', 'kettle', 'fetch'];
    expect(due(10, { stage: 'recover', recipe: STONE, done })).toEqual({ kettle: 0, fetch: 0 });
  });

  it('falls due within its wait, never before it begins, in any wait of any length', () => {
    const stages = ['mix.rest', 'bulk.between', 'bulk.proving', 'shape.benchRest', 'open'] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...stages),
        fc.integer({ min: 1, max: 600 }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom(NUTS, SHAPED, TIN, SCOOP, STONE),
        (stage, minutes, touches, recipe) => {
          for (const at of Object.values(due(minutes, { stage, touches, recipe }))) {
            expect(at).toBeGreaterThanOrEqual(0);
            expect(at).toBeLessThan(minutes);
          }
        },
      ),
    );
  });

  it('stands among the marks of the wait, beside its end', () => {
    const { marks } = waitFor(input({ stage: 'shape.benchRest' }));
    expect(marks['lead.baskets']! - marks['end']!).toBe(-10 * MINUTE);
    expect(waitFor(input({ stage: 'standing' })).marks).toEqual({ poke: T0 + 20 * MINUTE });
  });
});
