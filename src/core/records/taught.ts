import type { Vessel } from '../formula/formula.ts';
import type { WeighIn } from '../oven/bake-loss-learned.ts';
import type { CoreReading } from '../oven/fit-alpha.ts';
import type { Celsius, Grams, Minutes } from '../units.ts';

/** What one look at a loaf's core teaches of the next ones in the same kind of vessel. */
export type TaughtCore = CoreReading & { readonly vessel: Vessel };

/** What one cool loaf on the scale teaches. */
export type TaughtLoss = WeighIn & { readonly vessel: Vessel };

/**
 * A core that was measured in the oven: of what loaf (°C as it went in, g of dough), after how many
 * minutes there, how high above the sea (m), and how many minutes more it was given; null: none foretold.
 */
export interface Cored {
  readonly start: Celsius;
  readonly grams: Grams;
  readonly minutes: Minutes;
  readonly height: number;
  readonly vessel: Vessel;
  readonly filled: boolean;
  readonly more: Minutes | null;
}

/** A cool loaf on the scale: the dough that it was, and what it baked in. */
export interface Weighed {
  readonly dough: Grams;
  readonly vessel: Vessel;
}
