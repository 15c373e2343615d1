import type { Call } from '../../machines/attention/attention.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { ringingOf, type Quiet } from '../../machines/kitchen/ringing.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Instant } from '../core/units.ts';

type Equip = (change: Partial<Equipment>) => void;

/** What of all that calls is heard, by the kitchen's quiet hours. */
export interface Hearing {
  readonly quiet: Quiet;
  /** The call that is on show: one that is heard before one that is only seen. */
  ringing(kitchen: Kitchen): Call | null;
  /** `equip` that has changed hours kept at once, and then calls back. */
  keptBy(equip: Equip, then: () => void): Equip;
}

export async function makeHearing(
  hours: Equipment['quiet'],
  wallOf: (at: Instant) => Instant,
): Promise<Hearing> {
  let quietBy: Quiet = () => null;
  const quiet: Quiet = (call, at) => quietBy(call, at);
  /** Where it cannot be loaded every call is heard; without any hours nothing is. */
  const keep = async (wanted: Equipment['quiet']): Promise<void> => {
    quietBy = () => null;
    const found = wanted && (await import('./quiet-until.ts').catch(() => null));
    if (wanted && found) quietBy = found.quietUntil(wanted, wallOf);
  };
  await keep(hours);
  return {
    quiet,
    ringing: (kitchen) => ringingOf(kitchen, quiet),
    keptBy: (equip, then) => (change) => {
      equip(change);
      if (change.quiet !== undefined) void keep(change.quiet).then(then);
    },
  };
}
