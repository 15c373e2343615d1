import { entering } from '../meta.ts';
import { ovenSetup } from './oven-setup.ts';

const state = ovenSetup.createStateConfig;

const queue = { actions: 'queue' } as const;
/**
 * Nobody waits for bread any more before the load went in: the oven has to go off, or is kept hot
 * for those that come soon; or it is busy with what is in it, and nothing can go in now.
 */
export const callOff = [
  { guard: 'noneCome', target: 'turnOff', actions: 'queue' },
  { guard: 'noneYet', target: 'holding', actions: 'queue' },
  { guard: 'noneFits', target: 'baking', actions: 'queue' },
] as const;
/** A pot was made ready, and now a stone is wanted, or the other way round. */
export const reready = { guard: 'otherVessel', target: 'poke', actions: 'queue' } as const;
/** Hot: to the loaf that waits, or until one comes. */
const onHot = [{ guard: 'moreWait', target: 'poke' }, { target: 'holding' }] as const;

export const off = state({
  entry: [...entering('off'), 'forget'],
  on: { sync: [{ guard: 'someCome', target: 'turnOn', actions: 'queue' }, queue] },
});

export const turnOn = state({
  entry: entering('turnOn'),
  meta: { call: 'act', hazard: 'machine' },
  on: {
    ovenOn: { guard: 'arePots', target: 'preheating', actions: 'heat' },
    sync: [{ guard: 'noneCome', target: 'off', actions: 'queue' }, queue],
  },
});

export const preheating = state({
  entry: entering('preheating'),
  meta: { waits: 'hot' },
  on: {
    due: onHot,
    ovenHot: onHot,
    sync: [{ guard: 'noneCome', target: 'turnOff', actions: 'queue' }, queue],
  },
});

/** The loaves that come have just been poked. */
export const holding = state({
  entry: entering('holding'),
  on: {
    sync: [
      { guard: 'noneCome', target: 'turnOff', actions: 'queue' },
      { guard: 'someWait', target: 'before', actions: 'queue' },
      queue,
    ],
  },
});

/** A sluggish loaf is left for later while others wait; only the last ones stand out. */
export const poke = state({
  entry: entering('poke'),
  meta: { call: 'act', list: 'pokeSigns' },
  on: {
    answer: { guard: { type: 'isAsked', params: { list: 'pokeSigns' } }, actions: 'answer' },
    pokeReady: [
      { guard: 'madeReady', target: 'score', actions: 'unflatten' },
      { target: 'before', actions: 'unflatten' },
    ],
    pokeNotYet: [
      { guard: 'othersWait', target: 'poke', reenter: true, actions: 'setAside' },
      { target: 'standing', actions: 'setAside' },
    ],
    pokeOver: [
      { guard: 'madeReady', target: 'score', actions: 'unflatten' },
      { target: 'before', actions: 'unflatten' },
    ],
    // Far gone: it bakes flat, the others go on in their pots.
    pokeFlat: [
      { guard: 'madeReady', target: 'tray', actions: 'flatten' },
      { target: 'before', actions: 'flatten' },
    ],
    sync: [...callOff, queue],
  },
});

export const standing = state({
  entry: entering('standing'),
  meta: { waits: 'poke' },
  on: {
    due: 'poke',
    pokeNow: 'poke',
    // Said to go first it is not made to stand out: it is looked at.
    loafFirst: { guard: 'mayTurn', target: 'poke', actions: 'turn' },
    sync: [...callOff, { guard: 'freshCome', target: 'poke', actions: 'queue' }, queue],
  },
});

export const before = state({
  entry: entering('before'),
  meta: { list: 'beforeOven' },
  on: {
    answer: [
      {
        guard: { type: 'completesFlat', params: { list: 'beforeOven' } },
        target: 'tray',
        actions: 'makeReady',
      },
      {
        guard: { type: 'completes', params: { list: 'beforeOven' } },
        target: 'score',
        actions: 'makeReady',
      },
      { guard: { type: 'isAsked', params: { list: 'beforeOven' } }, actions: 'answer' },
    ],
    sync: [...callOff, reready, queue],
  },
});

export const score = state({
  entry: entering('score'),
  meta: { hazard: 'blade' },
  on: { scored: 'load', sync: [...callOff, reready, queue] },
});
