import { entering } from '../meta.ts';
import { ovenSetup } from './oven-setup.ts';

const state = ovenSetup.createStateConfig;
const queue = { actions: 'queue' } as const;
const reready = { guard: 'otherVessel', target: 'poke', actions: 'queue' } as const;
const steamOut = { guard: 'plausible', target: 'open' } as const;
const lidOff = { guard: 'plausible', target: 'open' } as const;

export const load = state({
  entry: entering('load'),
  meta: { hazard: 'hot' },
  on: {
    loaded: [
      { guard: 'fitsStone', target: 'steaming', actions: 'putIn' },
      // Without a lid or steam it colours from the first minute on.
      { guard: 'fitsTin', target: 'open', actions: 'putIn' },
      { guard: 'fits', target: 'lidded', actions: 'putIn' },
    ],
    sync: [
      { guard: 'noneCome', target: 'turnOff', actions: 'queue' },
      { guard: 'noneYet', target: 'holding', actions: 'queue' },
      reready,
      queue,
    ],
  },
});

export const lidded = state({
  entry: entering('lidded'),
  meta: { waits: 'lid' },
  on: { due: 'lift', lidOff, sync: queue },
});

/** The call this machine exists for. Nothing is asked of hands that hold iron: one later press. */
export const lift = state({
  entry: entering('lift'),
  meta: { call: 'hot', hazard: 'hot' },
  on: { lidOff, sync: queue },
});

/** On a stone: no lid, but steam, which has to leave before the crust can colour. */
export const steaming = state({
  entry: entering('steaming'),
  meta: { waits: 'vent' },
  on: { due: 'vent', steamOut, sync: queue },
});

/** As with the lid: hot hands are asked nothing, one later press records it. */
export const vent = state({
  entry: entering('vent'),
  meta: { call: 'hot', hazard: 'hot' },
  on: { steamOut, sync: queue },
});

export const open = state({
  entry: entering('open'),
  meta: { waits: 'colour' },
  on: { due: 'judge', colourSeen: 'judge', sync: queue },
});

export const judge = state({
  entry: entering('judge'),
  meta: { call: 'hot', list: 'crustSigns', hazard: 'hot' },
  on: {
    answer: { guard: { type: 'isAsked', params: { list: 'crustSigns' } }, actions: 'answer' },
    crustReady: 'unload',
    crustNotYet: 'open',
    crustOver: 'unload',
    sync: queue,
  },
});

export const unload = state({
  entry: entering('unload'),
  meta: { hazard: 'hot' },
  on: {
    unloaded: [
      { guard: 'moreCome', target: 'recover', actions: 'takeOut' },
      { target: 'turnOff', actions: 'takeOut' },
    ],
    sync: queue,
  },
});

export const recover = state({
  entry: entering('recover'),
  meta: { waits: 'hot' },
  on: {
    due: [{ guard: 'moreWait', target: 'poke' }, { target: 'holding' }],
    ovenHot: [{ guard: 'moreWait', target: 'poke' }, { target: 'holding' }],
    sync: [{ guard: 'noneCome', target: 'turnOff', actions: 'queue' }, queue],
  },
});

/** Loaves that come now find an oven of unknown heat: it preheats again, and a press cuts that short. */
export const turnOff = state({
  entry: entering('turnOff'),
  meta: { call: 'act', hazard: 'machine' },
  on: {
    ovenOff: 'off',
    sync: [
      // Time alone brings no fact that could carry when it is hot: the press that turns it on does.
      { guard: 'calledFor', target: 'turnOn', actions: 'queue' },
      { guard: 'someCome', target: 'preheating', actions: 'queue' },
      queue,
    ],
  },
});
