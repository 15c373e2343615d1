import type { Known } from '../../core/day/mix-known.ts';
import { learnedOffset, usualOffset } from '../../core/heat/learned.ts';
import type { Mixed } from '../../core/records/fact.ts';
import { mixTaught, water } from '../../core/speech/words/water.ts';
import { between } from '../../core/speech/measures.ts';
import { fill } from '../../core/speech/fill.ts';
import { sayApart, sayHeat, showApart, showHeat, wholeDegrees } from '../../core/speech/heats.ts';
import { sayWeight, showWeight } from '../../core/speech/weights.ts';
import type { WaterAdvice } from '../../core/heat/water.ts';
import type { Celsius, Grams, Units } from '../../core/units.ts';

/** How values are written: as digits on the screen, or as words in the air. */
export interface Writer {
  heat(celsius: Celsius): string;
  weight(grams: Grams): string;
  apart(kelvins: number): string;
}

/** From one temperature to another on the screen, the unit once. */
export const showSpan = (least: Celsius, most: Celsius, units: Units): string => {
  const { heat } = onScreen(units);
  return fill(between.to, { least: heat(least).split(' ')[0]!, most: heat(most) });
};

export const onScreen = (units: Units): Writer => ({
  heat: (celsius) => showHeat(wholeDegrees(celsius, units), units),
  weight: (grams) => showWeight(grams, units),
  apart: (kelvins) => showApart(Math.abs(kelvins), units),
});

export const inTheAir = (units: Units): Writer => ({
  heat: (celsius) => sayHeat(wholeDegrees(celsius, units), units),
  weight: (grams) => sayWeight(grams, units),
  apart: (kelvins) => sayApart(Math.abs(kelvins), units),
});

/** Less than this is as reckoned: a probe's own scatter, K. Judgement. */
export const AS_RECKONED = 0.5;

/** What was learned of this kitchen's doughs, where it moves the water; else null. */
export function learnedWords(offsets: readonly number[], write: Writer): string | null {
  const offset = usualOffset(offsets);
  if (Math.abs(offset) < AS_RECKONED) return null;
  return fill(offset > 0 ? water.warmer : water.cooler, { got: write.apart(offset) });
}

/** What the number stands on that nobody measured; null where all was. */
export function guessWords(flour: Known, levain: Known): string | null {
  if (!flour.read) return levain.read ? water.guess.flour : water.guess.both;
  return levain.read ? null : water.guess.levain;
}

/** A mix against what was reckoned of it with all that was learned before, in one sentence, as it is said. */
export function taughtWords(
  { measured, reckoned }: Mixed,
  offsets: readonly number[],
  units: Units,
): string {
  const off = measured - reckoned - learnedOffset(offsets);
  if (Math.abs(off) < AS_RECKONED) return mixTaught.right;
  return fill(off > 0 ? mixTaught.warmer : mixTaught.cooler, { got: inTheAir(units).apart(off) });
}

/** Whether both ends of the doubt are one number on the screen. */
export const isKnown = ({ cool, warm }: WaterAdvice, units: Units): boolean =>
  onScreen(units).heat(cool) === onScreen(units).heat(warm);
