import type { Clock, Settings } from '../../machines/ports.ts';
import { makeLogStore } from '../adapters/store.ts';
import type { Instant } from '../core/units.ts';

/** A rehearsal has a log of its own, so that nothing of it reaches the real one. */
export const RehearsalName = 'loafward-rehearsal';
/** An hour passes in a minute. */
export const REHEARSAL_RATE = 60;

const BEGAN = 'rehearsalBegan';

/** Empties the last rehearsal's log and notes when this one began. */
export async function beginRehearsal(settings: Settings, wall: Clock): Promise<void> {
  await makeLogStore(RehearsalName).rewrite([]);
  await settings.set(BEGAN, wall.now());
}

/** What the fast clock shows now: it goes on from the rehearsal's beginning across reloads. */
export async function rehearsalFrom(settings: Settings, wall: Clock): Promise<Instant> {
  const began = await settings.get(BEGAN).catch(() => null);
  const now = wall.now();
  return typeof began === 'number' ? began + (now - began) * REHEARSAL_RATE : now;
}
