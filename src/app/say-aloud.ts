import { wanted } from '../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Instant, Units } from '../core/units.ts';
import { speakOf } from './speak-of.ts';

/**
 * The one sentence for what happened at once: that of the call that rings and is on show, else of the
 * latest. Empty where no bench shows any of it.
 */
export function aloud(
  says: readonly Say[],
  kitchen: Kitchen,
  hour: (at: Instant) => string,
  units: Units,
  equipment: Equipment,
): string {
  const { ringing } = wanted(kitchen);
  const rings = (say: Say) => say.who === ringing?.who && say.stage === ringing.stage;
  return (
    says
      .toSorted((a, b) => Number(rings(a)) - Number(rings(b)))
      .map((say) => speakOf(say, kitchen, hour, units, equipment))
      .findLast((words) => words !== null) ?? ''
  );
}
