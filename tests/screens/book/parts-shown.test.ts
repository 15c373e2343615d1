import { afterEach, describe, expect, it } from 'vitest';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import {
  fillingLike,
  KNOWN_FILLINGS,
  knownFilling,
} from '../../../src/screens/book/known-fillings.ts';
import { benchView } from '../../../src/screens/book/share/sheet-view.ts';
import { swapOffers } from '../../../src/screens/book/swap-offers.ts';
import { lineName } from '../../../src/screens/book/words.ts';
import { shippedFormula } from '../../core/formula/shipped.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const cherry = shippedFormula('cherry-hazelnut');
afterEach(() => speakIn('en'));

describe('the parts of a bread in another tongue', () => {
  it('begin their lines in it', () => {
    const names = () =>
      (['flour:wheat', 'flour:rye', 'filling:cherry', 'filling:hazelnut'] as const).map((key) =>
        lineName(cherry, key).replaceAll('\u00ad', ''),
      );
    expect(names()[2]).toBe('Dried cherries');
    speakIn('de', de);
    expect(names()).toEqual([
      'Starkes Weizenmehl',
      'Roggenvollkornmehl',
      'Getrocknete Kirschen',
      'Geröstete Haselnüsse',
    ]);
    speakIn('fr', fr);
    expect(names()[2]).toBe('Cerises séchées');
  });

  it('are added and swapped by the names that are kept, shown by their own', () => {
    const kept = () => [
      KNOWN_FILLINGS.map(knownFilling),
      swapOffers(cherry, 'hazelnut', 3000, METRIC).map(({ formula }) => formula),
      swapOffers(
        { ...cherry, fillings: [{ ...knownFilling('olive'), pct: 15 }] },
        'olive',
        3000,
        METRIC,
      ).map(({ formula }) => formula),
      swapOffers(
        {
          ...shippedFormula('lane-today'),
          fillings: [{ ...fillingLike('freshHerbs', 'fresh herbs'), pct: 4 }],
        },
        'fresh herbs',
        3000,
        METRIC,
      ).map(({ formula }) => formula),
    ];
    const english = kept();
    expect(english.map((all) => all.length)).toEqual([10, 1, 1, 1]);
    for (const [tongue, words, label] of [
      ['de', de, 'Stattdessen Walnüsse'],
      ['fr', fr, 'Plutôt : noix'],
    ] as const) {
      speakIn(tongue, words);
      expect(kept()).toEqual(english);
      const [offer] = swapOffers(cherry, 'hazelnut', 3000, METRIC);
      expect(offer!.label.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ')).toBe(label);
    }
  });

  it('are on the sheet for the bench by it, what spoils too', () => {
    const herbs = { ...fillingLike('freshHerbs', 'fresh herbs'), id: 'herbs', pct: 4 };
    const formula: Formula = { ...shippedFormula('lane-today'), fillings: [herbs] };
    const { recipe } = makeRecipe(formula, { loaves: 1, piece: formula.piece });
    speakIn('de', de);
    const { lists, notes } = benchView(recipe!, METRIC, '3. Mai');
    expect(lists.flatMap(({ lines }) => lines.map(({ what }) => what))).toEqual(
      expect.arrayContaining(['starkes Weizenmehl', 'Vollkornmehl aus Weizen', 'frische Kräuter']),
    );
    expect(notes.some((note) => note.startsWith('frische Kräuter'))).toBe(true);
    expect(notes.join(' ')).not.toContain('fresh herbs');
  });
});
