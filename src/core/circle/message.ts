import { message as words } from '../speech/words/hand-over.ts';
import { fill } from '../speech/fill.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import type { Grams } from '../units.ts';
import type { OrderLine } from './circle.ts';
import type { PickList, PickUp } from './pick-up.ts';

/** How what stands in a message is written here. */
export interface MessageRead {
  /** 'Sat 3 May 2031'. */
  readonly day: string;
  hour(at: MinuteOfDay): string;
  /** The name of a bread, by its formula's id. */
  bread(id: string): string;
  weight(grams: Grams): string;
  /** What a line of an order comes to, as it is written; null: no price is set. */
  price(lines: readonly OrderLine[]): string | null;
}

/**
 * One line of an order: '2 × cherry and hazelnut, 900 g, cut'.
 *
 * @example
 * tellLine({ bread: 'a', count: 2, grams: null, cut: true }, { bread: () => 'lane wheat', weight: String }) // → '2 × lane wheat, sliced'
 */
export function tellLine(
  { bread, count, grams, cut }: OrderLine,
  read: Pick<MessageRead, 'bread' | 'weight'>,
): string {
  const what = fill(words.line, { count, name: read.bread(bread) });
  return [what, ...(grams === null ? [] : [read.weight(grams)]), ...(cut ? [words.cut] : [])].join(
    ', ',
  );
}

/**
 * Plain text for one neighbour: when the bread is fetched, what it is, what is to pay where prices are
 * set and nothing was paid yet, and that a warm loaf's bag stays open. The baker copies it; it goes nowhere by itself.
 */
export function messageTo({ order }: Pick<PickUp, 'order'>, read: MessageRead): string {
  const price = order.paid ? null : read.price(order.lines);
  return [
    order.at === null
      ? fill(words.anyTime, { date: read.day })
      : fill(words.at, { date: read.day, time: read.hour(order.at) }),
    ...order.lines.map((line) => tellLine(line, read)),
    ...(price === null ? [] : [fill(words.toPay, { value: price })]),
    words.warm,
  ].join('\n');
}

/** A name that a hand has broken in two stays in its line. */
const inOneLine = (name: string): string => name.replace(/\s+/g, ' ').trim();

/**
 * The same for all at once, by hour and name. What each has to pay, has paid or must not eat is nobody
 * else's, and is left out.
 */
export function messageToAll({ hours }: PickList, read: MessageRead): string {
  const lines = hours.flatMap(({ at, of }) => [
    '',
    at === null ? words.any : fill(words.hour, { time: read.hour(at) }),
    ...of.map(({ order, name }) =>
      fill(words.whose, {
        name: name === null ? words.nobody : inOneLine(name),
        lines: order.lines.map((line) => tellLine(line, read)).join('; '),
      }),
    ),
  ]);
  return [fill(words.all, { date: read.day }), ...lines, '', words.warm].join('\n');
}
