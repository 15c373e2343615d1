import { baking, load, tray, turnOff } from './busy.ts';
import { before, holding, off, poke, preheating, score, standing, turnOn } from './cold.ts';
import { ovenSetup } from './oven-setup.ts';

/** The kitchen's one oven: heat, and what goes in next. What is in it, its lanes know. */
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
    out: [],
    rack: { full: false, free: true, reheats: false },
  },
  initial: 'off',
  on: {
    judged: { actions: 'judge' },
    lead: { guard: 'mayCall', actions: 'callTask' },
    taskDone: { guard: 'isTask', actions: 'closeTask' },
    taskKept: { actions: 'keepTask' },
    cameOut: { actions: 'takeOut' },
    loafFirst: { guard: 'mayTurn', actions: 'turn' },
    loafLater: { guard: 'mayTurn', actions: 'turn' },
    potOut: { guard: 'mayDrop', actions: 'drop' },
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
    tray,
    baking,
    turnOff,
  },
});
