import { SLOT, slotUp } from '../plan/grid.ts';
import { fives, fivesDown, fivesUp } from '../plan/dough-waits.ts';
import type { Feed, Step, Wait } from '../plan/types.ts';
import { MINUTE, type Instant, type Minutes } from '../../units.ts';
import type { AtTouch } from './at-touch.ts';

/** Either side of the likely minute nothing is lost; after the latest it may stand so long. Judgement. */
const FREE: Minutes = 10;
const LATE: Minutes = 30;
/** What was said to be ready may wait so long: a levain, a dough, a loaf on its way to the oven. Judgement. */
const READY: Readonly<Record<string, Minutes>> = {
  'feed levain': 120,
  'salt and water': 60,
  shape: 90,
  spoon: 90,
  'to fridge': 240,
};

/** Minutes from a marker's slot to an instant. */
export const minutesTo = (since: Instant, at: Instant): Minutes =>
  (at - slotUp(since) * SLOT) / MINUTE;

/** One wait where a levain's was a choice of feeds: the one that was fed, or one that holds them all. */
export function plainWait(wait: Step['wait'], choice: string | undefined): Wait {
  if (!('choices' in wait)) return wait;
  const fed: Feed | undefined = wait.choices.find(({ name }) => name === choice);
  if (fed) {
    const { name: _, extra: __, ...rest } = fed;
    return rest;
  }
  const all = wait.choices;
  return {
    min: Math.min(...all.map(({ min }) => min)),
    typicalFrom: Math.min(...all.map(({ typicalFrom }) => typicalFrom)),
    typicalTo: Math.max(...all.map(({ typicalTo }) => typicalTo)),
    max: Math.max(...all.map(({ max }) => max)),
    weightShort: all[0]!.weightShort,
    weightLong: all[0]!.weightLong,
  };
}

/** What is usable of a wait beside its likely end: a levain past its ripest is, for a while. */
const usableAfter = ({ typicalFrom, typicalTo, max }: Wait): Minutes =>
  max - (typicalFrom + typicalTo) / 2;

/** The bench's own window as a wait from its marker on; outward to the slot, never before now. */
function windowWait(wait: Wait, { touch, marks, since }: AtTouch): Wait | null {
  const { earliest, likely, latest } = marks;
  if (earliest === undefined || likely === undefined || latest === undefined) return null;
  const at = (instant: Instant): Minutes => Math.max(0, minutesTo(since, instant));
  const min = fivesDown(at(earliest));
  const typicalFrom = Math.max(min, fives(at(likely)) - FREE);
  const typicalTo = Math.max(typicalFrom, fives(at(likely)) + FREE);
  const late = touch === 'feed levain' ? fivesUp(at(likely) + usableAfter(wait)) : 0;
  const max = Math.max(typicalTo, fivesUp(at(latest)) + LATE, late);
  return { ...wait, min, typicalFrom, typicalTo, max };
}

/**
 * The wait a running bake is in, from `since` on. A cold loaf keeps what its plan had it at: the fridge
 * is elastic, and its window is told in whole hours. `most`: what no baker's wish stretches.
 */
export function liveWait(
  wait: Wait,
  at: AtTouch,
  { hands, most = Infinity }: { readonly hands: Minutes; readonly most?: Minutes },
): Wait {
  if (at.is === 'hands') {
    const longer = (minutes: Minutes): Minutes => minutes + hands;
    const { min, typicalFrom, typicalTo, max } = wait;
    return {
      ...wait,
      min: longer(min),
      typicalFrom: longer(typicalFrom),
      typicalTo: longer(typicalTo),
      max: longer(max),
    };
  }
  if (at.is === 'over') {
    const max = READY[at.touch] ?? LATE;
    return { ...wait, min: 0, typicalFrom: 0, typicalTo: FREE, max: Math.min(max, most) };
  }
  const window = windowWait(wait, at);
  if (window === null) return wait;
  if (at.touch === 'to fridge')
    return { ...window, min: Math.min(window.min, wait.min), max: Math.max(window.max, wait.min) };
  return { ...window, max: Math.min(window.max, Math.max(window.min, most)) };
}

/** A wait that can also be as long as `minutes`: what was announced stands, whatever is reckoned since. */
export function holding(wait: Wait, minutes: Minutes): Wait {
  return {
    ...wait,
    min: Math.min(wait.min, minutes),
    typicalFrom: wait.typicalFrom,
    typicalTo: wait.typicalTo,
    max: Math.max(wait.max, minutes),
  };
}
