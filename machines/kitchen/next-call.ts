import type { Call } from '../attention/attention.ts';
import { sounding } from '../attention/attention.ts';
import { advance } from './advance.ts';
import { nextDue } from './dues.ts';
import type { Kitchen, Machines } from './kitchen.ts';

/**
 * The call that sounds now, or else the one that the next deadline will bring: known beforehand,
 * because the fold is pure, so that its sound can be laid ahead. Its id is the same before and after.
 */
export const nextCall = (kitchen: Kitchen, machines: Machines): Call | null => {
  const now = sounding(kitchen.attention.context)[0];
  if (now) return now;
  const due = nextDue(kitchen);
  if (due === null) return null;
  const { kitchen: then } = advance(kitchen, machines, due.at);
  return sounding(then.attention.context)[0] ?? null;
};
