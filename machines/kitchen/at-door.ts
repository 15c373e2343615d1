import { doorLoaf } from '../../src/core/day/door-loaf.ts';
import { isWarm } from '../../src/core/formula/is-warm.ts';
import { standsFor, type DoorSigns } from '../../src/core/oven/door-poke.ts';
import type { Instant, Minutes } from '../../src/core/units.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';
import { bakeInput } from './pinned.ts';
import { waitInput } from './wait-input.ts';

/** How often a loaf was told to stand since the last load went in, or the oven on; `but` left out. */
const notYets = ({ standing }: Kitchen, but: string | null): number => {
  const oven = standing.filter(({ kind, id }) => kind === 'press' && id !== but);
  const since = oven.findLastIndex(
    (fact) => fact.kind === 'press' && (fact.act === 'loaded' || fact.act === 'ovenOn'),
  );
  return oven.slice(since + 1).filter((fact) => fact.kind === 'press' && fact.act === 'pokeNotYet')
    .length;
};

/** Straight out of the fridge: it was neither proofed in the room nor has it stood out by now. */
const isCold = (kitchen: Kitchen, bake: BakeSnapshot, but: string | null): boolean =>
  !isWarm(bake.context.recipe.process) &&
  !('proof.poke' in bake.context.entered) &&
  notYets(kitchen, but) < kitchen.oven.context.waiting.length;

/** What the dough clock knows of a loaf of this bake at `at`, before the oven has it. */
export const clockOf = (
  kitchen: Kitchen,
  bake: BakeSnapshot,
  at: Instant = kitchen.now,
): Pick<DoorSigns, 'q' | 'loaf'> => {
  const start = kitchen.starts[bake.context.start];
  return start === undefined
    ? { q: null }
    : doorLoaf(waitInput(kitchen, bake, bakeInput(start).belief), at);
};

const among = <T extends string>(value: string | undefined, all: readonly T[]): T | null =>
  all.find((one) => one === value) ?? null;

/** What is known of the loaf at the oven's door: what its poke said, and what the dough clock knows. */
export function atDoor(kitchen: Kitchen, bake: BakeSnapshot): DoorSigns {
  const { answers } = kitchen.oven.context;
  const dent = answers['dent'] === 'slowly' ? 'slow' : answers['dent'];
  return {
    dent: among(dent, ['springs', 'slow', 'stays']),
    grown: among(answers['grown'], ['none', 'little', 'grown']),
    rim: null,
    cold: isCold(kitchen, bake, null),
    ...clockOf(kitchen, bake),
  };
}

/** How long the loaf that was just told to stand does so; `fact` is the press that told it. */
export function standsAtDoor(kitchen: Kitchen, fact: string): Minutes | null {
  const [next = ''] = kitchen.oven.context.waiting;
  const bake = Object.values(kitchen.bakes).find(({ context }) => context.loaves.includes(next));
  if (bake === undefined) return null;
  return standsFor({ cold: isCold(kitchen, bake, fact), ...clockOf(kitchen, bake) });
}
