import type { Metres } from '../../src/core/oven/boiling.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import { begin } from './apply.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { resultsFor, type WaitModel } from './results.ts';
import type { StarterModel } from './starter-result.ts';
import type { Stepped } from './step.ts';

/**
 * A fact judged before it is written: tried bare; if something takes it, the models run once on
 * where it leads, and the fact carries what they said. The caller appends `fact`, then shows
 * `stepped`. `height`: of the kitchen above the sea. Null where nothing takes it: nothing is to be written.
 */
export const judgeFact = (
  kitchen: Kitchen,
  machines: Machines,
  bare: Fact,
  wait: WaitModel,
  starter: StarterModel,
  height: Metres = 0,
): { readonly fact: Fact; readonly stepped: Stepped } | null => {
  const begun = begin(kitchen, machines, bare);
  if (!begun.taken) return null;
  const dry = begun.close(bare);
  const results = resultsFor(dry.kitchen, bare, wait, starter, height);
  if (results.length === 0) return { fact: bare, stepped: dry };
  const fact = { ...bare, results };
  return { fact, stepped: begun.close(fact) };
};
