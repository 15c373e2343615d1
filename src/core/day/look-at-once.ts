import { bulkVerdict } from '../readiness/verdict.ts';
import { answersOf, speaksOfRise } from '../records/seen.ts';
import type { Instant } from '../units.ts';
import type { WaitInput } from './waits.ts';

/** Risen so far, %, a dough may be called ready by its other signs. As bulkVerdict has it. */
const ENOUGH = 75;

/**
 * When what was read since a bulk's wait began says that it is to be looked at now, whatever hour was
 * reckoned: it has risen as far as its bread wants, its signs say ready together, or its edge has
 * fallen. Null where they do not. What was seen before the wait was answered by the press that began it.
 */
export function looksAtOnce({
  now,
  seen,
  recipe,
}: Pick<WaitInput, 'now' | 'seen' | 'recipe'>): Instant | null {
  const read = seen
    .filter((one) => speaksOfRise(one) && one.at > now)
    .toSorted((a, b) => a.at - b.at);
  if (read.length === 0) return null;
  const readings = read.map(({ reading }) => reading);
  const answers = answersOf(readings);
  const rises = readings.flatMap((reading) =>
    reading.what === 'rise' && reading.in !== 'jar' ? reading.percent : [],
  );
  const isDone = (rises.at(-1) ?? 0) >= recipe.process.rise;
  const risen = !(Number(answers['rise']) < ENOUGH);
  const isReady = risen && bulkVerdict(answers).say === 'ready';
  const asks = isDone || isReady || answers['edge'] === 'fallen';
  return asks ? Math.max(...read.map(({ at }) => at)) : null;
}
