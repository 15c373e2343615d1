import type { Hazard } from '../records/stage.ts';
import type { SmallStep } from './small-words.ts';

/** What a child is guarded from at a step: what a baker is, and what a packet warns of. */
export type Guard = Hazard | 'allergen';

/** From what asks for the least to what is not within a child's reach, and not its press. */
const STRICTER = ['none', 'allergen', 'raw', 'heavy', 'machine', 'blade', 'hot'] as const;
export const isGated = (guard: Guard): boolean =>
  STRICTER.indexOf(guard) >= STRICTER.indexOf('machine');

/**
 * Where a child is guarded from more than its baker is warned of: an oven stays hot through its waits,
 * a starter that is put by is raw, loaves are heavy for small arms. A task has no hazard of its own.
 */
const MORE: Readonly<Partial<Record<SmallStep, Guard>>> = {
  'levain.ripe': 'raw',
  'mix.temperature': 'raw',
  'proof.toFridge': 'heavy',
  'proof.look': 'raw',
  'proof.poke': 'raw',
  'oven.queued': 'hot',
  'cool.cooling': 'hot',
  preheating: 'hot',
  holding: 'hot',
  poke: 'raw',
  before: 'hot',
  baking: 'hot',
  lidded: 'hot',
  steaming: 'hot',
  open: 'hot',
  recover: 'hot',
  soak: 'allergen',
  takeOut: 'allergen',
  toast: 'hot',
  drain: 'allergen',
  cut: 'blade',
  coat: 'raw',
  bench: 'raw',
  baskets: 'raw',
  grease: 'allergen',
  // Scissors, and a rack that stands near the oven.
  parchment: 'blade',
  kettle: 'hot',
  fetch: 'heavy',
  rack: 'hot',
  tidyMix: 'raw',
  tidyBulk: 'raw',
  tidyBench: 'raw',
};

/**
 * What a child is guarded from at this step: the stricter of the two. What has a gate for the baker has
 * one for the child.
 *
 * @param hazard what the machine says of its stage; none for a task
 */
export function guardOf(step: SmallStep, hazard: Hazard = 'none'): Guard {
  if (isGated(hazard)) return hazard;
  const more = MORE[step] ?? 'none';
  return STRICTER.indexOf(more) > STRICTER.indexOf(hazard) ? more : hazard;
}
