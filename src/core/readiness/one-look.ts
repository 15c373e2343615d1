import { slotOf } from '../records/reading-slot.ts';
import type { Seen } from '../records/seen.ts';
import { MINUTE } from '../units.ts';

/**
 * Minutes within which readings of one kind are one look: a dough says nothing new so soon, and the last
 * word stands. Judgement.
 */
export const ONE_LOOK = 10;

/**
 * Of the readings of one kind within ten minutes only the last: thirty in a minute are no thirty
 * witnesses. A sample in a jar is another witness than its dough. In the order they were given in.
 */
export function oncePerLook(seen: readonly Seen[]): Seen[] {
  const kept = new Set<Seen>();
  const later = new Map<string, number>();
  for (const one of seen.toSorted((a, b) => b.at - a.at)) {
    const jar = one.reading.what === 'rise' && one.reading.in === 'jar';
    const slot = `${slotOf(one.reading)}${jar ? ' in a jar' : ''}`;
    if ((later.get(slot) ?? Infinity) - one.at < ONE_LOOK * MINUTE) continue;
    later.set(slot, one.at);
    kept.add(one);
  }
  return seen.filter((one) => kept.has(one));
}
