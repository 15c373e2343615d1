import { entering } from '../meta.ts';
import { bakeSetup } from './bake-setup.ts';

/** Weigh, first mix, rest, salt and second water, take the temperature. */
export const mix = bakeSetup.createStateConfig({
  initial: 'weigh',
  states: {
    weigh: {
      entry: entering('mix.weigh'),
      meta: { list: 'first', hazard: 'raw' },
      on: {
        answer: [
          { guard: { type: 'completes', params: { list: 'first' } }, target: 'first' },
          { guard: { type: 'isAsked', params: { list: 'first' } }, actions: 'answer' },
        ],
      },
    },
    first: { entry: entering('mix.first'), meta: { hazard: 'raw' }, on: { mixed: 'rest' } },
    rest: {
      entry: entering('mix.rest'),
      meta: { waits: 'end' },
      on: { due: 'salt', rested: 'salt' },
    },
    salt: {
      entry: entering('mix.salt'),
      meta: { call: 'act', list: 'second', hazard: 'raw' },
      on: {
        answer: [
          { guard: { type: 'completes', params: { list: 'second' } }, target: 'work' },
          { guard: { type: 'isAsked', params: { list: 'second' } }, actions: 'answer' },
        ],
      },
    },
    work: { entry: entering('mix.work'), meta: { hazard: 'raw' }, on: { workedIn: 'temperature' } },
    temperature: {
      entry: entering('mix.temperature'),
      on: {
        reading: [
          { guard: 'measuresDoughWithTouches', target: '#bake.bulk.between', actions: 'read' },
          { guard: 'measuresDough', target: '#bake.bulk.proving', actions: 'read' },
          { actions: 'read' },
        ],
        unmeasured: [
          { guard: 'hasTouches', target: '#bake.bulk.between' },
          { target: '#bake.bulk.proving' },
        ],
      },
    },
  },
});
