import type { Celsius, Minutes } from '../units.ts';
import { minutesToCore } from './core-heat.ts';
import { coreForecast, fitAlpha, type CoreReading } from './fit-alpha.ts';
import { COLOURING, MOST_CHANGE } from './fit-bake.ts';

/**
 * Bounds of the minutes to the next look at a core that was low: sooner the open door costs more heat
 * than the look is worth, later a crust is black before anyone sees it. Judgement.
 */
const LEAST: Minutes = 3;
const MOST: Minutes = 10;

/** What a bake takes at most by its core: a third over what is printed, as by its mass. */
const longest = ({ lidded, open }: Printed): Minutes => {
  const colouring = Math.min(COLOURING, open);
  return (lidded + open - colouring) * (1 + MOST_CHANGE) + colouring;
};

/** Minutes of a bake as its recipe has them, fitted to the piece. */
interface Printed {
  readonly lidded: Minutes;
  readonly open: Minutes;
}

/** From the core that was read on, by what it and the past ones tell of this kitchen. */
const toTarget = (
  reading: CoreReading,
  past: readonly CoreReading[],
  target: Celsius,
): Minutes | null => {
  const belief = fitAlpha([...past, reading]);
  const there = coreForecast(belief, reading, target);
  const here = minutesToCore(reading, reading.core, belief.alpha);
  return there === null || here === null ? null : there.likely - here;
};

/**
 * Whole minutes until a loaf whose core was low is to be looked at and measured again: until it is
 * likely at `target` °C, by what this core and `past` ones of this kitchen say of its diffusivity, held
 * within 3 to 10 minutes and within the bake's own minutes and 35 %. It says when to look, and never
 * that a loaf is done.
 * No answer, null: a core that is there already, one so cool that one term says nothing of it, a bake so long that its oven is not what it was, a
 * target that boiling water does not reach.
 * Source: `minutesToCore`; 35 % as `bakeFactor`; the other bounds are judgement.
 *
 * @example
 * moreMinutes({ start: 4, grams: 900, minutes: 38, core: 88 }, [], 93, { lidded: 18, open: 20 }) // → 7
 * moreMinutes({ start: 4, grams: 900, minutes: 38, core: 94 }, [], 93, { lidded: 18, open: 20 }) // → null
 */
export function moreMinutes(
  reading: CoreReading,
  past: readonly CoreReading[],
  target: Celsius,
  printed: Printed,
): Minutes | null {
  const most = Math.min(MOST, Math.floor(longest(printed) - reading.minutes));
  if (reading.core >= target || most < LEAST) return null;
  const more = toTarget(reading, past, target);
  return more === null ? null : Math.min(most, Math.max(LEAST, Math.round(more)));
}
