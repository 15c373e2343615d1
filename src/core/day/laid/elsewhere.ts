import { TAU } from '../../clock/stretch.ts';
import { isWarm } from '../../formula/is-warm.ts';
import { loafTau } from '../../heat/loaf-tau.ts';
import { perishableIn } from '../plan/perishable.ts';
import type { Celsius, Hours, Instant, Minutes } from '../../units.ts';
import { braked, type Window } from './braked.ts';
import type { LiveDay, LiveInput } from './live-input.ts';

/** A place must be cooler or warmer by so much to be worth carrying a bowl, K. Judgement. */
export const WORTH_A_WALK = 2;

/**
 * How slowly what waits takes on another heat, h: levain, dough, loaves of a warm proof; null: it stays
 * where it is. A loaf with a filling that spoils goes nowhere but into the oven.
 */
function slowness({ plan }: LiveDay, batch: string, touch: string): Hours | null {
  const recipe = plan.ask.bakes.find(({ name }) => name === batch)?.recipe;
  if (touch === 'feed levain') return TAU.jar;
  if (touch === 'salt and water') return TAU.bowl;
  if (recipe === undefined || !['shape', 'spoon'].includes(touch)) return null;
  return isWarm(recipe.process) && !perishableIn(recipe) ? loafTau(recipe.piece) : null;
}

export const windowOf = (marks: Readonly<Record<string, Instant>>): Window | null => {
  const { earliest, likely, latest } = marks;
  return earliest === undefined || likely === undefined || latest === undefined
    ? null
    : { earliest, likely, latest };
};

/** The day with other windows for bakes that wait, by batch. */
export function withWindows(day: LiveDay, windows: Readonly<Record<string, Window>>): LiveDay {
  const bakes = { ...day.kitchen.bakes };
  for (const { name, bake } of day.plan.ask.bakes) {
    const window = windows[name];
    const place = bake === null ? undefined : bakes[bake];
    if (window && place) bakes[bake!] = { ...place, marks: { ...place.marks, ...window } };
  }
  return { ...day, kitchen: { ...day.kitchen, bakes } };
}

const bodyOf = (day: LiveDay, batch: string): Celsius => {
  const { kitchen, bakes } = day.plan.ask;
  const bake = bakes.find(({ name }) => name === batch)?.bake;
  const read = bake ? day.kitchen.bakes[bake]?.readings['doughTemperature']?.reading : undefined;
  return read && 'celsius' in read ? read.celsius : kitchen;
};

/** Every levain and dough that waits, stood somewhere else from an instant to another. */
export function elsewhere(
  day: LiveDay,
  { at }: LiveInput,
  {
    from,
    to,
    celsius,
  }: { readonly from: Instant; readonly to: Instant; celsius(batch: string): Celsius },
): { readonly day: LiveDay; readonly works: Minutes; readonly celsius: Celsius } | null {
  const windows: Record<string, Window> = {};
  let [works, place] = [0, 0];
  for (const [batch, { touch, is, marks }] of Object.entries(at)) {
    const tau = slowness(day, batch, touch);
    const window = windowOf(marks);
    if (tau === null || is !== 'wait' || window === null) continue;
    const room = day.plan.ask.kitchen;
    place = celsius(batch);
    if (Math.abs(room - place) < WORTH_A_WALK) continue;
    const body = touch === 'feed levain' ? room : bodyOf(day, batch);
    const moved = braked(window, { now: day.now, from, to, place, room, body, tau });
    windows[batch] = moved;
    works = Math.max(works, moved.works);
  }
  return Object.keys(windows).length === 0
    ? null
    : { day: withWindows(day, windows), works, celsius: place };
}
