import { afterEach, describe, expect, it } from 'vitest';
import { saidIn } from '../../../src/core/circle/label/set-apart.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { writeFormulas } from '../../../src/core/sheets/formula-file.ts';
import { writeCsv } from '../../../src/core/sheets/write-csv.ts';
import { writeSheet } from '../../../src/core/sheets/write-sheet.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { plainPart, showPart, showParts } from '../../../src/core/speech/show-part.ts';
import { tellAllergens } from '../../../src/core/speech/tell-allergens.ts';
import { tellNotice } from '../../../src/core/speech/tell-notice.ts';
import { tellFilling } from '../../../src/core/speech/tell-plan.ts';
import { toldLine } from '../../../src/core/speech/tell-line.ts';
import { inEnglish, speakIn } from '../../../src/core/speech/tongue.ts';
import { englishOf } from '../../../src/core/speech/twins.ts';
import { fillingNames } from '../../../src/core/speech/words/book.ts';
import { flourNames } from '../../../src/core/speech/words/book-parts.ts';
import { fillingKinds } from '../../../src/core/speech/words/filling-kinds.ts';
import { SHIPPED, shippedFormula } from '../formula/shipped.ts';

const OTHERS = { fr, de } as const;
const TONGUES = ['fr', 'de'] as const;
const METRIC = { heat: 'C', weight: 'g' } as const;
/** Of the breads that come with the program, each once. */
const KEPT = [
  ...new Set(
    SHIPPED.map(shippedFormula).flatMap(({ flours, fillings }) =>
      [...flours, ...fillings].map(({ name }) => name),
    ),
  ),
];
const OFFERED = inEnglish(() =>
  [flourNames, fillingNames, fillingKinds].flatMap((names) => Object.values(names)),
);
afterEach(() => speakIn('en'));

describe('a flour or a filling as it is shown', () => {
  it.each([
    ['dried cherries', 'getrocknete Kirschen', 'cerises séchées'],
    ['strong wheat flour', 'starkes Weizenmehl', 'farine de blé de force'],
    ['fresh herbs', 'frische Kräuter', 'herbes fraîches'],
    ['salt', 'Salz', 'sel'],
    // As a page begins with it, or a baker's sheet had it.
    ['Barley flour', 'Gerstenmehl', 'Farine d’orge'],
    ['Toasted sesame', 'Gerösteter Sesam', 'Sésame grillé'],
    // A baker's own, and one that is ours but for a word or a letter.
    ['plum jam', 'plum jam', 'plum jam'],
    ['dried cherries of B', 'dried cherries of B', 'dried cherries of B'],
    ['Dried Cherries', 'Dried Cherries', 'Dried Cherries'],
    ['constructor', 'constructor', 'constructor'],
    ['', '', ''],
  ])('%s', (name, german, french) => {
    expect(showPart(name)).toBe(name);
    speakIn('de', de);
    expect(showPart(name)).toBe(german);
    speakIn('fr', fr);
    expect(showPart(name)).toBe(french);
  });

  it.each(TONGUES)('is every one that comes with the program, each by its own name, in %s', (t) => {
    speakIn(t, OTHERS[t]);
    const shown = KEPT.map(showPart);
    expect(KEPT).toHaveLength(11);
    expect(new Set(shown).size).toBe(KEPT.length);
    expect(shown.filter((name) => KEPT.includes(name))).toEqual([]);
    expect(OFFERED.map(showPart).filter((name) => OFFERED.includes(name))).toEqual([]);
    // Two flours of one name in a cupboard would be taken for one.
    const flours = [...new Set([...KEPT, ...OFFERED])].filter((name) => name.endsWith('flour'));
    expect(new Set(flours.map(showPart)).size).toBe(flours.length);
  });

  it('shows what is shown already as it is', () => {
    for (const tongue of TONGUES) {
      speakIn(tongue, OTHERS[tongue]);
      for (const name of [...KEPT, ...OFFERED].map(showPart)) expect(showPart(name)).toBe(name);
    }
  });

  it('gives the same allergens away as the name that is kept, and no others', () => {
    for (const tongue of TONGUES) {
      speakIn(tongue, OTHERS[tongue]);
      for (const name of [...KEPT, ...OFFERED])
        expect([name, saidIn(showPart(name))]).toEqual([name, saidIn(name)]);
    }
  });

  it('is known in English to whoever says it, for that is what is recorded', () => {
    speakIn('de', de);
    expect(englishOf(showPart('dried cherries'))).toBe('dried cherries');
    expect(englishOf(showPart('Toasted sesame'))).toBe('Toasted sesame');
  });

  it('has no mark where a long word may be parted once it is written into a field', () => {
    speakIn('de', de);
    expect(showPart('whole rye flour')).toContain('\u00ad');
    expect(plainPart('whole rye flour')).toBe('Roggenvollkornmehl');
    expect(showParts(['salt', 'plum jam'])).toBe('Salz, plum jam');
  });
});

it('is told by it in what is weighed, in cautions and where nobody knows a packet', () => {
  const { recipe } = makeRecipe(shippedFormula('seed-oat'), { loaves: 1, piece: 900 });
  const cherry = shippedFormula('cherry-hazelnut');
  const open = cherry.fillings.map(({ packet: _, ...rest }) => ({ ...rest, allergens: [] }));
  const told = () =>
    [
      ...recipe!.lines.filling.map((line) => toldLine(line).name),
      tellNotice(
        { key: 'cheeseStands', values: { filling: 'hard, aged cheese', most: 30 } },
        METRIC,
      ),
      tellNotice({ key: 'binEmpty', values: { flour: 'barley flour' } }, METRIC),
      ...tellFilling({
        ...{ key: 'perishableRetarded', filling: 'fresh herbs', within: 120 },
        wouldDo: [],
      }),
      ...tellAllergens({ ...cherry, fillings: open }),
    ].join('\n');
  const kept = [
    'rolled oats',
    'hard, aged cheese',
    'barley flour',
    'fresh herbs',
    'dried cherries',
  ];
  expect(kept.filter((name) => !told().includes(name))).toEqual([]);
  speakIn('de', de);
  const german = ['Haferflocken', 'harter, gereifter Käse', 'Gerstenmehl', 'frische Kräuter'];
  for (const name of [...german, 'getrocknete Kirschen']) expect(told()).toContain(name);
  expect(kept.filter((name) => told().includes(name))).toEqual([]);
  expect(told()).toContain('Wasser für: Haferflocken');
});

it('is kept as it was in every tongue', () => {
  const kept = (): unknown => {
    const formulas = SHIPPED.map(shippedFormula);
    return [
      writeFormulas(formulas),
      // What a column is called is the tongue's; what stands in it is the formula's.
      formulas.map((formula) =>
        KEPT.filter((name) => writeCsv(writeSheet(formula, 1000)).includes(name)),
      ),
      formulas.map((formula) => makeRecipe(formula, { loaves: 2, piece: formula.piece })),
    ];
  };
  const english = kept();
  for (const tongue of TONGUES) {
    speakIn(tongue, OTHERS[tongue]);
    expect(kept()).toEqual(english);
  }
});
