import { readFileSync } from 'node:fs';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import type { CutRead } from '../../../src/core/records/cut-read.ts';
import { DAY, HOUR } from '../../../src/core/units.ts';
import { Hand } from '../../machines/support/hand.ts';
import type { Baker } from './baker.ts';
import { beginBread } from './begin-bread.ts';
import { START } from './open-app.ts';
import { press, turned, type PageStep } from './page-step.ts';
import { putRows } from './put-rows.ts';

const recipeOf = (file: string) => {
  const json: unknown = JSON.parse(readFileSync(`assets/formulas/${file}.json`, 'utf8'));
  const formula = readFormula(json).formula!;
  const wanted = { loaves: 2, piece: formula.piece, scale: EQUIPMENT.scale };
  return makeRecipe(formula, wanted).recipe!;
};

/** A kitchen that baked these breads the week before, with what was noted of each, and whose starter is ripe. */
export function notedKitchen(): Hand {
  const hand = new Hand({ now: START - 7 * DAY });
  const bake = (id: string, file: string, text: string): void => {
    hand.start(id, 'cool.note', [`${id}1`, `${id}2`], recipeOf(file));
    hand.press(id, 'noted', { text });
  };
  const read: CutRead = {
    says: 'causes',
    causes: [{ cause: 'short', sure: 'likely' }],
    change: 'longerProof',
    because: [],
    model: 'test',
  };
  bake('o', 'olive-seed', 'good');
  hand.do({ kind: 'cut', target: 'f1', answers: { crumb: 'tight', holes: 'throughout' }, read });
  bake('c', 'cherry-hazelnut', 'under');
  bake(
    'w',
    'lane-today',
    'The bench was cold by the window, so next time on the shelf by the stove, and less water at first.',
  );
  hand.turnTo(START - 6 * HOUR);
  hand.tend({ did: 'fed', flour: 2, celsius: 24 });
  return hand;
}

/** The start page with this bread chosen. */
const chosen = (name: string, bread: string): PageStep => ({
  name,
  go: (baker: Baker) => press(baker, ['Which bread?', bread]),
});

/** What the last bake left, where the next one begins. */
export const NEXT_PAGES: readonly PageStep[] = [
  {
    name: 'last time, under',
    async go(baker) {
      await baker.page.evaluate(putRows(notedKitchen().records));
      await baker.app.reopen();
      await baker.page.locator('.start-grid').waitFor();
      await press(baker, ['Which bread?', 'Cherry and hazelnut']);
      await baker.page.locator('.start-last').waitFor();
    },
  },
  chosen('last time, a cut loaf', 'Olive and seed'),
  chosen('last time, own words', 'Lane wheat'),
  {
    name: 'last time, own words, read through',
    async go(baker) {
      await baker.begin('22');
      await press(baker, ['I’ve read it']);
      await baker.page.locator('.through-last').waitFor();
    },
  },
  {
    name: 'last time, in the wait for the first look',
    async go(baker) {
      await baker.takeBack();
      await turned(baker, '.slab:visible');
      await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl', 0, '26');
      await baker.page.locator('.act-detail:has-text("wait for the dome")').waitFor();
    },
  },
];
