import { metaOf } from '../../../machines/kitchen/stage-of.ts';
import { WARM_PLACE } from '../../core/day/warm-place.ts';
import { doubts, doubtsLines } from '../../core/speech/words/doubts.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { Facts } from '../../core/speech/facts.ts';
import { fill, type Values } from '../../core/speech/fill.ts';
import type { Focus } from '../focus.ts';

/** What a warm place is told for must still be so far away. */
const SOON = 15 * MINUTE;

/** When a sluggish dough would be ready in a warm place, as a sentence; null where that is no matter. */
export function warmPlaceWords(
  { machine }: Focus,
  now: Instant,
  hour: (at: Instant) => string,
  write: (facts: Facts) => Values,
): string | null {
  const { warmed } = machine.context.marks;
  if (warmed === undefined || warmed - now < SOON) return null;
  return fill(doubtsLines.warmPlace, write({ celsius: WARM_PLACE, time: hour(warmed) }));
}

/**
 * The detail of a wait: when to look, and then what matters most about its window: why it is rough, that
 * all of it lies before that look, else what is usual. Where a warm place would help, that alone: the
 * look's hour stands above it.
 */
export const waitDetail = (detail: string, { machine }: Focus, warm: string | null): string => {
  const doubt = 'doubt' in machine.context ? machine.context.doubt : undefined;
  if (metaOf(machine).waits === undefined) return detail;
  const [first = ''] = detail.split(/(?<=\.) /);
  if (doubt && doubt !== 'coldProof') return `${first} ${doubts[doubt]}`;
  const { latest, look } = machine.context.marks;
  const early = doubt && latest !== undefined && look !== undefined && latest <= look;
  return early ? `${first} ${doubtsLines.readyByThen}` : (warm ?? detail);
};
