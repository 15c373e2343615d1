import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { bakedLoaves } from '../../../machines/kitchen/lanes.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';

/**
 * The loaves a bake has, those in the pots or out of them first, since they can't be given up, and
 * the least that must remain: those, and at least one. Nothing can be given up where `least` is all.
 */
export function loavesToKeep(
  kitchen: Kitchen,
  id: string,
): { readonly all: readonly string[]; readonly least: number } {
  const bake = kitchen.bakes[id];
  const loaves = bake?.context.loaves ?? [];
  if (bake === undefined || /^(cool|rescue)\./.test(stageOf(bake))) {
    return { all: loaves, least: loaves.length };
  }
  const baked = bakedLoaves(kitchen);
  const bound = loaves.filter((loaf) => baked.includes(loaf));
  const free = loaves.filter((loaf) => !baked.includes(loaf));
  return { all: [...bound, ...free], least: Math.max(1, bound.length) };
}
