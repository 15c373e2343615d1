import { entering } from '../meta.ts';
import { laneSetup } from './lane-setup.ts';

const state = laneSetup.createStateConfig;
const steamOut = { guard: 'plausible', target: 'open' } as const;
const lidOff = { guard: 'plausible', target: 'open' } as const;

const lidded = state({
  entry: entering('lidded'),
  meta: { waits: 'lid' },
  on: { due: 'lift', lidOff },
});

/** The call this machine exists for. Nothing is asked of hands that hold iron: one later press. */
const lift = state({
  entry: entering('lift'),
  meta: { call: 'hot', hazard: 'hot' },
  on: { lidOff },
});

/** On a stone: no lid, but steam, which has to leave before the crust can colour. */
const steaming = state({
  entry: entering('steaming'),
  meta: { waits: 'vent' },
  on: { due: 'vent', steamOut },
});

/** As with the lid: hot hands are asked nothing, one later press records it. */
const vent = state({
  entry: entering('vent'),
  meta: { call: 'hot', hazard: 'hot' },
  on: { steamOut },
});

const open = state({
  entry: entering('open'),
  meta: { waits: 'colour' },
  on: { due: 'judge', colourSeen: 'judge' },
});

const judge = state({
  entry: entering('judge'),
  meta: { call: 'hot', list: 'crustSigns', hazard: 'hot' },
  on: {
    answer: { guard: 'isAsked', actions: 'answer' },
    crustReady: 'unload',
    crustNotYet: 'open',
    crustOnRack: { guard: 'inPot', target: 'open', actions: 'outOfPot' },
    crustOver: 'unload',
  },
});

const unload = state({
  entry: entering('unload'),
  meta: { hazard: 'hot' },
  on: {
    unloaded: [
      { guard: 'moreCome', target: 'recover', actions: 'empty' },
      { target: 'gone', actions: 'empty' },
    ],
  },
});

const recover = state({
  entry: entering('recover'),
  meta: { waits: 'hot' },
  on: {
    due: 'gone',
    ovenHot: 'gone',
    sync: { guard: 'unwanted', target: 'gone' },
  },
});

/** One pot from its load until it is hot and empty again, or is wanted no more: then it is gone. */
export const laneMachine = laneSetup.createMachine({
  id: 'lane',
  options: { maxIterations: 50 },
  context: ({ input }) => input,
  initial: 'lidded',
  on: {
    judged: { actions: 'judge' },
    lead: { guard: 'mayCall', actions: 'callTask' },
    taskDone: { guard: 'isTask', actions: 'closeTask' },
  },
  states: {
    lidded,
    lift,
    steaming,
    vent,
    open,
    judge,
    unload,
    recover,
    gone: { type: 'final' },
  },
});
