import { bulkVerdict } from '../readiness/verdict.ts';
import { answersOf, speaksOfRise } from '../records/seen.ts';
import type { Instant } from '../units.ts';
import type { WaitInput } from './waits.ts';

/** Risen so far, %, a dough may be called ready by its other signs. As bulkVerdict has it. */
const ENOUGH = 75;

/**
 * When what was read since a bulk's wait began says that it is to be looked at now, whatever hour was
 * reckoned: its signs say ready together, or its edge has fallen. Null where they do not. What was seen
 * before the wait was answered by the press that began it.
 */
export function looksAtOnce({ now, seen }: Pick<WaitInput, 'now' | 'seen'>): Instant | null {
  const read = seen.filter((one) => speaksOfRise(one) && one.at > now);
  if (read.length === 0) return null;
  const answers = answersOf(read.toSorted((a, b) => a.at - b.at).map(({ reading }) => reading));
  const risen = !(Number(answers['rise']) < ENOUGH);
  const isReady = risen && bulkVerdict(answers).say === 'ready';
  const asks = isReady || answers['edge'] === 'fallen';
  return asks ? Math.max(...read.map(({ at }) => at)) : null;
}
