import type { Instant } from '../units.ts';
import type { Place, Position, TaskState } from './position.ts';

type Shift = <T extends Instant | null>(at: T) => T;
type Table<T> = Readonly<Record<string, T>>;

/** What was before, and who had nothing done to them since: only that is moved. */
export interface Since {
  readonly from: Instant;
  /** Names of bakes, lanes and timers, and 'oven', that were touched since. */
  readonly touched: ReadonlySet<string>;
}

const each = <T>(table: Table<T>, change: (value: T) => T): Table<T> =>
  Object.fromEntries(Object.entries(table).map(([name, value]) => [name, change(value)]));

/**
 * The same place so much later: every wait has as long to go, every reading is as old as it was.
 * Nothing counts as heard, for a call is named by its instant. With `since` only what lies before it
 * is moved, and the waits that nothing was done about after it.
 *
 * @param by milliseconds
 */
export function shiftPosition(position: Position, by: number, since?: Since): Position {
  const from = since?.from ?? Infinity;
  const to: Shift = <T extends Instant | null>(at: T): T =>
    (at === null || at > from ? at : (at as number) + by) as T;
  const isOld = (who: string, { stage, entered }: Place): boolean =>
    !since?.touched.has(who) && (entered[stage] ?? 0) <= from;
  const late = (at: Instant): Instant => at + by;
  const shifted = <P extends Place>(who: string, place: P): P => ({
    ...place,
    marks: isOld(who, place) ? each(place.marks, late) : place.marks,
    entered: each(place.entered, to),
    tasks: each(place.tasks, ({ called, done }): TaskState => ({
      called: to(called),
      done: to(done),
    })),
  });
  return {
    // The starter's feeds are told by the day, and stay where they were.
    ...position,
    now: to(position.now),
    bakes: Object.fromEntries(
      Object.entries(position.bakes).map(([id, bake]) => [
        id,
        {
          ...shifted(id, bake),
          readings: each(bake.readings, (taken) => ({ ...taken, at: to(taken.at) })),
        },
      ]),
    ),
    oven: shifted('oven', position.oven),
    lanes: Object.fromEntries(
      Object.entries(position.lanes).map(([who, lane]) => [who, shifted(who, lane)]),
    ),
    attention: { heard: [], snoozed: {} },
    timers: Object.fromEntries(
      Object.entries(position.timers).map(([id, timer]) => [
        id,
        since?.touched.has(id) ? timer : { ...timer, until: late(timer.until) },
      ]),
    ),
  };
}
