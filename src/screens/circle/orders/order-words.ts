import type { Circle, OrderLine } from '../../../core/circle/circle.ts';
import { totalsOf, type BreadTotal } from '../../../core/circle/orders.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { orderLine, orderPage } from '../../../core/speech/words/orders.ts';
import { shown } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import type { House } from '../../house.ts';

/** Every bread that an order may name: the Book's, those off its list too. */
export const breadsOf = (house: Pick<House, 'book' | 'formulas'>): readonly Formula[] => {
  const book = house.book().map(({ latest }) => latest);
  // Until the Book has come its list is what there is.
  const listed = house.formulas().flatMap(({ formula }) => (formula ? [formula] : []));
  return book.length > 0 ? book : listed;
};

export const breadName = (house: Pick<House, 'book' | 'formulas'>, bread: string): string => {
  const formula = breadsOf(house).find(({ id }) => id === bread);
  return formula ? showBread(formula.name) : orderLine.gone;
};

export const nameOf = ({ neighbours }: Circle, who: string): string =>
  neighbours.find(({ id }) => id === who)?.name ?? orderPage.nobody;

/** '2 Lane wheat, sliced' and, where one was said, the weight. */
export function lineWords(house: House, { bread, count, grams, cut }: OrderLine): string {
  const name = fill(orderLine.loaves, { count, name: breadName(house, bread) });
  const weight = grams === null ? [] : [showWeight(grams, house.ways())];
  return [name, ...weight, ...(cut ? [orderLine.cutShort] : [])].join(', ');
}

/** Without weight and cut: what somebody has in the fewest words. */
export const shortWords = (house: House, lines: readonly OrderLine[]): string =>
  totalsOf([{ lines }])
    .map(({ bread, count }) => fill(orderLine.loaves, { count, name: breadName(house, bread) }))
    .join(' · ');

/** In fewer still: '13 loaves of 2 breads' where there are more than one. */
export function briefly(house: House, lines: readonly OrderLine[]): string {
  const breads = totalsOf([{ lines }]);
  if (breads.length < 2) return shortWords(house, lines);
  const loaves = breads.reduce((sum, { count }) => sum + count, 0);
  return fill(orderLine.several, { ...shown({ loaves }), count: breads.length });
}

export const linesWords = (house: House, lines: readonly OrderLine[]): string =>
  lines.map((line) => lineWords(house, line)).join(' · ');

/** '5 Lane wheat (2 of 900 g)' */
export function totalWords(house: House, { bread, count, sizes }: BreadTotal): string {
  const name = fill(orderLine.loaves, { count, name: breadName(house, bread) });
  const own = sizes.flatMap(({ grams, count: of }) => {
    const weight = grams === null ? null : showWeight(grams, house.ways());
    return weight === null ? [] : [fill(orderLine.size, { count: of, grams: weight })];
  });
  return own.length === 0 ? name : fill(orderLine.sized, { name, line: own.join(', ') });
}
