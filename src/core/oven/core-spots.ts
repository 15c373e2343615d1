import type { Notice } from '../formula/notice.ts';
import { READING_RANGES } from '../records/reading-ranges.ts';
import { celsiusOf, type Celsius } from '../units.ts';
import { boilingPoint, type Metres } from './boiling.ts';
import { coreTarget } from './core-target.ts';

/** A probe errs by so much, K. Judgement. */
const PROBE = 2;
/** Two spots of one crumb's middle are nearer than this; a pocket of filling is not, K. Judgement. */
const POCKET = 6;

/** No loaf is judged with a cooler core; a number that is one in °F was read in °F, °C. Judgement. */
const NEARLY: Celsius = 70;

/** What cores say together: `ready`, `low`, or nothing that counts. */
export interface CoreSays {
  readonly says: 'ready' | 'low' | null;
  /** The core that counts, °C; null where none does. */
  readonly core: Celsius | null;
  /** What is asked in words: another spot, or a number that no crumb has. */
  readonly ask: Notice | null;
}

const isCrumb = (got: Celsius, boils: Celsius): boolean =>
  got >= READING_RANGES.coreTemperature.usual.least && got <= boils + PROBE;

const isBaked = (got: Celsius, boils: Celsius): boolean => got >= NEARLY && isCrumb(got, boils);

/** Read in °F, the keypad has set a point before its third digit: 205 stands as 20.5. */
const POINTED = 10;

/** What a number would be were it read in °F, with or without the keypad's point; null: no baked crumb's. */
const meantBy = (got: Celsius, boils: Celsius): Celsius | null =>
  [celsiusOf(got), celsiusOf(got * POINTED)].find((meant) => isBaked(meant, boils)) ?? null;

/** In an oven no crumb is as cool as a baked one's °F with a point in them. */
const plausible = (got: Celsius, boils: Celsius): boolean =>
  isCrumb(got, boils) && !isBaked(celsiusOf(got * POINTED), boils);

/**
 * A number that no crumb has: `coreFahrenheit` (with what it is in °C) where it was read in °F, else
 * `coreNotCrumb`: the probe is in the crust, in steam, or touches the pot.
 */
const asked = (got: Celsius, boils: Celsius): Notice => {
  const meant = meantBy(got, boils);
  return meant !== null
    ? { key: 'coreFahrenheit', values: { got, meant: Math.round(meant) } }
    : { key: 'coreNotCrumb', values: { got } };
};

/**
 * The core that counts, of one or several spots, °C. Wet crumb is never over boiling, so that what is
 * hotter is asked about and not used. Of the others the coolest counts, since the middle is what warms
 * last. Only in a filled loaf may it lie: a pocket of cheese or wet fruit stays cooler than the crumb
 * round it. There one low spot alone says nothing (`coreSecond`), two that are 6 K apart ask for a
 * third (`coreThird`) and are as good as low, and of three the odd cool one is left out.
 * `ready` from the window's least on, lower up high (`coreTarget`). Never enough alone.
 * Source: judgement; the window is seen in print.
 *
 * @example
 * coreSays([97], { filled: false }) // → { says: 'ready', core: 97, ask: null }
 * coreSays([96, 97, 84], { filled: true }).core // → 96
 * coreSays([205], { filled: false }).ask // → { key: 'coreFahrenheit', values: { got: 205, meant: 96 } }
 * coreSays([20.5], { filled: false }).ask // → { key: 'coreFahrenheit', values: { got: 20.5, meant: 96 } }
 */
export function coreSays(
  spots: readonly Celsius[],
  { filled, height = 0 }: { readonly filled: boolean; readonly height?: Metres },
): CoreSays {
  const boils = boilingPoint(height);
  const odd = spots.find((one) => !plausible(one, boils));
  const ask = odd === undefined ? null : asked(odd, boils);
  const good = spots.filter((one) => plausible(one, boils)).toSorted((a, b) => a - b);
  const [coolest, next] = good;
  if (coolest === undefined) return { says: null, core: null, ask };
  const { least } = coreTarget(height);
  const of = (core: Celsius, why: Notice | null = ask): CoreSays => ({
    says: core >= least ? 'ready' : 'low',
    core,
    ask: why,
  });
  if (!filled || coolest >= least) return of(coolest);
  const spot = (key: string): Notice => ask ?? { key, values: { got: coolest } };
  if (next === undefined) return { says: null, core: null, ask: spot('coreSecond') };
  if (next - coolest < POCKET) return of(coolest);
  return good.length > 2 ? of(next) : of(coolest, spot('coreThird'));
}
