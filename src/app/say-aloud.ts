import { sounding, type Call } from '../../machines/attention/attention.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Quiet } from '../../machines/kitchen/ringing.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import { twinned } from '../core/speech/tongue.ts';
import type { Instant, Units } from '../core/units.ts';
import type { Ways } from '../screens/house.ts';
import type { Hearing } from './quiet.ts';
import type { Kept, Pressed } from './keeper.ts';
import { speakEnd, speakOf } from './speak-of.ts';
import { speakTwo } from './speak-two.ts';
import { praiseSaid } from './praise-said.ts';
import { turnedTo } from './turned-to.ts';
import type { Learner } from '../screens/bench/lesson/lesson-due.ts';
import type { Voice } from './voice.ts';

/** Calls that begin within this time are told in one go: the words of the first still hang in the air. Judgement. */
const TOGETHER_MS = 6_000;

const isOf =
  ({ who, stage }: Say) =>
  (call: Call): boolean =>
    call.who === who && call.stage === stage;

/** Its call is seen and not heard. */
const isSilent = (say: Say, { attention }: Kitchen, quiet: Quiet, now: Instant): boolean =>
  attention.context.calls.some((call) => isOf(say)(call) && quiet(call, now) !== null);

/** The calls that came with what is to be said, all of it among them: hot first, as they ring. */
const together = (
  says: readonly Say[],
  { attention }: Kitchen,
  quiet: Quiet,
  now: Instant,
): readonly Call[] => {
  const loud = sounding(attention.context).filter((call) => quiet(call, now) === null);
  const came = loud.filter((call) => says.some((say) => isOf(say)(call)));
  const latest = Math.max(...came.map(({ since }) => since));
  return loud.filter((call) => came.includes(call) || Math.abs(latest - call.since) <= TOGETHER_MS);
};

/**
 * Says the one sentence for what happened at once: that of the call that rings and is on show, and of
 * those that came with it, else of the latest. Without anything that happened the call that rings;
 * nothing where no bench shows any of it.
 * The end of a list is never left out: behind the call of another it is told by itself.
 * Where a press turned its bench to an act that was entered before, that one is said; where it did an act
 * and there is nothing to say, the words of that act are over. With small hands what a child did is said first.
 *
 * @param read kitchen time as the clock says it: the kitchen's own stands still from one due to the next, and
 *   the quiet hours end in between
 */
export function sayAloud(
  voice: Pick<Voice, 'say' | 'done'>,
  says: readonly Say[],
  hearing: Pick<Hearing, 'ringing' | 'quiet'>,
  { kitchen, records }: Pick<Kept, 'kitchen' | 'records'>,
  hour: (at: Instant) => string,
  read: Instant,
  ways: Units & Learner & Partial<Pick<Ways, 'small'>>,
  equipment: Equipment,
  pressed?: Pressed,
): void {
  const speak = (say: Say, behind = false): string | null =>
    twinned(() => speakOf(say, kitchen, hour, ways, equipment, behind, records));
  const ends = (told?: Say): readonly string[] =>
    says
      .filter((say) => say !== told)
      .map((say) => twinned(() => speakEnd(say, kitchen, hour)))
      .filter((end) => end !== null);
  const now = Math.max(read, kitchen.now);
  const calls = together(says, kitchen, hearing.quiet, now);
  const two = twinned(() => speakTwo(calls, kitchen, hour));
  if (two !== null) return voice.say([two, ...ends()].join(' '));
  if (calls.length > 1) {
    const all = calls.map((call, i) => speak(call, i > 0)).filter((sentence) => sentence !== null);
    return voice.say([...all, ...ends()].join(' '));
  }
  const ringing = hearing.ringing(kitchen);
  const rings = (say: Say) => say.who === ringing?.who && say.stage === ringing.stage;
  const sentences = (says.length === 0 && ringing && !pressed ? [ringing] : says)
    .filter((say) => !isSilent(say, kitchen, hearing.quiet, now))
    .toSorted((a, b) => Number(rings(a)) - Number(rings(b)))
    .map((say) => ({ say, words: speak(say) }));
  const told = sentences.findLast(({ words }) => words !== null);
  const turned = pressed && !told ? turnedTo(pressed, kitchen) : undefined;
  const praise = pressed ? praiseSaid(pressed, hour, ways, equipment) : null;
  const words = [praise, told?.words ?? (turned && speak(turned)), ...ends(told?.say)];
  if (words.some(Boolean)) voice.say(words.filter(Boolean).join(' '));
  else if (turned !== undefined) voice.done();
}
