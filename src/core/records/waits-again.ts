import type { Instant } from '../units.ts';
import type { Place, Position } from './position.ts';
import type { Since } from './shift-position.ts';

/** Tasks that were called since are not called yet; what was done stays done. */
const notCalled = (tasks: Place['tasks'], from: Instant): Place['tasks'] =>
  Object.fromEntries(
    Object.entries(tasks).filter(([, { called, done }]) => done !== null || (called ?? 0) <= from),
  );

/**
 * Whoever waited as the clock leapt, and was led on since by that wait's own end and by no hand, waits again
 * as they did. All else stands: where hands led on, time after them is their own.
 *
 * @param before the place at the last fact before the leap
 */
export function waitsAgain(
  position: Position,
  before: Position,
  { from, touched }: Since,
): Position {
  const again = <P extends Place>(who: string, is: P, was: Place | undefined): P => {
    if (was === undefined || touched.has(who)) return is;
    const since = Object.values(is.entered).filter((at) => at > from);
    if (since.length === 0) return { ...is, tasks: notCalled(is.tasks, from) };
    if (!Object.values(was.marks).includes(Math.min(...since))) return is;
    const { stage, marks, entered, byDue, answers, tasks } = was;
    return { ...is, stage, marks, entered, byDue, answers, tasks };
  };
  const all = <P extends Place>(
    is: Readonly<Record<string, P>>,
    was: Readonly<Record<string, P>>,
  ) =>
    Object.fromEntries(
      Object.entries(is).map(([who, place]): [string, P] => [who, again(who, place, was[who])]),
    );
  return {
    ...position,
    bakes: all(position.bakes, before.bakes),
    oven: again('oven', position.oven, before.oven),
    lanes: all(position.lanes, before.lanes),
  };
}
