import { afterEach, describe, expect, it } from 'vitest';
import { checkOrder } from '../../src/core/circle/check-order.ts';
import { CIRCLE } from '../../src/core/circle/circle.ts';
import { makeLabel } from '../../src/core/circle/label/label.ts';
import { messageTo } from '../../src/core/circle/message.ts';
import { makeRecipe } from '../../src/core/formula/make-recipe.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { bookOf } from '../../src/core/records/book.ts';
import { de } from '../../src/core/speech/de.ts';
import { speakIn } from '../../src/core/speech/tongue.ts';
import { benchView } from '../../src/screens/book/share/sheet-view.ts';
import { batchName } from '../../src/screens/circle/dough/dough-day.ts';
import { handRead } from '../../src/screens/circle/handover/hand-read.ts';
import { linesWords } from '../../src/screens/circle/orders/order-words.ts';
import { printView } from '../../src/screens/day/print/print-view.ts';
import { planDetail } from '../../src/screens/day/shown-of.ts';
import type { House } from '../../src/screens/house.ts';
import { shippedFormula } from '../core/formula/shipped.ts';
import { askedDay, dayPlan } from '../core/day/support/live-day.ts';

afterEach(() => speakIn('en'));

const formula = shippedFormula('lane-wheat');
const house = {
  book: () => bookOf([], [formula]),
  formulas: () => [{ formula, file: 'lane-wheat' }],
  ways: () => ({ heat: 'C', weight: 'g', clock: '24' }),
  equipment: () => EQUIPMENT,
} as unknown as House;
const line = { bread: 'lane-wheat', count: 2, grams: null, cut: false };
const order = {
  ...{ id: 'o', who: 'n', day: '2031-05-09', at: null, lines: [line] },
  ...{ paid: false, handed: null, made: 1, standing: null },
};
const plan = dayPlan(askedDay());
const asked = { ...plan.ask.bakes[0]!, name: 'Lane wheat' };
const twice = { ...plan.ask, bakes: [asked, { ...asked, name: 'Lane wheat 2' }] };
const hours = {
  ...{ now: () => 0, midnight: () => 0 },
  ...{ hour: String, day: String, date: String },
};
const metric = { heat: 'C', weight: 'g' } as const;
const recipe = makeRecipe(formula, { loaves: 2, piece: formula.piece }).recipe!;

/** Its packets read, its flours nothing but themselves. */
const answered = {
  ...formula,
  flours: formula.flours.map((flour) => ({ ...flour, packet: 'read' as const })),
};
const label = () =>
  makeLabel({
    ...{ formula: answered, list: 'eu', grams: null, cut: false, baked: '9 May' },
    ...{ days: null, lines: [], who: null },
    lookUp: (name) => ({ id: name, name, pack: null, counted: null, madeOf: [] }),
  }).label;
const neighbour = { id: 'n', name: 'N', watch: ['gluten'] };
const checked = () =>
  checkOrder(order, {
    ...{ breads: [formula], today: '2031-05-01', minute: 0 },
    circle: { ...CIRCLE, neighbours: [neighbour] },
  });

const TOLD: Readonly<Record<string, () => string>> = {
  'an order': () => linesWords(house, [line]),
  'a message': () => messageTo({ order }, handRead(house, CIRCLE, '2031-05-09')),
  'a plan': () => planDetail(house, twice),
  'a plan on paper': () => printView({ ...plan, ask: twice }, hours).names,
  'a batch': () => batchName({ formula, grams: null } as Parameters<typeof batchName>[0], metric),
  'a sheet for the bench': () => benchView(recipe, metric, '9 May').title,
  'a label': () => label()!.name,
  'a caution': () => String(checked().asks[0]!.values['name']),
};

describe('a bread that came with the program is called as the tongue calls it', () => {
  it.each(Object.entries(TOLD))('in %s', (_, told) => {
    expect(told()).toMatch(/Lane wheat|lane-wheat/);
    speakIn('de', de);
    expect(told()).toMatch(/gassenbrot/i);
    expect(told()).not.toMatch(/lane/i);
  });
});
