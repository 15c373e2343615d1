import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import {
  keptAllergens,
  withKeptAllergens,
} from '../../../../src/core/circle/label/kept-allergens.ts';
import { watchedIn } from '../../../../src/core/circle/watched.ts';
import { KIND_TEXTS } from '../../../../src/core/formula/allergen-texts.ts';
import { ALLERGENS, allergenText, hasKinds } from '../../../../src/core/formula/allergens.ts';
import type { Formula } from '../../../../src/core/formula/formula.ts';
import { bookOf } from '../../../../src/core/records/book.ts';
import type { LogRecord } from '../../../../src/core/records/record.ts';
import { readFormulas } from '../../../../src/core/sheets/formula-file.ts';
import { de } from '../../../../src/core/speech/de.ts';
import { fr } from '../../../../src/core/speech/fr.ts';
import { showAllergen } from '../../../../src/core/speech/show-allergen.ts';
import { speakIn } from '../../../../src/core/speech/tongue.ts';
import { SHIPPED, shippedFormula } from '../../formula/shipped.ts';

const OTHERS = { fr, de } as const;
afterEach(() => speakIn('en'));

/** A baker's own bread with a curd that its file says this of. */
const curd = (...allergens: readonly string[]): Formula => ({
  ...shippedFormula('lane-wheat'),
  id: 'quark-brot',
  name: 'Quarkbrot',
  fillings: [
    { id: 'quark', name: 'Quark', pct: 10, keeps: 'perishable', allergens, packet: 'read' },
  ],
});
const everyText: readonly string[] = ALLERGENS.flatMap((one) => [
  allergenText(one),
  ...(hasKinds(one) ? KIND_TEXTS[one].map((kind) => allergenText(one, kind)) : []),
]);

describe('a bread of a baker’s own file, in their own tongue', () => {
  it.each([
    ['Milch', 'milk'],
    ['lait', 'milk'],
    ['Spuren von Milch', 'milk'],
    ['Milch und Eier', 'egg'],
    ['Schalenfrüchte (Walnuss)', 'tree nuts (walnut)'],
    ['Gluten (Gerste)', 'gluten (barley)'],
  ])('that says %s meets who must not have %s', (said, watched) => {
    const { formulas } = readFormulas(JSON.stringify(curd(said)));
    expect(watchedIn([watched], formulas![0]!).named).toEqual([watched]);
  });

  it('is met as well where it was kept before its words were known', () => {
    const fact = { kind: 'formula', id: 'f1', at: 1, formula: curd('Milch') };
    const [entry] = bookOf([{ fact } as unknown as LogRecord], []);
    expect(watchedIn(['milk'], entry!.latest).named).toEqual(['milk']);
    expect(fact.formula.fillings[0]!.allergens).toEqual(['Milch']);
  });
});

describe('a list as it is kept', () => {
  it.each([
    [
      ['Eier', 'Milch'],
      ['egg', 'milk'],
    ],
    [['Milch', 'milk'], ['milk']],
    [['Nüsse'], ['tree nuts']],
    [['fruits à coque (noix, noisette)'], ['tree nuts (hazelnut)', 'tree nuts (walnut)']],
    [['Gluten (Weizen, Einkorn)'], ['gluten (wheat, Einkorn)']],
    [['kann Soja enthalten'], ['soya', 'kann Soja enthalten']],
    [['Molke'], ['milk', 'Molke']],
    [['sans lait'], ['sans lait']],
    [['glutenfrei'], ['glutenfrei']],
    [['pea protein'], ['pea protein']],
    [['fish (perch)'], ['fish (perch)']],
    [['tree nuts (name the nut)'], ['tree nuts (name the nut)']],
  ])('of %j is %j', (list, all) => {
    expect(keptAllergens(list)).toEqual(all);
  });

  it.each(['en', 'fr', 'de'] as const)('has each of ours by its own text, told in %s', (tongue) => {
    const told = everyText.map((text) => {
      speakIn(tongue, tongue === 'en' ? {} : OTHERS[tongue]);
      return showAllergen(text);
    });
    expect(everyText).toHaveLength(27);
    // Capitals make no other text of them: they are compared without.
    const small = told.map((text) => keptAllergens([text]).join().toLowerCase());
    expect(small).toEqual(everyText.map((text) => text.toLowerCase()));
  });

  it('is the same once it is kept, and stays short enough to be read again', () => {
    const words = fc.constantFrom(
      ...['Milch', 'lait', 'Spuren von Eiern', 'Senf', 'pea protein', 'Gluten (Roggen)'],
      ...['Molke, Sahne', 'noix', 'Haselnüsse', 'Weizen und Roggen', 'céleri', 'tahini'],
    );
    fc.assert(
      fc.property(
        fc.array(fc.oneof(words, fc.string({ minLength: 1 })), { maxLength: 30 }),
        (list) => {
          const all = keptAllergens(list);
          expect(all.length).toBeLessThanOrEqual(30);
          expect(keptAllergens(all)).toEqual(all);
        },
      ),
    );
  });

  it('is no other for the breads that come with the program', () => {
    for (const formula of SHIPPED.map(shippedFormula))
      expect(withKeptAllergens(formula)).toBe(formula);
  });
});
