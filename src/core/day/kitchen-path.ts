import { saneCelsius } from '../clock/doubt.ts';
import { temperatureIn, type Path, type Stretch } from '../clock/stretch.ts';
import { HOUR, type Celsius, type Hours, type Instant } from '../units.ts';
import type { WaitInput } from './waits.ts';

/** A change along the way: the rate's factor (salt), the dough's own temperature, or the room's. */
type Turn = { readonly at: Instant } & (
  { readonly factor: number } | { readonly dough: Celsius } | { readonly room: Celsius }
);

const celsiusOf = (
  readings: WaitInput['readings'],
  what: 'doughTemperature' | 'kitchenTemperature',
): { at: Instant; celsius: Celsius } | null => {
  const found = readings[what];
  return found && 'celsius' in found.reading
    ? { at: found.at, celsius: saneCelsius(found.reading.celsius).celsius }
    : null;
};

/**
 * The temperature of a dough or levain from `begin` on, as stretches of Newton's law: at the
 * kitchen's temperature till it is measured, then drifting from what was measured to the room with
 * its body's τ. A room measured before `begin` is the one it begins in. The rate's factor changes
 * at `saltedAt` (null: salted from the start).
 */
export function kitchenPath(
  { kitchen, readings }: Pick<WaitInput, 'kitchen' | 'readings'>,
  begin: Instant,
  hours: Hours,
  rate: { readonly unsalted: number; readonly salted: number; readonly saltedAt: Instant | null },
  tau: Hours,
): Path {
  const dough = celsiusOf(readings, 'doughTemperature');
  const room = celsiusOf(readings, 'kitchenTemperature');
  const turns: Turn[] = [];
  if (rate.saltedAt !== null) turns.push({ at: rate.saltedAt, factor: rate.salted });
  if (dough) turns.push({ at: dough.at, dough: dough.celsius });
  if (room) turns.push({ at: room.at, room: room.celsius });
  turns.sort((a, b) => a.at - b.at);

  const end = begin + hours * HOUR;
  const path: Stretch[] = [];
  let at = begin;
  let toward = saneCelsius(kitchen).celsius;
  let from = toward;
  let factor = rate.saltedAt === null ? rate.salted : rate.unsalted;
  const goTo = (until: Instant) => {
    if (until <= at) return;
    const long = (until - at) / HOUR;
    path.push({ hours: long, from, toward, tau, factor });
    from = temperatureIn({ from, toward, tau }, long);
    at = until;
  };
  for (const turn of turns) {
    goTo(Math.min(turn.at, end));
    if ('factor' in turn) factor = turn.factor;
    if ('dough' in turn) from = turn.dough;
    if ('room' in turn) {
      toward = turn.room;
      if (turn.at <= begin) from = turn.room;
    }
  }
  goTo(end);
  return path;
}
