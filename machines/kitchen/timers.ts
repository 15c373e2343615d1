import type { Fact } from '../../src/core/records/fact.ts';
import { HOUR, type Instant } from '../../src/core/units.ts';
import type { Call } from '../attention/attention.ts';
import type { Kitchen } from './kitchen.ts';
import type { Stepped } from './step.ts';

/** Whose call a timer's is. No bake may be named so. */
export const TIMER = 'timer';

/** Running at once at most; more could not be told apart in a kitchen. Judgement. */
export const MOST_TIMERS = 8;
/** A timer of the kitchen's is of minutes or hours, never of days. Judgement. */
export const LONGEST_TIMER = 24 * HOUR;

type Set = Extract<Fact, { kind: 'timer' }>;

const isSound = ({ at, timer, name, until, call }: Set): boolean =>
  timer !== '' &&
  name !== '' &&
  Number.isFinite(until) &&
  until > at &&
  until <= at + LONGEST_TIMER &&
  (call === 'act' || call === 'hot');

/** Sets a timer; not taken without a name, with an end that is past or days away, or beyond the most. */
export const setTimer = (kitchen: Kitchen, fact: Set): Stepped => {
  const { timers } = kitchen;
  const room = Object.keys(timers).length < MOST_TIMERS && !Object.hasOwn(timers, fact.timer);
  if (!room || !isSound(fact)) return { kitchen, taken: false, says: [] };
  const { timer, name, until, call } = fact;
  return {
    kitchen: { ...kitchen, timers: { ...timers, [timer]: { name, until, call } } },
    taken: true,
    says: [],
  };
};

/** Stops a timer, running or overdue. */
export const stopTimer = (
  kitchen: Kitchen,
  { timer }: Extract<Fact, { kind: 'timerOff' }>,
): Stepped => {
  if (!Object.hasOwn(kitchen.timers, timer)) return { kitchen, taken: false, says: [] };
  const { [timer]: _, ...timers } = kitchen.timers;
  return { kitchen: { ...kitchen, timers }, taken: true, says: [] };
};

/** When each timer that still runs will be due, in the order of their ids. */
export const timerDues = ({ timers, now }: Kitchen): { timer: string; at: Instant }[] =>
  Object.keys(timers)
    .toSorted()
    .map((timer) => ({ timer, at: timers[timer]!.until }))
    .filter(({ at }) => at > now);

/** A timer that is due calls until it is stopped: nothing more than its instant is to be kept. */
export const timerCalls = ({ timers, now }: Kitchen): Call[] =>
  Object.keys(timers)
    .toSorted()
    .flatMap((timer): Call[] => {
      const { until, call } = timers[timer]!;
      if (until > now) return [];
      const id = `${TIMER}:${timer}:${until}`;
      return [{ id, who: TIMER, stage: timer, kind: call, since: until }];
    });
