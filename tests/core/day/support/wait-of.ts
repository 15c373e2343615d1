import type { WaitInput } from '../../../../src/core/day/waits.ts';
import { RECIPE } from '../../../machines/support/recipe.ts';

export const T0 = Date.UTC(2031, 4, 3, 6);

/** A wait that begins at `T0`, of a bake of which nothing was seen yet. */
export const waitOf = (change: Pick<WaitInput, 'stage'> & Partial<WaitInput>): WaitInput => ({
  now: T0,
  recipe: RECIPE,
  kitchen: 24,
  entered: {},
  touches: 0,
  prior: { mean: 0, sd: 0.25 },
  seen: [],
  done: [],
  again: false,
  ...change,
});
