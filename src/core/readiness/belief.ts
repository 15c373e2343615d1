/**
 * What is believed of a starter's vigour: ln v ~ N(mean, sd²), v = 1 being the model's own speed.
 */
export interface Belief {
  readonly mean: number;
  readonly sd: number;
}
