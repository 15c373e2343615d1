import type { BakeInput } from '../bake/bake-setup.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import type { StartFact } from './kitchen.ts';

/** What a start fact pins for the whole of its bake. */
export const bakeInput = (start: StartFact): BakeInput => ({
  id: start.bake,
  start: start.id,
  startedAt: start.at,
  loaves: start.loaves,
  recipe: start.recipe,
  kitchen: start.kitchen,
  belief: start.results?.find((r) => r.who === start.bake)?.belief ?? OPENING_BELIEF,
});
