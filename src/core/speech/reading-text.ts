import type { Reading } from '../records/fact.ts';
import { READING_RANGES } from '../records/reading-ranges.ts';
import { numberIn } from '../records/reading-number.ts';
import { slotOf, type NumberSlot } from '../records/reading-slot.ts';
import type { Option } from './words.ts';
import { readingPictures } from './words/readings.ts';
import { fill } from './fill.ts';
import { between } from './measures.ts';
import { sayHeat, showHeat } from './heats.ts';
import { keyedHeat, keyedWeight, type Keyed } from './keyed.ts';
import { sayBelow, showNumber } from './numbers.ts';
import { sayWeight, showWeight } from './weights.ts';
import type { Units } from '../units.ts';

const wordFor = (tiles: readonly Option[], value: string): string =>
  tiles.find((tile) => tile.value === value)?.label ?? value;

/** The answers of a sign in words; null for a number. */
const signWords = (reading: Reading): string | null => {
  const { edge, bubbles, growth, poke, crust } = readingPictures;
  switch (reading.what) {
    case 'edge':
      return `${wordFor(edge.tiles, reading.edge)} · ${wordFor(bubbles.tiles, reading.bubbles)}`;
    case 'growth':
      return wordFor(growth.tiles, reading.grown);
    case 'poke':
      return wordFor(poke.tiles, reading.dent);
    case 'crust':
      return wordFor(crust.tiles, reading.colour);
    default:
      return null;
  }
};

/** A number of a slot as it is shown, in the baker's units. */
export function showAmount(slot: NumberSlot, number: number, units: Units): string {
  const { unit } = READING_RANGES[slot];
  const text =
    unit === '°C'
      ? showHeat(number, units)
      : unit === 'g'
        ? showWeight(number, units)
        : `${showNumber(number)} %`;
  return text.replace('-', '−');
}

/**
 * What a reading says, as it is shown.
 *
 * @example showReading({ what: 'weight', grams: 912, of: 'piece' }, units) // '912 g'
 * @example showReading({ what: 'edge', edge: 'domed', bubbles: 'many' }, units) // 'Domed · Many'
 */
export function showReading(reading: Reading, units: Units): string {
  const number = numberIn(reading);
  return number === null
    ? (signWords(reading) ?? '')
    : showAmount(slotOf(reading) as NumberSlot, number, units);
}

/** What a reading says, as it is said: a number with its unit. */
export function sayReading(reading: Reading, units: Units): string {
  const number = numberIn(reading);
  if (number === null) return (signWords(reading) ?? '').replace(' · ', ', ');
  const { unit } = READING_RANGES[slotOf(reading) as NumberSlot];
  if (unit === '°C') return sayHeat(number, units);
  if (unit === 'g') return sayWeight(number, units);
  return sayBelow(number, 'percent');
}

/** A keypad for a slot: what is usual, or what is possible, in the baker's unit. */
export function keysFor(slot: NumberSlot, which: 'usual' | 'possible', units: Units): Keyed {
  const { unit, [which]: span } = READING_RANGES[slot];
  const keys =
    unit === '°C'
      ? keyedHeat(span, units)
      : unit === 'g'
        ? keyedWeight(span, units)
        : {
            unit,
            ...span,
            range: fill(between.to, { least: span.least, most: `${span.most} %` }),
            record: (n: number) => n,
          };
  return { ...keys, range: keys.range.replaceAll('-', '−') };
}
