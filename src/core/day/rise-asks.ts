import { IN_BOWL } from '../records/in-bowl.ts';
import { speaksOfRise } from '../records/seen.ts';
import type { Task } from '../records/task.ts';
import { MINUTE, type Instant } from '../units.ts';
import type { WaitInput } from './waits.ts';
import { beganIn } from './window.ts';

/**
 * Shares of the time from the minute levain met flour to likely ready at which a rise is asked for: one
 * early reading helps little, the second halves the error, the third halves it again. Judgement, tried
 * on synthetic doughs.
 */
const SHARES = { rise45: 0.45, rise70: 0.7, rise85: 0.85 } as const satisfies Partial<
  Record<Task, number>
>;
/** So soon before hands come anyway nothing is asked, min. Judgement. */
const QUIET = 10;
/** An answer stands for an ask that it moved a little later: within this share of the time. Judgement. */
const STANDS = 0.12;

/**
 * When a bulk's rise is asked for in a wait that ends at `end`: what was asked before the wait began,
 * or before the dough was last seen, is not asked any more. After a "not yet" the looks do the asking.
 */
export function riseAsks(
  input: WaitInput,
  { likely, end }: { readonly likely: Instant | undefined; readonly end: Instant },
): Readonly<Partial<Record<Task, Instant>>> {
  const { stage, now, entered, seen, done, again } = input;
  if (likely === undefined || again || !stage.startsWith('bulk.')) return {};
  const begin = beganIn(entered, IN_BOWL, now);
  const quiet = STANDS * (likely - begin);
  const last = Math.max(now, ...seen.filter(speaksOfRise).map(({ at }) => at + quiet));
  return Object.fromEntries(
    Object.entries(SHARES)
      .map(([task, share]) => [task, Math.round(begin + share * (likely - begin))] as const)
      .filter(([task, at]) => at > last && at <= end - QUIET * MINUTE && !done.includes(task)),
  );
}
