import { entering } from '../meta.ts';
import { bakeSetup } from './bake-setup.ts';

/** Warm where nothing is retarded. */
const toProof = [
  { guard: 'isWarm', target: '#bake.proof.warm' },
  { target: '#bake.proof.counter' },
] as const;

/** Divide, preshape, bench rest, final shape, basket; or spooned into the tin. */
export const shape = bakeSetup.createStateConfig({
  initial: 'divide',
  states: {
    divide: {
      entry: entering('shape.divide'),
      meta: { hazard: 'raw' },
      on: { divided: 'preshape' },
    },
    preshape: {
      entry: entering('shape.preshape'),
      meta: { hazard: 'raw' },
      on: { preshaped: 'benchRest' },
    },
    benchRest: {
      entry: entering('shape.benchRest'),
      meta: { waits: 'end' },
      on: { due: 'finalShape', benchRested: 'finalShape' },
    },
    finalShape: {
      entry: entering('shape.finalShape'),
      meta: { call: 'act', hazard: 'raw' },
      on: { shaped: 'basket' },
    },
    basket: {
      entry: entering('shape.basket'),
      meta: { hazard: 'raw', foretells: 'fridge' },
      on: { inBaskets: toProof },
    },
    scoop: { entry: entering('shape.scoop'), meta: { hazard: 'raw' }, on: { scooped: toProof } },
  },
});
