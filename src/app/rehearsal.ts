import type { Clock, Settings } from '../../machines/ports.ts';
import { makeRehearsalClock } from '../adapters/rehearsal-clock.ts';
import { makeLogStore } from '../adapters/store.ts';
import { LOGS } from './logs.ts';

/** An hour passes in a minute. */
const RATE = 60;

const BEGAN = 'rehearsalBegan';

/** Empties the last rehearsal's log and notes when this one began. */
export async function beginRehearsal(settings: Settings, wall: Clock): Promise<void> {
  await makeLogStore(LOGS.rehearsal).rewrite([]);
  await settings.set(BEGAN, wall.now());
}

/** The fast clock, going on from the rehearsal's beginning across reloads. */
export async function rehearsalClock(settings: Settings, wall: Clock): Promise<Clock> {
  const began = await settings.get(BEGAN).catch(() => null);
  const now = wall.now();
  const from = typeof began === 'number' ? began + (now - began) * RATE : now;
  return makeRehearsalClock(wall, RATE, from);
}
