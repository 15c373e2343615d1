import { afterEach, describe, expect, it } from 'vitest';
import { namedBy } from '../../../src/core/circle/label/allergen-lists.ts';
import { watchedIn } from '../../../src/core/circle/watched.ts';
import { ALLERGEN_TEXTS, KIND_TEXTS } from '../../../src/core/formula/allergen-texts.ts';
import {
  ALLERGENS,
  allergensOf,
  allergenText,
  hasKinds,
  isOpen,
  ofFlour,
  withAllergen,
} from '../../../src/core/formula/allergens.ts';
import { FILLING_FACTS } from '../../../src/core/formula/filling-facts.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { showAllergen, showAllergens } from '../../../src/core/speech/show-allergen.ts';
import { tellAllergens } from '../../../src/core/speech/tell-allergens.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { englishOf } from '../../../src/core/speech/twins.ts';
import { SHIPPED, shippedFormula } from '../formula/shipped.ts';

const OTHERS = { fr, de } as const;
afterEach(() => speakIn('en'));

const everyText = (): readonly string[] =>
  ALLERGENS.flatMap((one) => [
    allergenText(one),
    ...(hasKinds(one) ? KIND_TEXTS[one].map((kind) => allergenText(one, kind)) : []),
  ]);

describe('an allergen as it is shown', () => {
  it.each([
    ['tree nuts (walnut)', 'Schalen\u00adfrüchte (Walnuss)', 'fruits à coque (noix)'],
    ['gluten (wheat, Rye)', 'Gluten (Weizen, Roggen)', 'gluten (blé, seigle)'],
    ['Milk', 'Milch', 'lait'],
    ['milk, if the packet says so', 'Milch, wenn die Packung es sagt', 'lait, si le paquet le dit'],
    [
      'tree nuts (name the nut)',
      'Schalen\u00adfrüchte (welche Nuss?)',
      'fruits à coque (dire lequel)',
    ],
    ['fish (perch)', 'Fisch (perch)', 'poisson (perch)'],
    ['pea protein', 'pea protein', 'pea protein'],
  ])('%s', (text, german, french) => {
    expect(showAllergen(text)).toBe(text);
    speakIn('de', de);
    expect(showAllergen(text)).toBe(german);
    speakIn('fr', fr);
    expect(showAllergen(text)).toBe(french);
  });

  it.each(['fr', 'de'] as const)('loses none in %s: no two become one, none is left', (tongue) => {
    speakIn(tongue, OTHERS[tongue]);
    const shown = everyText().map(showAllergen);
    expect(shown).toHaveLength(27);
    expect(new Set(shown).size).toBe(27);
    const same = everyText().filter((text) => showAllergen(text) === text);
    expect(same).toEqual(tongue === 'fr' ? ['gluten', 'lupin'] : []);
    for (const text of Object.values(FILLING_FACTS).flatMap(({ allergens }) => allergens))
      expect(showAllergen(text), text).not.toMatch(/packet|name the|milk|egg|nuts|oats/);
  });

  it('is known in English to whoever says it', () => {
    speakIn('de', de);
    expect(englishOf(showAllergens(['milk', 'tree nuts (walnut)']))).toBe(
      'milk, tree nuts (walnut)',
    );
  });

  it('names on a list in each tongue whatever the bread brings', () => {
    const texts = everyText();
    const counts = (['eu', 'us', 'canada'] as const).map((list) => namedBy(list, texts).length);
    for (const tongue of ['fr', 'de'] as const) {
      speakIn(tongue, OTHERS[tongue]);
      const named = (['eu', 'us', 'canada'] as const).map((list) => namedBy(list, texts));
      expect(named.map(({ length }) => length)).toEqual(counts);
      expect(named.flat().join()).not.toMatch(/wheat|rye|barley|oats|walnut|hazelnut|almond/);
    }
    expect(namedBy('us', ['gluten (wheat)'])).toEqual(['Weizen']);
  });

  it('is told of every bread of ours', () => {
    for (const name of SHIPPED) {
      const formula = shippedFormula(name);
      for (const tongue of ['fr', 'de'] as const) {
        speakIn(tongue, OTHERS[tongue]);
        const told = tellAllergens(formula)[0]!;
        const { brings } = allergensOf(formula);
        expect(brings.length).toBeGreaterThan(0);
        for (const text of brings) expect(told).toContain(showAllergen(text));
      }
    }
  });
});

describe('an allergen as it is kept', () => {
  it('is the same in every tongue, and found again there', () => {
    const kept = (): unknown => [
      ALLERGENS,
      everyText(),
      withAllergen(['tree nuts (name the nut)', 'milk, if the packet says so'], 'nuts', 'walnut'),
      isOpen(['milk, if the packet says so']),
      ofFlour({ id: 's', name: 'Dinkelmehl', grain: 'spelt', pct: 100 }),
      SHIPPED.map((name) => watchedIn(['gluten', 'milk', 'tree nuts'], shippedFormula(name))),
    ];
    const english = kept();
    for (const tongue of ['fr', 'de'] as const) {
      speakIn(tongue, OTHERS[tongue]);
      expect(kept()).toEqual(english);
    }
    expect(ALLERGEN_TEXTS.nuts).toBe('tree nuts');
  });
});
