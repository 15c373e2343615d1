import { entering } from '../meta.ts';
import { bakeSetup, looked } from './bake-setup.ts';

/** After a touch: the next one, or the long wait. */
const onward = [
  { guard: 'hasMoreTouches', target: 'between', actions: 'touched' },
  { target: 'proving', actions: 'touched' },
] as const;

/** Folds and lamination with waits between, then the long wait and the looks. */
export const bulk = bakeSetup.createStateConfig({
  initial: 'between',
  states: {
    between: {
      entry: entering('bulk.between'),
      meta: { waits: 'touch' },
      on: {
        due: [{ guard: 'nextIsFold', target: 'fold' }, { target: 'spread' }],
        touchNow: [{ guard: 'nextIsFold', target: 'fold' }, { target: 'spread' }],
      },
    },
    fold: {
      entry: entering('bulk.fold'),
      meta: { call: 'act', hazard: 'raw' },
      on: { folded: onward },
    },
    spread: {
      entry: entering('bulk.spread'),
      meta: { call: 'act', hazard: 'raw' },
      on: { spread: 'scatter' },
    },
    scatter: {
      entry: entering('bulk.scatter'),
      meta: { list: 'filling', hazard: 'raw' },
      on: {
        answer: [
          { guard: { type: 'completes', params: { list: 'filling' } }, target: 'roll' },
          { guard: { type: 'isAsked', params: { list: 'filling' } }, actions: 'answer' },
        ],
        scattered: { guard: 'noneTicked', target: 'roll' },
      },
    },
    roll: { entry: entering('bulk.roll'), meta: { hazard: 'raw' }, on: { rolled: onward } },
    proving: {
      entry: entering('bulk.proving'),
      meta: { waits: 'look' },
      on: {
        due: 'look',
        doughSeen: 'look',
        bulkReady: [
          { guard: 'isScooped', target: '#bake.shape.scoop', actions: looked('bulk.look') },
          { target: '#bake.shape.divide', actions: looked('bulk.look') },
        ],
      },
    },
    look: {
      entry: entering('bulk.look'),
      meta: { call: 'look', list: 'bulkSigns' },
      on: {
        answer: { guard: { type: 'isAsked', params: { list: 'bulkSigns' } }, actions: 'answer' },
        bulkReady: [
          { guard: 'isScooped', target: '#bake.shape.scoop' },
          { target: '#bake.shape.divide' },
        ],
        bulkNotYet: 'proving',
        bulkOver: '#bake.rescue.tray',
      },
    },
  },
});
