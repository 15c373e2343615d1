import type { EarPhrase } from '../../core/ear/phrases.ts';
import { POKES } from '../../core/ear/phrases.ts';
import type { Deed } from '../../core/records/fact.ts';
import { guardOf, isGated } from '../../core/small/guard.ts';
import type { SmallStep } from '../../core/small/small-words.ts';
import { VERDICT_ACTS } from './acts.ts';
import { isAnswered } from './small/face-of.ts';
import type { BenchView } from './view.ts';

const judged = (which: 'ready' | 'notYet' | 'over'): ReadonlySet<string> =>
  new Set(Object.values(VERDICT_ACTS).map((acts) => acts[which]));
const READY = judged('ready');
const NOT_YET = judged('notYet');

/** With which a bake ends, or is not what it was to be: a hand does it. */
const LEAVES: ReadonlySet<string> = new Set([
  ...judged('over'),
  ...['ended', 'noted', 'standOut', 'loafFlat', 'pokeFlat', 'unmeasured'],
]);

/**
 * Near what is hot, sharp or powered, a child's hands or not: nothing is done by voice there, behind its gate
 * as little as before it.
 */
export const isByHand = ({
  stage,
  task,
  hazard,
}: Pick<BenchView, 'stage' | 'task' | 'hazard'>): boolean =>
  isGated(guardOf((task ?? stage) as SmallStep, hazard));

/**
 * What is said for a press of the bench; undefined where only a hand makes it. *That’s done* is said of work
 * that is done: it cuts no wait short, and answers no question.
 *
 * @param main of the slab, which stands for the act
 */
export function saidFor(view: BenchView, deed: Deed | null, main: boolean): EarPhrase | undefined {
  if (deed?.kind === 'press' && deed.act === 'lidOff') return 'lidOff';
  if (isByHand(view)) return undefined;
  if (deed === null) return 'reading';
  if (deed.kind !== 'press') return undefined;
  const { act } = deed;
  if (READY.has(act)) return 'ready';
  if (NOT_YET.has(act)) return 'notYet';
  // What is weighed line by line is work, and no question.
  if (act === 'answer' && isAnswered(view)) {
    return deed.item === 'dent' ? POKES.find((poke) => poke === deed.value) : undefined;
  }
  const waits = view.task === null && view.deadline !== null && view.call === null;
  return main && !waits && !LEAVES.has(act) ? 'done' : undefined;
}
