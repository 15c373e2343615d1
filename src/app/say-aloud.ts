import { wanted } from '../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Instant, Units } from '../core/units.ts';
import { speakOf } from './speak-of.ts';
import type { Voice } from './voice.ts';

/**
 * Says the one sentence for what happened at once: that of the call that rings and is on show, else of
 * the latest. Without anything that happened the call that rings; nothing where no bench shows any of it.
 */
export function sayAloud(
  voice: Pick<Voice, 'say'>,
  says: readonly Say[],
  kitchen: Kitchen,
  hour: (at: Instant) => string,
  units: Units,
  equipment: Equipment,
): void {
  const { ringing } = wanted(kitchen);
  const rings = (say: Say) => say.who === ringing?.who && say.stage === ringing.stage;
  const words = (says.length === 0 && ringing ? [ringing] : says)
    .toSorted((a, b) => Number(rings(a)) - Number(rings(b)))
    .map((say) => speakOf(say, kitchen, hour, units, equipment))
    .findLast((sentence) => sentence !== null);
  if (words) voice.say(words);
}
