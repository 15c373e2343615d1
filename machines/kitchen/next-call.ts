import type { Instant } from '../../src/core/units.ts';
import type { Call } from '../attention/attention.ts';
import { sounding } from '../attention/attention.ts';
import { advance } from './advance.ts';
import { nextDue } from './dues.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { ringingOf, type Quiet } from './ringing.ts';

/** A call, and the instant from which it is to be heard. */
export interface NextCall {
  readonly call: Call;
  readonly at: Instant;
}

/** What the next deadline will bring, beside what stands already. */
const aheadOf = (kitchen: Kitchen, machines: Machines, quiet: Quiet): NextCall | null => {
  const due = nextDue(kitchen);
  if (due === null) return null;
  const standing = new Set(sounding(kitchen.attention.context).map(({ id }) => id));
  const { kitchen: then } = advance(kitchen, machines, due.at);
  const call = sounding(then.attention.context).find(({ id }) => !standing.has(id));
  return call ? { call, at: quiet(call, due.at) ?? due.at } : null;
};

/**
 * The call that is heard now, or else the one that will be heard next: one that is quiet till then, or
 * what the next deadline brings. Known beforehand, because the fold is pure, so that its sound can be laid
 * ahead. Its id is the same before and after.
 */
export const nextCall = (kitchen: Kitchen, machines: Machines, quiet: Quiet): NextCall | null => {
  const call = ringingOf(kitchen, quiet);
  const until = call && quiet(call, kitchen.now);
  if (call && until === null) return { call, at: call.since };
  const ahead = aheadOf(kitchen, machines, quiet);
  if (call === null || until === null) return ahead;
  return ahead && ahead.at < until ? ahead : { call, at: until };
};
