import type { CutRead } from '../records/cut-read.ts';
import type { BakeList, ListedBake } from './bake-list.ts';
import { cutShown } from './turned-out.ts';

/**
 * A bake that was put away with no word of its own, and whose loaf was cut on another tablet, is as that
 * one saw it. Lines are kept: the same line and the same cut are the same object again.
 */
const seenElsewhere = new WeakMap<
  ListedBake,
  { readonly cut: CutRead; readonly line: ListedBake }
>();

const withCut = (line: ListedBake, cuts: readonly ReadonlyMap<string, CutRead>[]): ListedBake => {
  if (line.turned !== 'done') return line;
  const cut = cuts.map((its) => its.get(line.start)).find((its) => its !== undefined);
  const turned = cut && cutShown(cut);
  if (cut === undefined || turned === undefined) return line;
  const known = seenElsewhere.get(line);
  if (known?.cut === cut) return known.line;
  const its = { cut, line: { ...line, turned } };
  seenElsewhere.set(line, its);
  return its.line;
};

/**
 * The bakes of several logs as one list, each once: of two that tell of one bake the one with its end,
 * else the first. The latest begun first. Of a single log its own list.
 *
 * @example
 * mergeBakes([]) // → []
 */
export function mergeBakes(lists: readonly BakeList[]): readonly ListedBake[] {
  const [first, ...others] = lists;
  if (first === undefined) return [];
  if (others.every(({ bakes, cuts }) => bakes.length === 0 && cuts.size === 0)) return first.bakes;
  const all = new Map<string, ListedBake>();
  for (const { bakes } of lists)
    for (const line of bakes) {
      const known = all.get(line.start);
      if (known === undefined || (known.to === null && line.to !== null)) all.set(line.start, line);
    }
  const cuts = lists.map((list) => list.cuts).filter(({ size }) => size > 0);
  return [...all.values()].map((line) => withCut(line, cuts)).sort((a, b) => b.at - a.at);
}
