import type { BakeContext } from '../../../machines/bake/bake-setup.ts';
import { isWarm } from '../../core/formula/is-warm.ts';

/** Whether a warm proof's stages are, for this bake, loaves standing out after the fridge. */
export const isOut = (context: Pick<BakeContext, 'recipe'> | undefined): boolean =>
  context !== undefined && !isWarm(context.recipe.process);
