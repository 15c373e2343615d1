import type { Change } from '../plan/types.ts';
import type { DayAsk } from './day-plan.ts';
import { takeChange } from './take-change.ts';

/** A touch the baker put to an hour, let go again. */
export type Unpin = Extract<Change, { change: 'unpin' }>;

/** Pins that alone stand in the way: each of them let go, there is a plan. `fits` asks that anew. */
export const pinsInTheWay = (ask: DayAsk, fits: (ask: DayAsk) => boolean): Unpin[] =>
  ask.bakes
    .flatMap(({ name: batch, pins }) =>
      Object.entries(pins).map(([touch, at]): Unpin => ({ change: 'unpin', batch, touch, at })),
    )
    .filter((pin) => fits(takeChange(ask, pin)));
