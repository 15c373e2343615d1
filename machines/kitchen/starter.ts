import type { Starter } from '../../src/core/records/starter.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Call } from '../attention/attention.ts';
import type { Kitchen } from './kitchen.ts';

/** Whose call the starter's is. No bake may be named so. */
export const STARTER = 'starter';

/** The instant its reminder is due; null where there is none. */
export const remindAt = ({ marks }: Starter): Instant | null => marks['remind'] ?? null;

/** When it will call, in the future; null where it will not. */
export const starterDue = ({ starter, now }: Kitchen): Instant | null => {
  const at = remindAt(starter);
  return at !== null && at > now ? at : null;
};

/** Its reminder stands until it is fed, moved or put off. It rings on the counter alone: in the fridge nothing hurries. */
export const starterCalls = ({ starter, now }: Kitchen): Call[] => {
  const since = remindAt(starter);
  const stage = starter.put?.where;
  if (since === null || since > now || stage === undefined) return [];
  const quiet = stage === 'fridge' ? { quiet: true as const } : {};
  return [
    { id: `${STARTER}:${stage}:${since}`, who: STARTER, stage, kind: 'look', since, ...quiet },
  ];
};
