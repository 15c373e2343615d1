import type { Filling, Preparation } from './formula.ts';

/**
 * What is to be done to a filling before it goes in: as it says, and soaking where it has its own
 * water to soak in.
 *
 * @example
 * prepareOf({ prepare: ['toast'], soak: { water: 100 } }) // → ['soak', 'toast']
 */
export const prepareOf = ({
  prepare = [],
  soak,
}: Pick<Filling, 'prepare' | 'soak'>): readonly Preparation[] =>
  soak && !prepare.includes('soak') ? ['soak', ...prepare] : prepare;
