import { afterEach, expect, it } from 'vitest';
import { costOf } from '../../../src/core/circle/cost.ts';
import { shoppingFor } from '../../../src/core/circle/shopping.ts';
import { usesOf } from '../../../src/core/circle/uses.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { costView } from '../../../src/screens/circle/cupboard/cost-view.ts';
import { buyView, listText, notesOf } from '../../../src/screens/circle/cupboard/shopping-view.ts';
import { ingredient, recipeOf } from '../../core/circle/support.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const WAYS = { currency: 'EUR', times: null } as const;
const PRICED = [
  ingredient('strong wheat flour', { pack: { grams: 1000, cost: 1.5, usable: 1 } }),
  ingredient('plum jam'),
];
const recipe = recipeOf('cherry-hazelnut', 2);
afterEach(() => speakIn('en'));

const shopping = () => {
  const there = (id: string) =>
    id === 'salt' ? { grams: 900, why: null } : ({ grams: null, why: 'uncounted' } as const);
  const lines = shoppingFor(usesOf(recipe), PRICED, there as never);
  const list = { lines, loaves: 2, begun: 0, left: 0 };
  const views = lines.map((line) => buyView(line, null, METRIC));
  return { lines, views, notes: notesOf(list, () => false) };
};
const cost = () => costOf(recipe, PRICED, { besides: null });
const plain = (text: string): string => text.replaceAll('\u00ad', '');

it.each([
  ['de', de, 'Getrocknete Kirschen', 'Starkes Weizenmehl', 'Salz'],
  ['fr', fr, 'Cerises séchées', 'Farine de blé de force', 'sel'],
] as const)(
  'what is bought and what it costs is told in %s and kept in English',
  (tongue, words, cherries, wheat, salt) => {
    const [bought, costs] = [shopping().lines, cost()];
    expect(shopping().views.map(({ name }) => name)).toContain('Dried cherries');
    speakIn(tongue, words);
    const { lines, views, notes } = shopping();
    expect(lines).toEqual(bought);
    expect(cost()).toEqual(costs);
    const names = views.map(({ name }) => name);
    expect(names).toContain(cherries);
    expect(names).toContain(wheat);
    expect(listText('', views)).toContain(`- ${cherries}`);
    expect(notes.join(' ')).toContain(salt);
    const { rows, missing } = costView(cost(), WAYS, METRIC);
    expect(rows.map(({ what }) => what)).toContain(cherries);
    expect(plain(missing!)).toContain(salt);
    const shown = [listText('', views), ...notes, ...rows.map(({ what }) => what), missing!];
    expect(shown.join('\n')).not.toMatch(/flour|cherries|hazelnuts|salt/i);
  },
);
