import type { Instant } from '../units.ts';
import type { Place, Position, TaskState } from './position.ts';

type Shift = <T extends Instant | null>(at: T) => T;
type Table<T> = Readonly<Record<string, T>>;

const each = <T>(table: Table<T>, change: (value: T) => T): Table<T> =>
  Object.fromEntries(Object.entries(table).map(([name, value]) => [name, change(value)]));

const shiftPlace = <P extends Place>(place: P, to: Shift): P => ({
  ...place,
  marks: each(place.marks, to),
  entered: each(place.entered, to),
  tasks: each(place.tasks, ({ called, done }): TaskState => ({
    called: to(called),
    done: to(done),
  })),
});

/**
 * The same place so much later: every wait has as long to go, every reading is as old as it was.
 * Nothing counts as heard, for a call is named by its instant.
 *
 * @param by milliseconds
 */
export function shiftPosition(position: Position, by: number): Position {
  const to: Shift = <T extends Instant | null>(at: T): T =>
    (at === null ? null : (at as number) + by) as T;
  return {
    // The starter's feeds are told by the day, and stay where they were.
    ...position,
    now: position.now + by,
    bakes: each(position.bakes, (bake) => ({
      ...shiftPlace(bake, to),
      readings: each(bake.readings, (taken) => ({ ...taken, at: to(taken.at) })),
    })),
    oven: shiftPlace(position.oven, to),
    attention: { heard: [], snoozed: {} },
    timers: each(position.timers, (timer) => ({ ...timer, until: to(timer.until) })),
  };
}
