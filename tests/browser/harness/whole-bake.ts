import type { Baker } from './baker.ts';

export interface Step {
  /** What stands on the screen before it: also the name of its picture. */
  readonly name: string;
  /** `rung` is called while a call rings, before it is hushed. */
  readonly go: (baker: Baker, rung?: () => Promise<void>) => Promise<void>;
}

const slab = (name: string): Step => ({ name, go: (b) => b.slab() });
const gated = (name: string): Step => ({
  name,
  go: async (b) => {
    await b.openGate();
    await b.slab();
  },
});
const wait = (name: string, minutes: number): Step => ({
  name,
  go: (b, rung) => b.wait(minutes, rung),
});
const many = (name: string, n: number): Step[] =>
  Array.from({ length: n }, (_, i) => slab(`${name}-${i + 1}`));

/** One loaf through the pot. */
const load = (n: number): Step[] => [
  ...many(`load${n}-poke`, 2),
  slab(`load${n}-poke-verdict`),
  // Gone through once a firing.
  ...(n === 1 ? many(`load${n}-before`, 7) : []),
  gated(`load${n}-score`),
  gated(`load${n}-load`),
  wait(`load${n}-lidded`, 18),
  gated(`load${n}-lift`),
  wait(`load${n}-open`, 20),
  { name: `load${n}-judge-gate`, go: (b) => b.openGate() },
  ...many(`load${n}-judge`, 3),
  slab(`load${n}-judge-verdict`),
  gated(`load${n}-unload`),
];

/** The whole filled, retarded bake of two loaves through one pot, from its read-through on. */
export const WHOLE_BAKE: readonly Step[] = [
  slab('read-plan'),
  ...many('read-list', 7),
  ...many('levain-feed', 3),
  wait('levain-ripening', 15 * 60),
  ...many('levain-look', 5),
  slab('levain-verdict'),
  slab('levain-ripe'),
  ...many('mix-weigh', 4),
  slab('mix-first'),
  wait('mix-rest', 30),
  ...many('mix-salt', 2),
  slab('mix-work'),
  {
    name: 'mix-temperature',
    go: async (b) => {
      await b.tap('.slab');
      await b.key('25');
      await b.slab();
    },
  },
  wait('bulk-between-1', 30),
  slab('bulk-fold'),
  wait('bulk-between-2', 30),
  slab('bulk-spread'),
  ...many('bulk-scatter', 2),
  slab('bulk-roll'),
  wait('bulk-between-3', 30),
  slab('bulk-fold-2'),
  wait('bulk-proving', 8 * 60),
  ...many('bulk-look', 5),
  slab('bulk-verdict'),
  slab('shape-divide'),
  slab('shape-preshape'),
  wait('shape-bench-rest', 20),
  slab('shape-final'),
  slab('shape-basket'),
  slab('proof-to-fridge'),
  wait('proof-retard', 14 * 60),
  ...many('proof-look', 5),
  slab('proof-verdict'),
  gated('oven-on'),
  wait('oven-preheating', 45),
  ...load(1),
  wait('oven-recover', 10),
  ...load(2),
  gated('oven-off'),
  wait('cool', 120),
  slab('hand-over'),
  slab('note'),
];
