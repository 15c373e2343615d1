import { entering } from '../meta.ts';
import { callOff, reready } from './cold.ts';
import { ovenSetup } from './oven-setup.ts';

const state = ovenSetup.createStateConfig;
const queue = { actions: 'queue' } as const;

const loaded = [
  { guard: 'fitsMore', target: 'poke', actions: 'putIn' },
  { guard: 'fits', target: 'baking', actions: 'putIn' },
] as const;

export const load = state({
  entry: entering('load'),
  meta: { hazard: 'hot' },
  on: { loaded, sync: [...callOff, reready, queue] },
});

/**
 * A loaf that went over goes in flat, in a tray beside the pots. Where its turn was changed, or it is
 * given up, the next is looked at.
 */
export const tray = state({
  entry: entering('tray'),
  meta: { hazard: 'hot' },
  always: { guard: 'notFlat', target: 'poke' },
  on: { loaded, sync: [...callOff, queue] },
});

/**
 * Nothing can go in: every pot is full or heats up again. Its lanes say what is to be done; it notes
 * no entry, for nothing begins here.
 */
export const baking = state({
  entry: ['rest'],
  on: {
    sync: [
      { guard: 'noneCome', target: 'turnOff', actions: 'queue' },
      { guard: 'noneYet', target: 'holding', actions: 'queue' },
      { guard: 'oneFits', target: 'poke', actions: 'queue' },
      queue,
    ],
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
