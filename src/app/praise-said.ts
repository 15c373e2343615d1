import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Instant, Units } from '../core/units.ts';
import { praiseOf } from '../screens/bench/small/praise-of.ts';
import { benchView, type BenchView } from '../screens/bench/view.ts';
import { bakeOf, focusOn } from '../screens/focus.ts';
import type { Ways } from '../screens/house.ts';
import type { Pressed } from './keeper.ts';

/** What is said of the step that a press has just ended, before the next one's words; null: nothing. */
export function praiseSaid(
  { who, before, after }: Pressed,
  hour: (at: Instant) => string,
  units: Units & Partial<Pick<Ways, 'small'>>,
  equipment: Equipment,
): string | null {
  const small = units.small ?? 'off';
  const bake = small === 'off' ? null : bakeOf(before, who);
  if (bake === null) return null;
  const viewOf = (kitchen: Kitchen): BenchView | null => {
    const focus = focusOn(kitchen, bake);
    return focus && benchView(kitchen, focus, hour, null, units, equipment);
  };
  const [was, is] = [viewOf(before), viewOf(after)];
  if (was?.who !== who) return null;
  const same = is?.who === who && is.stage === was.stage && is.task === was.task;
  return same ? null : praiseOf(small, was);
}
