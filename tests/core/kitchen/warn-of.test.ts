import { describe, expect, it } from 'vitest';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { ANY_POT, EQUIPMENT, type Equipment } from '../../../src/core/kitchen/equipment.ts';
import { warnOf } from '../../../src/core/kitchen/warn-of.ts';
import { kitchenWarnings } from '../../../src/core/speech/words/kitchen-warnings.ts';
import { tellNotice } from '../../../src/core/speech/tell-notice.ts';
import { shippedFormula } from '../formula/shipped.ts';
import { wordsOf } from '../speech/support/catalogue.ts';

const STAGES = ['read.plan', 'mix.weigh', 'proof.counter', 'proof.toFridge', 'turnOn', 'before'];
const recipeOf = (name: Parameters<typeof shippedFormula>[0], loaves = 2) => {
  const formula = shippedFormula(name);
  return makeRecipe(formula, { loaves, piece: formula.piece }).recipe!;
};
const CELSIUS = { heat: 'C', weight: 'g' } as const;
const keys = (stage: string, equipment: Partial<Equipment>, loaves = 2, name = 'lane-wheat') =>
  warnOf(stage, recipeOf(name as 'lane-wheat', loaves), loaves, {
    ...EQUIPMENT,
    ...equipment,
  }).map(({ key }) => key);

