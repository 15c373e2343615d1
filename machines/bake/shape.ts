import { entering } from '../meta.ts';
import { bakeSetup } from './bake-setup.ts';

const warm = { guard: 'isWarm', target: '#bake.proof.warm' } as const;
const counter = { target: '#bake.proof.counter' } as const;
/** Past the counter where the baskets were told to go straight in: nobody is called for it. */
const straightIn = { guard: 'straightIn', target: '#bake.proof.toFridge' } as const;

/** What no sheet took in is in before the loaves have their shape. */
const answer = {
  guard: { type: 'isAsked', params: { list: 'worked' } },
  actions: 'answer',
} as const;

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
      meta: { call: 'act', list: 'worked', hazard: 'raw' },
      on: { answer, shaped: { guard: 'allWorked', target: 'basket' } },
    },
    basket: {
      entry: entering('shape.basket'),
      meta: { hazard: 'raw', foretells: 'fridge' },
      on: { inBaskets: [warm, straightIn, counter] },
    },
    scoop: {
      entry: entering('shape.scoop'),
      meta: { list: 'worked', hazard: 'raw' },
      on: {
        answer,
        scooped: [
          { ...warm, guard: 'allWorkedWarm' },
          { ...counter, guard: 'allWorked' },
        ],
      },
    },
  },
});
