import type { Fact } from '../../src/core/records/fact.ts';
import { HOUR } from '../../src/core/units.ts';
import type { Kitchen } from './kitchen.ts';
import type { Stepped } from './step.ts';

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
