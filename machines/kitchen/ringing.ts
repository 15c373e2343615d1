import type { Instant } from '../../src/core/units.ts';
import { sounding, type Call } from '../attention/attention.ts';
import type { Kitchen } from './kitchen.ts';

/** Until when a call is quiet that would be heard at this instant; null: it is heard. */
export type Quiet = (call: Call, at: Instant) => Instant | null;

/** Of the calls that stand unheard the first that is not quiet; all quiet, the first: it is seen. */
export const ringingOf = (kitchen: Kitchen, quiet: Quiet): Call | null => {
  const calls = sounding(kitchen.attention.context);
  return calls.find((call) => quiet(call, kitchen.now) === null) ?? calls[0] ?? null;
};
