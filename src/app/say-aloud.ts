import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Quiet } from '../../machines/kitchen/next-call.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Instant, Units } from '../core/units.ts';
import type { Hearing } from './quiet.ts';
import { speakOf } from './speak-of.ts';
import type { Voice } from './voice.ts';

/** Its call is seen and not heard. */
const isSilent = ({ who, stage }: Say, { attention, now }: Kitchen, quiet: Quiet): boolean =>
  attention.context.calls.some(
    (call) => call.who === who && call.stage === stage && quiet(call, now) !== null,
  );

/**
 * Says the one sentence for what happened at once: that of the call that rings and is on show, else of
 * the latest. Without anything that happened the call that rings; nothing where no bench shows any of it.
 */
export function sayAloud(
  voice: Pick<Voice, 'say'>,
  says: readonly Say[],
  hearing: Pick<Hearing, 'ringing' | 'quiet'>,
  kitchen: Kitchen,
  hour: (at: Instant) => string,
  units: Units,
  equipment: Equipment,
): void {
  const ringing = hearing.ringing(kitchen);
  const rings = (say: Say) => say.who === ringing?.who && say.stage === ringing.stage;
  const words = (says.length === 0 && ringing ? [ringing] : says)
    .filter((say) => !isSilent(say, kitchen, hearing.quiet))
    .toSorted((a, b) => Number(rings(a)) - Number(rings(b)))
    .map((say) => speakOf(say, kitchen, hour, units, equipment))
    .findLast((sentence) => sentence !== null);
  if (words) voice.say(words);
}
