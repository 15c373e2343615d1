import { expect, test } from 'vitest';
import { questions } from '../../../src/core/speech/words/questions.ts';

const values = Object.fromEntries(
  Object.entries(questions).map(([list, lines]) => [
    list,
    Object.fromEntries(
      lines.map((q) => [q.item, [q.slab.value, ...q.tiles.map((t) => t.value)].sort()]),
    ),
  ]),
);

test('the record keeps these items and values, and no others', () => {
  const sure = (...v: string[]) => [...v, 'notSure'].sort();
  expect(values).toEqual({
    beforeStart: {
      starter: ['counter', 'fedToday', 'fridge'],
      flour: ['enough', 'short'],
      filling: ['none', 'toPrepare', 'toastedDry'],
      pot: ['bareIron', 'clayOrGlass', 'metalKnob', 'noPot', 'plasticKnob'],
      scale: ['noScale', 'notZero', 'zeroed'],
      hands: ['notYet', 'washed'],
      fridge: ['cleared', 'full', 'warm'],
    },
    beforeOven: {
      child: ['away', 'close', 'none', 'withGrownUp'],
      floor: ['clear', 'cluttered', 'wet'],
      mitts: ['dry', 'missing', 'wet'],
      landing: ['notYet', 'ready'],
      parchment: ['noParchment', 'rated', 'unknown'],
      knob: ['metal', 'noLid', 'plastic', 'plasticOff'],
      blade: ['notYet', 'ready'],
    },
    levainSigns: {
      colour: sure('creamy', 'pinkOrMould'),
      rise: sure('doubled', 'some', 'little'),
      top: sure('domed', 'flat', 'dipped'),
      bubbles: sure('many', 'few', 'none'),
      smell: sure('fresh', 'sharp', 'flour'),
    },
    bulkSigns: {
      rise: sure('0', '25', '50', '75', '100'),
      edge: sure('domed', 'flat', 'fallen'),
      bubbles: sure('many', 'some', 'none'),
      wobble: sure('jiggles', 'firm', 'strings'),
      top: sure('smooth', 'torn', 'sticky'),
    },
    loafSigns: {
      grown: sure('grown', 'little', 'none'),
      rim: sure('below', 'level', 'above'),
      wobble: sure('jiggles', 'firm'),
      skin: sure('smooth', 'dry', 'torn'),
      dent: sure('springs', 'slowly', 'stays'),
    },
    pokeSigns: {
      grown: sure('grown', 'little'),
      dent: sure('springs', 'slowly', 'stays'),
    },
    warmSigns: {
      dent: sure('springs', 'slowly', 'stays'),
      grown: sure('grown', 'little', 'none'),
    },
    crustSigns: {
      colour: sure('pale', 'golden', 'dark'),
      base: sure('dark', 'dull', 'hollow'),
      core: sure('ready', 'low'),
    },
  });
});

test('the checklists have 5 to 9 lines', () => {
  for (const list of ['beforeStart', 'beforeOven'] as const) {
    expect(questions[list].length).toBeGreaterThanOrEqual(5);
    expect(questions[list].length).toBeLessThanOrEqual(9);
  }
});

test('no answer is an assent, and no two answers of a line read alike', () => {
  for (const q of Object.values(questions).flat()) {
    const labels = [q.slab, ...q.tiles].map((o) => o.label);
    expect(new Set(labels).size, q.item).toBe(labels.length);
    for (const label of labels)
      expect(label).not.toMatch(/^(ok|okay|yes|no|done|fine|checked)\b$/i);
    expect(q.ask, q.item).toMatch(/\?$/);
  }
});

test('a cold dent and a finger in dough come last, the hazard first', () => {
  expect(questions.loafSigns.at(-1)?.item).toBe('dent');
  expect(questions.pokeSigns.at(-1)?.item).toBe('dent');
  expect(questions.levainSigns[0]?.item).toBe('colour');
  expect(questions.beforeOven[0]?.item).toBe('child');
});