describe('what the kitchen cannot do', () => {
  it('warns of nothing where nothing was said', () => {
    for (const stage of STAGES) expect(keys(stage, {}), stage).toEqual([]);
  });

  it('has many loaves chilled group by group, where they can still be kept apart', () => {
    for (const stage of ['read.plan', 'proof.counter', 'proof.toFridge']) {
      const at = (loaves: number, name?: string) => keys(stage, {}, loaves, name);
      expect(at(4), stage).not.toContain('fridgeGroups');
      expect(at(12), stage).toContain('fridgeGroups');
      expect(at(12, 'barley-tin'), stage).not.toContain('fridgeGroups');
    }
    const told = (dough?: number) =>
      warnOf('proof.toFridge', recipeOf('lane-wheat', 12), 12, EQUIPMENT, dough).map((one) =>
        tellNotice(one, CELSIUS),
      );
    expect(told()).toEqual(['Cooling these takes the fridge 2 h. Chill 4 at a time.']);
    // Dough that is as cold as the fridge brings nothing.
    expect(told(5)).toEqual([]);
  });

  it('shares a dough between bowls where it is weighed, and says when there are too few', () => {
    expect(keys('mix.weigh', {}, 4)).toEqual(['bowlsSplit']);
    const [split] = warnOf('mix.weigh', recipeOf('lane-wheat', 4), 4, EQUIPMENT);
    expect(tellNotice(split!, CELSIUS)).toBe('Mix 2 bowls of 1836 g. Start them 6\u00a0min apart.');
    expect(keys('mix.weigh', { bowls: { count: 1, kilos: 3, litres: null } }, 4)).toEqual([
      'bowlsShort',
    ]);
    expect(keys('mix.weigh', { bowls: { count: 1, kilos: 3, litres: 2 } })).toEqual(['bowlsShort']);
  });

  it('tells of a pot too small for its loaf before the dough is mixed, and of no other pot', () => {
    const pot = (litres: number | null) => ({ ...ANY_POT, material: 'bareIron', litres }) as const;
    const told = (...litres: (number | null)[]) => keys('read.plan', { pots: litres.map(pot) });
    expect(told(2)).toEqual(['potSmall']);
    expect(told(4, 2.5)).toEqual(['potSmall']);
    // 900 g to the lid of 3 litres: the smallest that is in use for it.
    expect(told(3)).toEqual([]);
    expect(told(null)).toEqual([]);
    expect(keys('mix.weigh', { pots: [pot(2)] })).toEqual(['potSmall']);
    expect(keys('read.plan', { pots: [pot(2)] }, 2, 'barley-tin')).toEqual([]);
    const [warned] = warnOf('read.plan', recipeOf('lane-wheat'), 2, {
      ...EQUIPMENT,
      pots: [pot(2)],
    });
    expect(tellNotice(warned!, CELSIUS)).toBe(
      'A pot of 2 litres is too small. Make these loaves lighter.',
    );
  });

  it('tells of a warm or small fridge while the loaves still stand on the counter', () => {
    const fridge = { celsius: 6, holds: 1 };
    for (const stage of ['proof.counter', 'proof.toFridge'])
      expect(keys(stage, { fridge })).toEqual(['fridgeWarm', 'fridgeSmall']);
    expect(keys('proof.toFridge', { fridge: { celsius: 5, holds: 2 } })).toEqual([]);
    expect(keys('read.plan', { fridge }, 2, 'lane-today')).toEqual([]);
  });

  it('tells of the oven and its pots before they are hot', () => {
    const oven = { ...EQUIPMENT.oven, most: 220, atDial: 215, preheat: 70, parchment: 215 };
    const pots = [{ ...ANY_POT, material: 'clay', knob: 'plastic' } as const];
    expect(keys('turnOn', { oven, pots })).toEqual([
      'knobPlastic',
      'parchmentLow',
      'potsNotHot',
      'bakeHeatShort',
      'ovenDial',
      'ovenSlow',
    ]);
    // Once a firing: the list before the oven asks for both.
    expect(keys('before', { oven, pots })).toEqual([]);
    expect(keys('turnOn', { oven, pots }, 2, 'barley-tin')).toEqual(['preheatShort', 'ovenSlow']);
  });

  it('sets the dial against the oven: one that runs 15 °C cool is set 15 °C higher', () => {
    const [told] = warnOf('turnOn', recipeOf('lane-wheat'), 2, {
      ...EQUIPMENT,
      oven: { ...EQUIPMENT.oven, atDial: 215 },
    });
    expect(tellNotice(told!, CELSIUS)).toBe('Your dial is off. For the pot, set it to 275 °C.');
    expect(tellNotice(told!, { heat: 'F', weight: 'oz' })).toContain('527 °F');
    expect(keys('turnOn', { oven: { ...EQUIPMENT.oven, atDial: 226 } })).toEqual([]);
    // No pot is spoken of where it is a stone that heats.
    const off = { oven: { ...EQUIPMENT.oven, atDial: 215 } };
    expect(keys('turnOn', off, 2, 'olive-seed')).toEqual(['ovenDialStone']);
  });

  it('tells of an oven that bakes but does not heat as hot, by what is baked in', () => {
    const at = (most: number, name?: string) =>
      keys('turnOn', { oven: { ...EQUIPMENT.oven, most } }, 2, name);
    expect([at(225), at(245), at(260)]).toEqual([['bakeHeatShort'], ['preheatShort'], []]);
    expect([at(195, 'barley-tin'), at(225, 'barley-tin'), at(230, 'barley-tin')]).toEqual([
      ['bakeHeatShort'],
      ['preheatShort'],
      [],
    ]);
    expect(keys('read.plan', { oven: { ...EQUIPMENT.oven, most: 245 } })).toEqual(['preheatShort']);
  });

  it('has the maker of an enamel pot asked about cold dough, once, before it is hot', () => {
    const enamel = { ...ANY_POT, material: 'enamel' } as const;
    const told = (stage: string, pot: Partial<typeof ANY_POT> = {}, name?: string) =>
      keys(stage, { pots: [{ ...enamel, ...pot }] }, 2, name);
    expect([told('turnOn'), told('read.plan')]).toEqual([['coldAsk'], ['coldAsk']]);
    expect([told('before'), told('load')]).toEqual([[], []]);
    expect(told('turnOn', { cold: true })).toEqual([]);
    expect(told('turnOn', { cold: false })).toEqual(['potsNotHot']);
    expect(told('turnOn', { material: 'bareIron' })).toEqual([]);
    expect(told('turnOn', {}, 'barley-tin')).toEqual([]);
  });

  it('says each in twelve words at most', () => {
    for (const text of Object.values(kitchenWarnings))
      expect(wordsOf(text).length, text).toBeLessThanOrEqual(12);
  });
});
