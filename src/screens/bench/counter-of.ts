import type { BakeContext } from '../../../machines/bake/bake-setup.ts';
import { MINUTE, type Minutes } from '../../core/units.ts';

/** Minutes that the baskets being filled will stand before the fridge; null where none was foretold. */
export const counterOf = (
  context: Pick<BakeContext, 'marks' | 'entered'> | undefined,
): Minutes | null => {
  const { fridge } = context?.marks ?? {};
  const since = context?.entered['shape.basket'];
  if (fridge === undefined || since === undefined) return null;
  return Math.max(0, Math.round((fridge - since) / MINUTE));
};
