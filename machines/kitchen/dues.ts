import type { Instant } from '../../src/core/units.ts';
import { snoozeEnds, sounding, type Call } from '../attention/attention.ts';
import type { BakeSnapshot, Kitchen, LaneSnapshot, OvenSnapshot } from './kitchen.ts';
import { openTasks } from './open-tasks.ts';
import { LEFT_ON, leftOnDue } from './oven-left-on.ts';
import { metaOf } from './stage-of.ts';
import { STARTER, starterDue } from './starter.ts';
import { TIMER, timerDues } from './timers.ts';

/** The instant at which a machine's wait runs out, a task of it falls due, or a timer ends. */
export interface Due {
  readonly who: string;
  readonly at: Instant;
  /** The task of a wait that goes on. */
  readonly task?: string;
  /** For `who` timer. */
  readonly timer?: string;
}

type Waiting = Parameters<typeof metaOf>[0] & {
  readonly context: { readonly marks: Readonly<Record<string, Instant>> };
};

/** A stage's own deadline, or null where it waits for nothing (or its mark is not there yet). */
export const deadlineOf = (snapshot: Waiting): Instant | null => {
  const { waits } = metaOf(snapshot);
  return waits === undefined ? null : (snapshot.context.marks[waits] ?? null);
};

/** A wait's own end goes before its tasks: what is due with it is done with by going on. */
const duesOf = (who: string, machine: BakeSnapshot | OvenSnapshot | LaneSnapshot): Due[] => {
  const end = deadlineOf(machine);
  const tasks = openTasks(machine).filter(({ called }) => called === null);
  return [
    ...(end === null ? [] : [{ who, at: end }]),
    ...tasks.map(({ task, at }) => ({ who, at, task })),
  ];
};

/** The next deadline of all; the oven, its lanes by name, the bakes by id, timers, the starter, attention last. */
export const nextDue = (kitchen: Kitchen): Due | null => {
  const snooze = snoozeEnds(kitchen.attention.context);
  const starter = starterDue(kitchen);
  const leftOn = leftOnDue(kitchen);
  const dues: Due[] = [
    ...duesOf('oven', kitchen.oven),
    ...Object.keys(kitchen.lanes)
      .toSorted()
      .flatMap((who) => duesOf(who, kitchen.lanes[who]!)),
    ...Object.keys(kitchen.bakes)
      .toSorted()
      .flatMap((who) => duesOf(who, kitchen.bakes[who]!)),
    ...timerDues(kitchen).map((due) => ({ who: TIMER, ...due })),
    ...(leftOn === null ? [] : [{ who: LEFT_ON, at: leftOn }]),
    ...(starter === null ? [] : [{ who: STARTER, at: starter }]),
    ...(snooze === null ? [] : [{ who: 'attention', at: snooze }]),
  ];
  return dues.reduce<Due | null>((first, due) => (first && first.at <= due.at ? first : due), null);
};

/** What the runner has to bring about: one alarm armed, one call sounding. */
export interface Wanted {
  readonly alarmAt: Instant | null;
  readonly ringing: Call | null;
}

export const wanted = (kitchen: Kitchen): Wanted => ({
  alarmAt: nextDue(kitchen)?.at ?? null,
  ringing: sounding(kitchen.attention.context)[0] ?? null,
});
