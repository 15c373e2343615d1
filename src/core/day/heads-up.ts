import { HEADS_UP } from '../records/task.ts';
import { MINUTE, type Instant, type Minutes } from '../units.ts';
import type { WaitInput } from './waits.ts';

/** Time to put down what one holds and to find the mitts. Judgement. */
const AHEAD: Minutes = 1;

/**
 * When the hands are told that a lid or steam has to go: a minute before the call at `end`. Empty for
 * every other wait, and for one that is no longer than that minute.
 *
 * @example
 * headsUp({ stage: 'lidded', now: 0 }, 1200000) // → { hands: 1140000 }
 */
export function headsUp(
  { stage, now }: Pick<WaitInput, 'stage' | 'now'>,
  end: Instant,
): Readonly<Partial<Record<typeof HEADS_UP, Instant>>> {
  const at = end - AHEAD * MINUTE;
  const calls = stage === 'lidded' || stage === 'steaming';
  return calls && at > now ? { [HEADS_UP]: at } : {};
}
