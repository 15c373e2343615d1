import { tongue } from '../speech/tongue.ts';
import type { Circle, Neighbour } from './circle.ts';
import type { DayKey } from './day-key.ts';
import { cleanName, NAME_LETTERS, oneLine } from './name.ts';
import { endedBefore } from './order-changes.ts';
import { drop, type Change, type Put } from './row.ts';

const alike = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** Whether somebody else has that name, large letters or small. */
export const hasName = (
  { neighbours }: Pick<Circle, 'neighbours'>,
  name: string,
  besides: string | null = null,
): boolean => neighbours.some((one) => one.id !== besides && alike(one.name, cleanName(name)));

/**
 * A name as it is kept, told apart from everybody else's by a number.
 *
 * @example
 * ownName({ neighbours: [{ id: 'n', name: 'B', watch: [] }] }, 'b ') // → 'b 2'
 */
export function ownName(
  circle: Pick<Circle, 'neighbours'>,
  typed: string,
  besides: string | null = null,
): string {
  const name = cleanName(typed);
  for (let n = 1; ; n += 1) {
    const number = n === 1 ? '' : ` ${n}`;
    const told = `${oneLine(name, NAME_LETTERS - number.length)}${number}`;
    if (!hasName(circle, told, besides)) return told;
  }
}

/** By name as one looks for it, those of one name by their numbers. */
export const byName = (neighbours: readonly Neighbour[]): readonly Neighbour[] =>
  neighbours.toSorted((a, b) => a.name.localeCompare(b.name, tongue(), { numeric: true }));

/** Somebody's orders from a day on that go with them: neither paid nor handed over. */
export const ordersToCome = (
  { orders }: Circle,
  who: string,
  today: DayKey,
): readonly Circle['orders'][number][] =>
  orders.filter(
    (order) => order.who === who && order.day >= today && !order.paid && order.handed === null,
  );

/**
 * Somebody is gone: their name, their list, what stands for them and what they were still to have. What
 * they had stays, of nobody known. Written so that it cannot be taken back (HouseCircle.erase).
 */
export function erased(circle: Circle, id: string, today: DayKey): Change {
  const puts = [
    drop('neighbours', id),
    ...circle.standing
      .filter(({ who }) => who === id)
      .flatMap((one) => endedBefore(circle, one, today).puts),
    ...ordersToCome(circle, id, today).map((order) => drop('orders', order.id)),
  ];
  const once = new Map(puts.map((put): readonly [string, Put] => [`${put.list}:${put.id}`, put]));
  return { puts: [...once.values()] };
}
