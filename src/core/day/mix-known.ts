import { saneCelsius } from '../clock/doubt.ts';
import { wantedDough } from '../heat/wanted.ts';
import type { Recipe } from '../formula/recipe.ts';
import { numberIn } from '../records/reading-number.ts';
import { slotOf, type NumberSlot } from '../records/reading-slot.ts';
import type { Seen } from '../records/seen.ts';
import type { Celsius, Instant } from '../units.ts';

/** Everything that the water of a mix, or of a feed, may depend on. */
export interface MixInput {
  readonly recipe: Recipe;
  /** As told at the bake's start. */
  readonly kitchen: Celsius;
  /** Last entry into each stage. */
  readonly entered: Readonly<Record<string, Instant>>;
  /** Every reading of the bake that stands, in any order. */
  readonly seen: readonly Seen[];
  /** What earlier mixes came out above the balance, K, oldest first. */
  readonly offsets: readonly number[];
}

/** A temperature that a sum stands on; not `read`: it is taken from something near it. */
export interface Known {
  readonly celsius: Celsius;
  readonly read: boolean;
}

/**
 * A cold tap nobody measured, °C: between a winter's main (5) and a summer's (20 and more). Judgement.
 */
export const USUAL_TAP: Celsius = 15;

/** The last reading of a slot from `from` on, up to `until`; null where there is none. */
export const lastRead = (
  { seen }: Pick<MixInput, 'seen'>,
  slot: NumberSlot,
  from: Instant,
  until: Instant = Infinity,
): Celsius | null => {
  const found = seen
    .filter(({ at, reading }) => slotOf(reading) === slot && at >= from && at <= until)
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  return found ? numberIn(found.reading) : null;
};

/** What is known of everything but the water, up to `until`. */
export interface AtMix {
  /** What the dough is to come out at; `read`: as the baker said for this bake. */
  readonly wanted: Known;
  readonly kitchen: Known;
  readonly flour: Known;
  readonly levain: Known;
  readonly tap: Known;
}

const known = (read: Celsius | null, otherwise: Celsius): Known =>
  read === null ? { celsius: otherwise, read: false } : { celsius: read, read: true };

/**
 * Flour and levain are as warm as the kitchen unless they were measured: a bag stands in it, and a
 * ripe levain has stood in it for hours. A levain measured before it was looked at was another.
 */
export function atMix(input: MixInput, until: Instant = Infinity): AtMix {
  const { kitchen: told, entered } = input;
  const looked = entered['levain.look'] ?? entered['levain.ripe'] ?? entered['mix.weigh'] ?? 0;
  const air = lastRead(input, 'kitchenTemperature', 0, until);
  const kitchen = known(air, told);
  const room = saneCelsius(kitchen.celsius).celsius;
  return {
    wanted: known(lastRead(input, 'wantedDough', 0, until), wantedDough(input.recipe.formula)),
    kitchen: { ...kitchen, celsius: room },
    flour: known(lastRead(input, 'flourTemperature', 0, until), room),
    levain: known(lastRead(input, 'levainTemperature', looked, until), room),
    tap: known(lastRead(input, 'water.tap', 0, until), USUAL_TAP),
  };
}
