import type { Minutes } from '../units.ts';
import type { BulkTouch } from './formula.ts';

/** A touch of the dough, so many minutes after the one before it. */
export const touchOf = (kind: BulkTouch['kind'], minutes: Minutes): BulkTouch => ({
  kind,
  // eslint-disable-next-line no-restricted-syntax -- a field of the formula, not a timer
  after: minutes,
});
