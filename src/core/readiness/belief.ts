/**
 * What is believed of a starter's vigour: ln v ~ N(mean, sd²), v = 1 being the model's own speed.
 */
export interface Belief {
  readonly mean: number;
  readonly sd: number;
}

/** A starter never baked with: the model's own speed, with its full doubt (trade practice fitted). */
export const OPENING_BELIEF: Belief = { mean: 0, sd: 0.3 };
