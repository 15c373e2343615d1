import { expect, it } from 'vitest';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { bowlTouch, nextBowlsOf } from '../../../src/screens/day/bowl-touch.ts';
import { bread } from './breads.ts';
import { READ, saturday } from './saturday.ts';

const formula = bread('cherry-hazelnut');
const askFor = (loaves: number) => {
  const { recipe } = makeRecipe(formula, { loaves, piece: formula.piece });
  const rest = { due: null, startAt: null, bake: null, pins: {} };
  return { bakes: [{ name: formula.name, recipe: recipe!, ...rest }] };
};
const day = saturday({ formula, loaves: 6 });
const touch = (name: string) => day.touches.find((one) => one.name === name)!;

it('tells of a touch when the second bowl of its dough is due', () => {
  for (const name of ['mix', 'salt and water', 'fold 1', 'lamination', 'divide']) {
    const later = READ.hour(touch(name).at + 6 * MINUTE);
    expect(bowlTouch(askFor(6), touch(name), EQUIPMENT, READ.hour), name).toBe(
      `Bowl 2: 6\u00a0min later, at ${later}.`,
    );
  }
  const fold = touch('fold 1');
  expect(nextBowlsOf(askFor(6), fold, () => 'Fold 1', EQUIPMENT, READ.hour)).toMatch(
    /^Fold 1\. Bowl 2: 6\u00a0min later, at \d\d:\d\d\.$/,
  );
});

it('tells nothing where one bowl takes it, once the bowls are behind it, or of no bake of the day', () => {
  expect(bowlTouch(askFor(2), touch('fold 1'), EQUIPMENT, READ.hour)).toBeNull();
  for (const name of ['feed levain', 'shape', 'to fridge', 'load 1'])
    expect(bowlTouch(askFor(6), touch(name), EQUIPMENT, READ.hour), name).toBeNull();
  expect(bowlTouch({ bakes: [] }, touch('mix'), EQUIPMENT, READ.hour)).toBeNull();
  expect(nextBowlsOf(askFor(6), undefined, () => '', EQUIPMENT, READ.hour)).toBeNull();
});
