import { before, holding, off, poke, preheating, score, standing, turnOn } from './cold.ts';
import {
  judge,
  lidded,
  lift,
  load,
  open,
  recover,
  steaming,
  turnOff,
  unload,
  vent,
} from './hot.ts';
import { ovenSetup } from './oven-setup.ts';

/** The kitchen's one oven. Only it knows *lidded*; a bake sees nothing but its loaves come out. */
export const ovenMachine = ovenSetup.createMachine({
  id: 'oven',
  options: { maxIterations: 50 },
  context: {
    marks: {},
    entered: {},
    byDue: false,
    answers: {},
    tasks: {},
    vessel: 'pot',
    waiting: [],
    soon: false,
    load: [],
    out: [],
  },
  initial: 'off',
  on: {
    judged: { actions: 'judge' },
    lead: { guard: 'mayCall', actions: 'callTask' },
    taskDone: { guard: 'isTask', actions: 'closeTask' },
  },
  states: {
    off,
    turnOn,
    preheating,
    holding,
    poke,
    standing,
    before,
    score,
    load,
    lidded,
    lift,
    steaming,
    vent,
    open,
    judge,
    unload,
    recover,
    turnOff,
  },
});
