import { entering } from '../meta.ts';
import { bakeSetup } from './bake-setup.ts';

/** The oven machine has the loaves; this bake goes on when the last of its own is out. */
export const oven = bakeSetup.createStateConfig({
  initial: 'queued',
  states: {
    queued: {
      entry: entering('oven.queued'),
      on: { sync: { guard: 'allOut', target: '#bake.cool.cooling' } },
    },
  },
});

/** Cool, hand over, one note for next time. */
export const cool = bakeSetup.createStateConfig({
  initial: 'cooling',
  states: {
    cooling: {
      entry: entering('cool.cooling'),
      meta: { waits: 'end' },
      on: { due: 'handOver', cooled: 'handOver' },
    },
    handOver: {
      entry: entering('cool.handOver'),
      meta: { call: 'look' },
      on: { handedOver: 'note' },
    },
    note: { entry: entering('cool.note'), on: { noted: '#bake.done' } },
  },
});

/** Dough that has gone over gets a new goal, never more waiting. */
export const rescue = bakeSetup.createStateConfig({
  initial: 'tray',
  states: {
    tray: {
      entry: entering('rescue.tray'),
      meta: { hazard: 'hot' },
      on: { trayBaked: '#bake.cool.note' },
    },
  },
});
