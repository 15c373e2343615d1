import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import { STARTER } from '../../machines/kitchen/starter.ts';
import { TIMER } from '../../machines/kitchen/timers.ts';
import { taskOf } from '../../machines/tasks.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import { HEADS_UP } from '../core/records/task.ts';
import { calls } from '../core/speech/words/calls.ts';
import { starterWords } from '../core/speech/words/starter.ts';
import { timerSaid } from '../screens/timer-view.ts';
import { several } from '../core/speech/words/several.ts';
import { headsUpOf } from './heads-up-of.ts';
import { fill } from '../core/speech/fill.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Instant, Units } from '../core/units.ts';
import { areSeveral, bakeSaid, sayFor } from '../screens/bake-name.ts';
import { subjectOf } from '../screens/call-subject.ts';
import { potSaid } from '../screens/pot-of.ts';
import { bakeOf, focusOn } from '../screens/focus.ts';
import { listEnded } from '../screens/bench/list-ended.ts';
import { fedFocus, withTarget } from '../screens/bench/measured-view.ts';
import { setAsideSaid } from '../screens/bench/pots/set-aside.ts';
import { lessonDue, type Learner } from '../screens/bench/lesson/lesson-due.ts';
import { smallSaid } from '../screens/bench/small/small-view.ts';
import { benchView } from '../screens/bench/view.ts';
import type { Ways } from '../screens/house.ts';

/**
 * The sentence for a stage just entered: the call's own words where it calls, else what the bench
 * would say of it, caution included, after the end of the list that led there. Null where no bench
 * shows it (a bake that is over). `behind`: it follows the words of another call. `records`: the log, for what
 * the last bake left. With small hands a safe step is said in a child's words, its caution as ever.
 */
export function speakOf(
  { who, stage, ended }: Say,
  kitchen: Kitchen,
  hour: (at: Instant) => string,
  ways: Units & Learner & Partial<Pick<Ways, 'small'>>,
  equipment: Equipment,
  behind = false,
  records: readonly LogRecord[] = [],
): string | null {
  if (who === TIMER) return timerSaid(kitchen, stage);
  if (who === STARTER) {
    const name = starterWords.call.subject;
    const { calls: standing, snoozed } = kitchen.attention.context;
    // Put off, it is known already, its caution with it.
    if (standing.some((call) => call.who === STARTER && call.id in snoozed))
      return fill(calls.reminder, { name });
    return [fill(calls.look, { name }), starterWords.care].join(' ');
  }
  if (taskOf(stage) === HEADS_UP) return headsUpOf(kitchen, who);
  const call = kitchen.attention.context.calls.find((c) => c.who === who && c.stage === stage);
  const subject = subjectOf(stage, potSaid(kitchen, who));
  if (call && subject !== null) {
    const whose = bakeOf(kitchen, who);
    const name =
      whose !== null && areSeveral(kitchen)
        ? fill(several.subject, { name: subject, bake: bakeSaid(kitchen, whose, hour) })
        : subject;
    // One that was put off is known already: what it still waits for is enough.
    const again = call.id in kitchen.attention.context.snoozed;
    if (behind && call.kind !== 'hot') return fill(calls.then, { name });
    return fill(again ? calls.reminder : calls[stage === 'lift' ? 'lid' : call.kind], { name });
  }
  const bake = bakeOf(kitchen, who);
  const found = bake === null ? null : focusOn(kitchen, bake);
  if (found === null || found.who !== who) return null;
  const focus = fedFocus(kitchen, found);
  const plain = benchView(kitchen, focus, hour, null, ways, equipment);
  if (plain.stage !== stage) return null;
  const [lesson] = lessonDue(plain, ways);
  if (lesson) return lesson.spoken;
  const view = withTarget(plain, kitchen, focus, ways, hour, kitchen.now, records);
  const told = smallSaid(ways.small ?? 'off', kitchen, focus, view);
  const words = [ended && listEnded(ended), told].filter(Boolean).join(' ');
  const spoken = sayFor(kitchen, focus.bake.context.id, words, hour);
  return [setAsideSaid(kitchen, who, stage, hour), spoken, view.care].filter(Boolean).join(' ');
}

/** The end of a list whose next act is not what is said now; null where none ended. */
export function speakEnd(
  { who, ended }: Say,
  kitchen: Kitchen,
  hour: (at: Instant) => string,
): string | null {
  const words = ended ? listEnded(ended) : null;
  const bake = bakeOf(kitchen, who);
  return words !== null && bake !== null ? sayFor(kitchen, bake, words, hour) : words;
}
