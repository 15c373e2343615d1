import { saneCelsius } from '../clock/doubt.ts';
import { temperatureIn, type Path, type Stretch } from '../clock/stretch.ts';
import { driftedTo, driftFit, driftPath, type Measured, type Room } from '../heat/drift.ts';
import type { Seen } from '../records/seen.ts';
import { HOUR, type Celsius, type Hours, type Instant } from '../units.ts';

/** A body of dough or levain, from `begin` on for `hours`; `tau` is its usual time constant, h. */
export interface DoughBody {
  readonly kitchen: Celsius;
  readonly seen: readonly Seen[];
  readonly begin: Instant;
  readonly hours: Hours;
  readonly tau: Hours;
  /** Which readings are of it; left out, a dough's. */
  readonly of?: 'doughTemperature' | 'levainTemperature';
  /** Its temperature at `begin`, where known; else the room's. */
  readonly start?: Celsius;
  /** What was mixed into it at an hour, and what that makes of its temperature. */
  readonly chill?:
    { readonly hours: Hours; readonly to: (celsius: Celsius) => Celsius } | undefined;
}

/** The rate's factor before the salt is in, and after `saltedAt` (null: salted from the start). */
export interface Salting {
  readonly unsalted: number;
  readonly salted: number;
  readonly saltedAt: Instant | null;
}

/**
 * K between what drift expects and what is measured, beyond which something was done to the dough
 * (put in a warm place, taken out of a cool one) and its way begins anew. Judgement.
 */
const MOVED = 2;

const measuredAs = (
  what: 'doughTemperature' | 'levainTemperature' | 'kitchenTemperature',
  { seen, begin }: DoughBody,
): Measured[] =>
  seen
    .flatMap(({ at, reading }) =>
      reading.what === what
        ? { hours: (at - begin) / HOUR, celsius: saneCelsius(reading.celsius).celsius }
        : [],
    )
    .toSorted((a, b) => a.hours - b.hours);

/** The room hour by hour: as said at the start till it is measured; the last before `begin` is the one it begins in. */
export const roomOf = (body: DoughBody): Room => {
  const measured = measuredAs('kitchenTemperature', body);
  const before = measured.findLast(({ hours }) => hours <= 0);
  const celsius = before?.celsius ?? saneCelsius(body.kitchen).celsius;
  return [{ hours: 0, celsius }, ...measured.filter(({ hours }) => hours > 0)];
};

/** The room as seen from a later hour on. */
const roomFrom = (room: Room, hour: Hours): Room => {
  const now = room.findLast(({ hours }) => hours <= hour)!;
  const later = room.filter(({ hours }) => hours > hour);
  return [now, ...later].map(({ hours, celsius }) => ({
    hours: Math.max(0, hours - hour),
    celsius,
  }));
};

/** The first `hours` of a path. */
export const cut = (path: Path, hours: Hours): Path => {
  let left = hours;
  return path.flatMap((stretch) => {
    const long = Math.min(left, stretch.hours);
    left -= long;
    return long > 0 ? [{ ...stretch, hours: long }] : [];
  });
};

/**
 * Temperature of a dough from `begin` on, as stretches of Newton's law: the drift fitted to what was
 * measured in it, in the room as it was measured. Where a reading lies far from what drift can
 * explain the dough was moved, and a new drift begins there; so it does where a filling went in.
 */
export function temperaturePath(body: DoughBody): Path {
  const room = roomOf(body);
  const readings = measuredAs(body.of ?? 'doughTemperature', body).filter(
    ({ hours }) => hours >= 0,
  );
  let path: Path = [];
  /** A drift that begins at `from`, before anything is measured in it. */
  const begin = (from: Hours, start: Celsius) => {
    const here = roomFrom(room, from);
    const fit = driftFit(here, { tau: body.tau, start });
    return { from, here, fit, drift: { from: start, tau: body.tau, offset: 0 }, read: false };
  };
  let group = begin(0, body.start ?? room[0]!.celsius);
  const way = (): Path => driftPath(group.drift, group.here, body.hours - group.from);
  let { chill } = body;
  const chillBy = (hours: Hours): void => {
    if (chill === undefined || chill.hours > hours) return;
    const since = chill.hours - group.from;
    path = [...path, ...cut(way(), since)];
    group = begin(chill.hours, chill.to(driftedTo(group.drift, group.here, since)));
    chill = undefined;
  };
  for (const { hours, celsius } of readings) {
    if (hours >= body.hours) break;
    chillBy(hours);
    const since = hours - group.from;
    if (group.read && Math.abs(driftedTo(group.drift, group.here, since) - celsius) > MOVED) {
      path = [...path, ...cut(way(), since)];
      group = begin(hours, celsius);
    }
    const drift = group.fit({ hours: hours - group.from, celsius });
    group = { ...group, drift, read: true };
  }
  chillBy(body.hours);
  return [...path, ...way()];
}

/** The same path with the rate's factor along it, split where the salt went in. */
export function salted(path: Path, begin: Instant, salting: Salting): Path {
  const { saltedAt } = salting;
  const until = saltedAt === null ? 0 : (saltedAt - begin) / HOUR;
  let at = 0;
  return path.flatMap((stretch): Stretch[] => {
    const before = Math.min(stretch.hours, Math.max(0, until - at));
    at += stretch.hours;
    const first = { ...stretch, hours: before, factor: salting.unsalted };
    if (before >= stretch.hours) return [first];
    const rest = {
      ...stretch,
      hours: stretch.hours - before,
      from: temperatureIn(stretch, before),
      factor: salting.salted,
    };
    return before > 0 ? [first, rest] : [rest];
  });
}
