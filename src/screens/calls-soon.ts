import { MACHINES, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { nextCall } from '../../machines/kitchen/next-call.ts';
import type { Instant } from '../core/units.ts';

/** The microphone is let go this long before a call, ms: the kitchen's time moves on by the second. Judgement. */
export const BEFORE_CALL = 3_000;

/** When it calls, or will next; quiet hours are not kept here. Null: nothing is known to. */
export const callsAt = (kitchen: Kitchen): Instant | null =>
  nextCall(kitchen, MACHINES, () => null)?.at ?? null;
