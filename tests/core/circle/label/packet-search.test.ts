import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { makeLabel } from '../../../../src/core/circle/label/label.ts';
import { saidIn, setApart } from '../../../../src/core/circle/label/set-apart.ts';
import { de } from '../../../../src/core/speech/de.ts';
import { fr } from '../../../../src/core/speech/fr.ts';
import { speakIn } from '../../../../src/core/speech/tongue.ts';
import { SHIPPED, shippedFormula } from '../../formula/shipped.ts';

const OTHERS = { fr, de } as const;
afterEach(() => speakIn('en'));

/** English words and what they gave away before other tongues were looked for. */
const ENGLISH: readonly (readonly [string, string])[] = [
  ...['wheat', 'rye', 'barley', 'oats', 'oat'].map(
    (kind) => [kind, `gluten (${kind === 'oat' ? 'oats' : kind})`] as const,
  ),
  ...[
    'hazelnut',
    'walnut',
    'almond',
    'cashew',
    'pecan',
    'pistachio',
    'Brazil nut',
    'macadamia',
  ].map((kind) => [kind, `tree nuts (${kind})`] as const),
  ...['sesame', 'milk', 'egg', 'soya', 'peanuts', 'sulphites', 'mustard', 'celery', 'lupin'].map(
    (name) => [name, name] as const,
  ),
  ...['fish', 'crustaceans', 'molluscs'].map((name) => [name, name] as const),
  ...['soy', 'soybean'].map((word) => [word, 'soya'] as const),
  ...['sulfites', 'sulphur dioxide', 'sulfur dioxide'].map((word) => [word, 'sulphites'] as const),
  ...['semolina', 'durum'].map((word) => [word, 'gluten (wheat)'] as const),
  ...[
    ['spelt', 'gluten (spelt wheat)'],
    ['spelt wheat', 'gluten (spelt wheat)'],
    ['oatmeal', 'gluten (oats)'],
    ['tahini', 'sesame'],
  ].map(([word, name]) => [word!, name!] as const),
  ...['whey', 'casein'].map((word) => [word, 'milk'] as const),
  ...['anchovy', 'anchovie'].map((word) => [word, 'fish'] as const),
  ...['prawn', 'shrimp'].map((word) => [word, 'crustaceans'] as const),
];

describe('a word that may be parted in print', () => {
  it('is found by its letters alone', () => {
    expect(saidIn('Schalen\u00adfrüchte (Wal\u00adnuss), Voll\u00admilch')).toEqual(
      saidIn('Schalenfrüchte (Walnuss), Vollmilch'),
    );
    expect(setApart('Voll\u00admilch', ['milk'])).toEqual(setApart('Vollmilch', ['milk']));
  });
});

