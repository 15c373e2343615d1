import type { BakeStage } from './stage.ts';

/** Stages with levain and flour together; a bake joined later begins at the first it was in. */
export const IN_BOWL: readonly BakeStage[] = [
  'mix.first',
  'mix.rest',
  'mix.salt',
  'mix.work',
  'mix.temperature',
  'bulk.between',
  'bulk.fold',
  'bulk.spread',
  'bulk.scatter',
  'bulk.roll',
  'bulk.proving',
  'bulk.look',
];
