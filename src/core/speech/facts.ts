import type { Values } from './fill.ts';
import { sayHeat, sayHeats, showHeat, showHeats } from './heats.ts';
import { sayLength, showLength } from './lengths.ts';
import { nameOf } from './measures.ts';
import { sayNumber, showNumber } from './numbers.ts';
import { sayTime } from './times.ts';
import { sayWeight, showWeight } from './weights.ts';
import type { Celsius, Grams, Minutes, Units } from '../units.ts';

/** Facts that read alike in every unit. */
export interface PlainFacts {
  readonly minutes?: Minutes;
  /** As the baker's clock shows it: '15:05' or '3:05 pm'. */
  readonly time?: string;
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

/** Facts that are told in the baker's own units. */
export interface MeasuredFacts {
  readonly grams?: Grams;
  readonly keepBack?: Grams;
  readonly celsius?: Celsius;
  /** From where on a core is hot enough, as high as this kitchen lies. */
  readonly crumbHeat?: Celsius;
}

/**
 * What a sentence may be about, as numbers. The same facts fill what is shown and what is said:
 * `shown` gives digits, `said` gives words. Every value brings its unit with it, and no template
 * writes one.
 */
export interface Facts extends PlainFacts, MeasuredFacts {}

type Write<T> = (value: T, units: Units) => string;
type Writers = { readonly [K in keyof Facts]-?: Write<NonNullable<Facts[K]>> };

const asIs: Write<string> = (s) => s;
const count: Write<number> = (n) => sayNumber(n, null);
const digits: Write<number> = (n) => showNumber(n);

const onScreen: Writers = {
  grams: showWeight,
  keepBack: showWeight,
  celsius: showHeat,
  crumbHeat: showHeat,
  minutes: showLength,
  time: asIs,
  until: asIs,
  loaves: (n) => `${showNumber(n)} ${nameOf('loaf', n)}`,
  load: digits,
  loads: digits,
  touch: digits,
  touches: digits,
  loaf: asIs,
  pot: asIs,
  name: asIs,
};

const inTheAir: Writers = {
  grams: sayWeight,
  keepBack: sayWeight,
  celsius: sayHeat,
  crumbHeat: sayHeat,
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

/** For facts without a measure; what would need the unit does not compile without it. */
const NONE: Units = { heat: 'C', weight: 'g' };

const write = (writers: Writers, facts: Facts, units: Units): Values =>
  Object.fromEntries(
    Object.entries(facts)
      .filter(([, value]) => value !== undefined)
      .map(([name, value]) => [
        name,
        (writers[name as keyof Facts] as Write<unknown>)(value, units),
      ]),
  );

type Unmeasured = PlainFacts & { readonly [K in keyof MeasuredFacts]?: never };

/** Facts as digits, for the screen; with units, the trade's own heats (`heats.ts`) as well. */
export function shown(facts: Unmeasured): Values;
export function shown(facts: Facts, units: Units): Values;
export function shown(facts: Facts, units?: Units): Values {
  return { ...(units && showHeats(units)), ...write(onScreen, facts, units ?? NONE) };
}

/** Facts as words, for the voice and its caption. */
export function said(facts: Unmeasured): Values;
export function said(facts: Facts, units: Units): Values;
export function said(facts: Facts, units?: Units): Values {
  return { ...(units && sayHeats(units)), ...write(inTheAir, facts, units ?? NONE) };
}
