import type { Instant } from '../../src/core/units.ts';
import type { Call } from '../attention/attention.ts';
import type { Kitchen } from './kitchen.ts';

/** Whose call a timer's is. No bake may be named so. */
export const TIMER = 'timer';

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
