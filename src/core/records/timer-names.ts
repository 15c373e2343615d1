import type { TimerCall } from './fact.ts';

/** What a timer of the baker's own may be for; kept in the log as its name. */
export const TIMER_NAMES = ['nuts', 'inOven', 'kettle', 'other'] as const;
export type TimerName = (typeof TIMER_NAMES)[number];

/** What stands in the oven burns: its call is a hot one. Judgement. */
export const TIMER_CALLS: Readonly<Record<TimerName, TimerCall>> = {
  nuts: 'hot',
  inOven: 'hot',
  kettle: 'act',
  other: 'act',
};

/** A name out of the log; what this program has no words for is something else. */
export const timerNameOf = (name: string): TimerName =>
  TIMER_NAMES.find((known) => known === name) ?? 'other';
