import type { Values } from './fill.ts';
import { sayLength, showLength } from './lengths.ts';
import { sayNumber, sayTime, showNumber } from './numbers.ts';
import type { Celsius, Grams, Minutes } from '../units.ts';

/**
 * What a sentence may be about, as numbers. The same facts fill what is shown and what is said:
 * `shown` gives digits, `said` gives words with the unit. A template that is shown writes the unit
 * of grams and °C itself; lengths and loaves bring theirs, since it changes with the number.
 */
export interface Facts {
  readonly grams?: Grams;
  readonly keepBack?: Grams;
  readonly celsius?: Celsius;
  readonly minutes?: Minutes;
  /** 'HH:MM' */
  readonly time?: string;
  /** 'HH:MM' */
  readonly until?: string;
  readonly loaves?: number;
  readonly load?: number;
  readonly loads?: number;
  readonly touch?: number;
  readonly touches?: number;
  readonly loaf?: string;
  readonly pot?: string;
  readonly name?: string;
}

type Write<T> = (value: T) => string;
type Writers = { readonly [K in keyof Facts]-?: Write<NonNullable<Facts[K]>> };

const asIs: Write<string> = (s) => s;
const count: Write<number> = (n) => sayNumber(n, null);

const onScreen: Writers = {
  grams: showNumber,
  keepBack: showNumber,
  celsius: showNumber,
  minutes: showLength,
  time: asIs,
  until: asIs,
  loaves: (n) => `${showNumber(n)} ${n === 1 ? 'loaf' : 'loaves'}`,
  load: showNumber,
  loads: showNumber,
  touch: showNumber,
  touches: showNumber,
  loaf: asIs,
  pot: asIs,
  name: asIs,
};

const inTheAir: Writers = {
  grams: (n) => sayNumber(n, 'gram'),
  keepBack: (n) => sayNumber(n, 'gram'),
  celsius: (n) => sayNumber(n, 'degree'),
  minutes: sayLength,
  time: sayTime,
  until: sayTime,
  loaves: (n) => sayNumber(n, 'loaf'),
  load: count,
  loads: count,
  touch: count,
  touches: count,
  loaf: asIs,
  pot: asIs,
  name: asIs,
};

const write = (writers: Writers, facts: Facts): Values =>
  Object.fromEntries(
    Object.entries(facts)
      .filter(([, value]) => value !== undefined)
      .map(([name, value]) => [name, (writers[name as keyof Facts] as Write<unknown>)(value)]),
  );

/** Facts as digits, for the screen. */
export const shown = (facts: Facts): Values => write(onScreen, facts);

/** Facts as words, for the voice and its caption. */
export const said = (facts: Facts): Values => write(inTheAir, facts);
