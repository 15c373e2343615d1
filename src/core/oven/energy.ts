import { MINUTE, type Instant, type Minutes } from '../units.ts';
import type { Calls } from './hands.ts';
import type { Energy } from './lanes.ts';

/** A hot oven that stands empty so much longer than it takes to recover is worth a word, min. Judgement. */
const WORTH: Minutes = 20;

/** Ms from `hotAt` to the last loaf out in which nothing bakes, each time longer than recovery, less that. */
const idle = (turns: readonly Calls[], hotAt: Instant, recovery: number): number => {
  let [bakedUntil, sum] = [hotAt, 0];
  for (const { loadAt, outAt } of turns.toSorted((a, b) => a.loadAt - b.loadAt)) {
    sum += Math.max(0, loadAt - bakedUntil - recovery);
    bakedUntil = Math.max(bakedUntil, outAt);
  }
  return sum;
};

/**
 * What is to be said of the oven's heat: how long it is on from `now`, and where minutes of it are
 * given away: empty while loaves stand out or hands are away, or a last load for few loaves.
 * Source: arithmetic; what is worth a word is judgement.
 */
export function energyOf(
  turns: readonly Calls[],
  { now, hotAt, recovery, pots }: { now: Instant; hotAt: Instant; recovery: Minutes; pots: number },
): Energy {
  const outs = turns.map(({ outAt }) => outAt).toSorted((a, b) => b - a);
  const [last, before] = outs;
  if (last === undefined) return { minutes: 0, key: null, spare: 0 };
  const minutes = Math.max(0, Math.round((last - now) / MINUTE));
  const empty = Math.round(idle(turns, Math.max(now, hotAt), recovery * MINUTE) / MINUTE);
  if (empty >= WORTH) return { minutes, key: 'emptyHot', spare: empty };
  const alone = before === undefined ? 0 : Math.round((last - before) / MINUTE);
  return pots > 1 && alone >= WORTH
    ? { minutes, key: 'lastAlone', spare: alone }
    : { minutes, key: null, spare: 0 };
}
