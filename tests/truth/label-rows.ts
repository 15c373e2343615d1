import { LIST_MEMBERS } from '../../src/core/circle/label/allergen-lists.ts';
import { inOrder } from '../../src/core/circle/label/ingredients.ts';
import { makeLabel } from '../../src/core/circle/label/label.ts';
import type { LabelList } from '../../src/core/circle/circle.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import { shippedFormula } from '../core/formula/shipped.ts';
import { rowsOf, type Row } from './row.ts';

/** How many names each list has. */
function lists(): Row[] {
  const count = (list: LabelList): number => Object.keys(LIST_MEMBERS[list]).length;
  const memory = (source: string) => rowsOf('labels', 'memory', `${source}, from memory`);
  return [
    memory('EU 1169/2011, Annex II')('allergens of the EU', count('eu'), 14),
    memory('FALCPA 2004 and FASTER Act 2021')('allergens of the US', count('us'), 9),
    memory('Food and Drug Regulations, priority allergens')(
      'allergens of Canada',
      count('canada'),
      11,
    ),
  ];
}

const answered = (): Formula => {
  const base = shippedFormula('cherry-hazelnut');
  const read = { packet: 'read' } as const;
  return {
    ...base,
    flours: base.flours.map((flour) => ({ ...flour, ...read })),
    fillings: base.fillings.map((filling) => ({ ...filling, ...read })),
  };
};

/** Our own bread, its places by hand: 85 wheat, 75 water, 16 cherries, 15 rye, 12 hazelnuts, 1.9 salt. */
function order(): Row[] {
  const by = rowsOf('labels', 'memory', 'EU 1169/2011 Art. 18(1), from memory; our own example');
  const names = inOrder(answered(), 'eu', () => null).map(({ name }) => name);
  const place = (name: string): number => names.indexOf(name) + 1;
  return [
    by('place of 85 % wheat flour', place('strong wheat flour'), 1),
    by('place of 75 % water', place('water'), 2),
    by('place of 16 % cherries', place('dried cherries'), 3),
    by('place of 15 % rye flour', place('whole rye flour'), 4),
    by('place of 12 % hazelnuts', place('toasted hazelnuts'), 5),
    by('place of 1.9 % salt', place('salt'), 6),
  ];
}

/** A compound opened in its own order, and names set apart. */
function opened(): Row[] {
  const made = makeLabel({
    formula: answered(),
    list: 'eu',
    lookUp: (name) => ({ madeOf: name === 'dried cherries' ? ['cherries', 'sugar'] : [] }),
    ...{ grams: null, cut: false, baked: '', days: null, lines: [], who: null },
  });
  const runs = made.label?.ingredients ?? [];
  const text = runs.map((run) => run.text).join('');
  const compound = rowsOf(
    'labels',
    'memory',
    'EU 1169/2011 Annex VII E, from memory; our own example',
  );
  const apart = rowsOf(
    'labels',
    'memory',
    'EU 1169/2011 Art. 21(1)(b), from memory; our own example',
  );
  return [
    compound(
      'a compound’s parts behind its name',
      text.indexOf('dried cherries (cherries, sugar)'),
      'strong wheat flour, water, '.length,
    ),
    apart('allergens set apart', runs.filter((run) => run.apart).length, 3),
  ];
}

export const labelRows = (): Row[] => [...lists(), ...order(), ...opened()];
