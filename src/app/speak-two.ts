import type { Call } from '../../machines/attention/attention.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { aloud } from '../core/speech/aloud.ts';
import { calls } from '../core/speech/words/calls.ts';
import { several } from '../core/speech/words/several.ts';
import { fill } from '../core/speech/fill.ts';
import { englishOf } from '../core/speech/twins.ts';
import { wordsIn } from '../core/speech/pace.ts';
import type { Instant } from '../core/units.ts';
import { areSeveral, bakeSaid } from '../screens/bake-name.ts';
import { subjectOf } from '../screens/call-subject.ts';
import { bakeOf } from '../screens/focus.ts';

/** No sentence that is said has more words. */
const MOST_WORDS = 12;
/** A thing, and no deed: it can be looked at. */
const THING = /^the (?!.*\b(goes|come|comes)\b)/;

/**
 * Two calls that came together in one sentence, the one that rings first; null where each is told by itself:
 * what is hot has its caution behind it, what was put off is told otherwise, and one long sentence is
 * harder to hold in mind than two short ones.
 *
 * @example 'It’s time: wet the bench, and look at the levain.'
 */
export function speakTwo(
  all: readonly Call[],
  kitchen: Kitchen,
  hour: (at: Instant) => string,
): string | null {
  const [first, second, third] = all;
  if (!first || !second || third) return null;
  const { snoozed } = kitchen.attention.context;
  if (all.some(({ id, kind }) => kind === 'hot' || id in snoozed)) return null;
  const named = (call: Call) => {
    const subject = subjectOf(call.stage);
    const bake = bakeOf(kitchen, call.who);
    if (subject === null || bake === null) return null;
    return { subject, bake, said: bakeSaid(kitchen, bake, hour) };
  };
  const [one, other] = [named(first), named(second)];
  if (one === null || other === null) return null;
  const whole = ({ subject, said }: typeof one): string =>
    areSeveral(kitchen) ? fill(several.subject, { name: subject, bake: said }) : subject;
  const name = ((): string | null => {
    const isSame = first.kind === second.kind;
    if (isSame && one.subject === other.subject)
      return one.bake === other.bake
        ? null
        : fill(several.subject, {
            name: one.subject,
            bake: fill(calls.both, { bake: one.said, other: other.said }),
          });
    if (isSame) return fill(calls.also, { name: whole(one), other: whole(other) });
    return second.kind === 'look' && THING.test(englishOf(other.subject) ?? other.subject)
      ? fill(calls.alsoLook, { name: whole(one), other: whole(other) })
      : null;
  })();
  if (name === null) return null;
  const sentence = fill(calls[first.kind], { name });
  return wordsIn(aloud(sentence)).length <= MOST_WORDS ? sentence : null;
}
