import { judgeFact } from '../../machines/kitchen/judge-fact.ts';
import type { Kitchen, Machines } from '../../machines/kitchen/kitchen.ts';
import type { Fact } from '../core/records/fact.ts';
import { starterWait } from '../core/day/starter-wait.ts';
import { waitFor } from '../core/day/waits.ts';

/** A fact judged by our own models. It comes after the first paint; the first press waits for it. */
export const judge = (
  kitchen: Kitchen,
  machines: Machines,
  bare: Fact,
): ReturnType<typeof judgeFact> => judgeFact(kitchen, machines, bare, waitFor, starterWait);

export type Judge = typeof judge;
