import { describe, expect, it } from 'vitest';
import {
  ALLERGENS,
  allergensOf,
  isOpen,
  kindsIn,
  namesNone,
  ownTexts,
  packetState,
  standsIn,
  withAllergen,
  withList,
} from '../../../src/core/formula/allergens.ts';
import { FILLING_FACTS } from '../../../src/core/formula/filling-facts.ts';
import type { Filling } from '../../../src/core/formula/formula.ts';
import { ALLERGEN_TEXTS, FILLING_TEXTS } from '../../../src/core/formula/allergen-texts.ts';
import { tellAllergens } from '../../../src/core/speech/tell-allergens.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const mix: Filling = { id: 'mix', name: 'spice mix', pct: 5, keeps: 'shelf', allergens: [] };

describe('the list', () => {
  it('is the fourteen of EU law, and the nine of US law are among them', () => {
    // Regulation (EU) 1169/2011, Annex II; US FALCPA 2004 and FASTER Act 2021. Both from memory.
    expect(ALLERGENS).toHaveLength(14);
    const nine = ['milk', 'egg', 'fish', 'crustaceans', 'nuts', 'peanuts', 'gluten', 'soya'];
    expect(ALLERGENS).toEqual(expect.arrayContaining([...nine, 'sesame']));
  });

  it('knows every text that the table of fillings, the short list and our breads have', () => {
    const texts = [
      ...Object.values(FILLING_FACTS).flatMap(({ allergens }) => allergens),
      ...Object.values(FILLING_TEXTS),
      ...SHIPPED.flatMap((name) => shippedFormula(name).fillings).flatMap((one) => one.allergens),
    ];
    expect(texts.length).toBeGreaterThan(10);
    expect(ownTexts(texts)).toEqual([]);
    // And no name is another's beginning.
    for (const name of Object.values(ALLERGEN_TEXTS)) {
      expect(ALLERGENS.filter((one) => standsIn([name], one) !== 'no')).toHaveLength(1);
    }
  });
});

describe('one list', () => {
  it('is named, to be looked up, or not there', () => {
    const list = ['Milk', 'soya, if the packet says so', 'tree nuts (name the nut)', 'pea protein'];
    expect(standsIn(list, 'milk')).toBe('named');
    expect(standsIn(list, 'soya')).toBe('open');
    expect(standsIn(list, 'nuts')).toBe('open');
    expect(standsIn(list, 'egg')).toBe('no');
    expect(standsIn(['gluten'], 'gluten')).toBe('open');
    expect(ownTexts(list)).toEqual(['pea protein']);
    expect(isOpen(list)).toBe(true);
    expect(isOpen(['milk', 'tree nuts (walnut)', 'pea protein'])).toBe(false);
  });

  it('is settled by a press: named, then not; a nut by its name', () => {
    const open = ['milk, if the packet says so', 'egg'];
    expect(withAllergen(open, 'milk')).toEqual(['egg', 'milk']);
    expect(withAllergen(['egg', 'milk'], 'milk')).toEqual(['egg']);
    const walnut = withAllergen(['tree nuts (name the nut)'], 'nuts', 'walnut');
    expect(walnut).toEqual(['tree nuts (walnut)']);
    const both = withAllergen(walnut, 'nuts', 'Brazil nut');
    expect(kindsIn(both, 'nuts')).toEqual(['walnut', 'Brazil nut']);
    expect(withAllergen(both, 'nuts', 'Brazil nut')).toEqual(walnut);
  });

  it('takes apart what a file put into one pair of brackets', () => {
    const list = ['tree nuts (walnut, hazelnut)'];
    expect(kindsIn(list, 'nuts')).toEqual(['walnut', 'hazelnut']);
    expect(withAllergen(list, 'nuts', 'walnut')).toEqual(['tree nuts (hazelnut)']);
  });
});

describe('an answer', () => {
  it('is never none before it was given', () => {
    expect(packetState(mix)).toBe('open');
    expect(packetState({ ...mix, allergens: ['milk'] })).toBe('memory');
    expect(packetState(namesNone(mix))).toBe('none');
    expect(packetState(withList(mix, ['milk']))).toBe('read');
    expect(packetState(withList(namesNone(mix), []))).toBe('open');
    const half = withList(mix, ['milk', 'soya, if the packet says so']);
    expect(packetState(half)).toBe('memory');
  });
});

describe('a bread', () => {
  const formula = {
    ...shippedFormula('cherry-hazelnut'),
    fillings: [
      { ...mix, id: 'a', name: 'walnuts', allergens: ['tree nuts (walnut)'] },
      { ...mix, id: 'b', name: 'hazelnuts', allergens: ['tree nuts (hazelnut)', 'pea protein'] },
      { ...mix, id: 'c', name: 'fruit', allergens: ['sulphites, if the packet says so'] },
      mix,
    ],
  };

  it('brings each once with its kinds, and tells what nobody has answered for', () => {
    expect(allergensOf(formula)).toEqual({
      brings: [
        'gluten (wheat, rye)',
        'tree nuts (walnut, hazelnut)',
        'sulphites, if the packet says so',
        'pea protein',
      ],
      unanswered: ['spice mix'],
    });
    expect(tellAllergens(formula)).toEqual([
      'Allergens in it: gluten (wheat, rye), tree nuts (walnut, hazelnut), sulphites, if the packet says so, pea protein.',
      'Not answered yet: spice mix.',
      'Read the packet: labels change.',
    ]);
    const answered = { ...formula, fillings: [namesNone(mix)] };
    expect(tellAllergens(answered)).toEqual([
      'Allergens in it: gluten (wheat, rye).',
      'Read the packet: labels change.',
    ]);
  });

  it.each(SHIPPED)(
    '%s always brings its grain’s gluten, and what its flours’ packets name',
    (name) => {
      const bread = shippedFormula(name);
      expect(allergensOf(bread).brings[0]).toMatch(/^gluten \(/);
      const malted = {
        ...bread,
        flours: bread.flours.map((one) => ({ ...one, allergens: ['soya', 'gluten (barley)'] })),
      };
      expect(allergensOf(malted).brings).toContain('soya');
      expect(allergensOf(malted).brings[0]).toContain('barley');
    },
  );
});
