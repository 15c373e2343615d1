import type { Instant } from '../../src/core/units.ts';
import { nextDue } from './dues.ts';
import { fallDue } from './fall-due.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { settle } from './settle.ts';
import type { Stepped } from './step.ts';

/**
 * Every deadline up to and at `to` falls due in its order, each at its own instant; then the
 * kitchen stands at `to`. The same on a tick, before a fact and on replay.
 * @throws when a due is not taken: a deadline was armed where nothing answers to it.
 */
export const advance = (kitchen: Kitchen, machines: Machines, to: Instant): Stepped => {
  let next = kitchen;
  const says: Stepped['says'][number][] = [];
  for (let due = nextDue(next); due !== null && due.at <= to; due = nextDue(next)) {
    next = { ...next, now: Math.max(next.now, due.at) };
    const stepped = fallDue(next, machines, due);
    if (!stepped.taken) throw new Error(`A due of ${due.who} at ${due.at} was not taken.`);
    const settled = settle(stepped.kitchen, machines, true);
    next = settled.kitchen;
    says.push(...stepped.says, ...settled.says);
  }
  return { kitchen: { ...next, now: Math.max(next.now, to) }, taken: next !== kitchen, says };
};
