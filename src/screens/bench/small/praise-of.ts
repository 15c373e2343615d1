import { guardOf } from '../../../core/small/guard.ts';
import { mayDo } from '../../../core/small/may-do.ts';
import { smallWords, type SmallStep } from '../../../core/small/small-words.ts';
import type { Ways } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { isAnswered } from './face-of.ts';

/**
 * What is said of a step once its press is over; null where hands did nothing (a wait that was cut
 * short), where a grown-up answered, or where the press was theirs alone.
 */
export function praiseOf(small: Ways['small'], view: BenchView): string | null {
  if (small === 'off' || isAnswered(view)) return null;
  const step = (view.task ?? view.stage) as SmallStep;
  if (view.task === null && view.deadline !== null) return null;
  const { presses } = mayDo(guardOf(step, view.task === null ? view.hazard : 'none'), small);
  return presses ? smallWords(small, step).praise : null;
}