describe('words of packets, whatever tongue stands', () => {
  it('finds every English word that it found, between whatever words', () => {
    const before = fc.constantFrom('', 'toasted ', 'sugar, ', 'a (', '“');
    const after = fc.constantFrom('', 's', ' powder', ', salt', ')', '.');
    fc.assert(
      fc.property(
        fc.constantFrom(...ENGLISH),
        before,
        after,
        fc.boolean(),
        fc.constantFrom('en' as const, 'fr' as const, 'de' as const),
        ([word, name], a, b, large, tongue) => {
          speakIn(tongue, tongue === 'en' ? {} : OTHERS[tongue]);
          const text = `${a}${large ? word.toUpperCase() : word}${/s$/.test(word) && b === 's' ? '' : b}`;
          expect(saidIn(text), text).toContain(name);
        },
      ),
      { numRuns: 500 },
    );
  });

  it.each([
    ['Molkenpulver', ['milk']],
    ['Vollmilchpulver', ['milk']],
    ['gehackte Haselnusskerne', ['tree nuts (hazelnut)']],
    ['Haselnüsse, WALNÜSSE', ['tree nuts (hazelnut)', 'tree nuts (walnut)']],
    ['Weizenmehl, Dinkelmehl', ['gluten (wheat)', 'gluten (spelt wheat)']],
    ['Hartweizengrieß', ['gluten (wheat)']],
    ['Buchweizenmehl', []],
    ['Reis, Maisgrieß', []],
    ['Kokosmilch', []],
    ['Mandelmilch', ['tree nuts (almond)']],
    ['Eier', ['egg']],
    ['Vollei', ['egg']],
    ['Sojalecithin', ['soya']],
    ['milchfrei, laktosefrei', []],
    ['Säuerungsmittel Milchsäure', []],
    ['Natriummetabisulfit', ['sulphites']],
    ['noisettes, œufs', ['tree nuts (hazelnut)', 'egg']],
    ['OEUFS, BLE, CELERI', ['gluten (wheat)', 'egg', 'celery']],
    ['noix', ['tree nuts (walnut)']],
    ['noix de cajou', ['tree nuts (cashew)']],
    ['noix de coco, noix de muscade', []],
    ['caséine, tahini', ['sesame', 'milk']],
    ['lait de coco', []],
    ['lait d’amande', ['tree nuts (almond)']],
    ['farine de blé noir', []],
    ['sans lait', []],
    ['sesame-free, cashew-free, lactose-free', []],
    ['wheat flour\nspelt flour', ['gluten (wheat)', 'gluten (spelt wheat)']],
  ])('%s says %s', (text, said) => {
    for (const tongue of ['en', 'fr', 'de'] as const) {
      speakIn(tongue, tongue === 'en' ? {} : OTHERS[tongue]);
      expect(saidIn(text)).toEqual(said);
    }
  });

  it('sets apart what it finds, and adds the name in the tongue that stands', () => {
    const starred = (text: string, terms: readonly string[]): string =>
      setApart(text, terms)
        .map((run) => (run.apart ? `*${run.text}*` : run.text))
        .join('');
    expect(starred('Weizenmehl', ['wheat'])).toBe('*Weizen*mehl (*wheat*)');
    speakIn('de', de);
    expect(starred('Weizenmehl', ['wheat'])).toBe('*Weizen*mehl');
    expect(starred('Haselnüsse', ['hazelnut'])).toBe('*Haselnüsse*');
    expect(starred('strong wheat flour', ['wheat'])).toBe('strong *wheat* flour (*Weizen*)');
    expect(starred('Molkenpulver', ['milk'])).toBe('Molkenpulver (*Milch*)');
    speakIn('fr', fr);
    expect(starred('noisettes', ['hazelnut'])).toBe('*noisettes*');
    expect(starred('fish sauce', ['fish', 'kiwi'])).toBe('*fish* sauce (*poisson*, *kiwi*)');
  });

  it.each(['fr', 'de'] as const)('names on a label in %s each allergen of our breads', (tongue) => {
    const WORD = {
      wheat: ['blé', 'Weizen'],
      rye: ['seigle', 'Roggen'],
      hazelnut: ['noisettes', 'Haselnüsse'],
    } as const;
    speakIn(tongue, OTHERS[tongue]);
    expect(SHIPPED).toContain('cherry-hazelnut');
    const own = shippedFormula('cherry-hazelnut');
    const { label } = makeLabel({
      formula: {
        ...own,
        flours: own.flours.map((one) => ({ ...one, packet: 'read' as const })),
        fillings: own.fillings.map((one) => ({ ...one, packet: 'read' as const })),
      },
      list: 'eu',
      lookUp: () => ({ madeOf: [] }),
      grams: null,
      cut: false,
      baked: '3',
      days: null,
      lines: [],
      who: null,
    });
    const apart = label!.ingredients.filter((run) => run.apart).map(({ text }) => text);
    for (const word of Object.values(WORD)) expect(apart).toContain(word[tongue === 'fr' ? 0 : 1]);
  });
});
