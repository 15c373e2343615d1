import { sounding } from '../attention/attention.ts';
import { HEADS_UP } from '../../src/core/records/task.ts';
import { leadOf } from '../tasks.ts';
import type { Due } from './dues.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { openTasks } from './open-tasks.ts';
import { LEFT_ON } from './oven-left-on.ts';
import { machineOf } from './machine-of.ts';
import { stepAttention, type Stepped } from './step.ts';
import { stepMachine } from './step-machine.ts';
import { STARTER } from './starter.ts';
import { TIMER } from './timers.ts';

/** A task falls due: its wait goes on, and where it calls, or warns of a call, it is said. */
const fallTask = (
  kitchen: Kitchen,
  machines: Machines,
  { who, at }: Due,
  task: string,
): Stepped => {
  const stepped = stepMachine(kitchen, machines, who, { type: 'lead', at, task });
  const machine = machineOf(stepped.kitchen, who);
  const calls = machine && openTasks(machine).some((open) => open.task === task && open.calls);
  const isSaid = calls || (stepped.taken && task === HEADS_UP);
  return isSaid ? { ...stepped, says: [...stepped.says, { who, stage: leadOf(task) }] } : stepped;
};

/** A call that was put off rings again, and is said again. */
const ringAgain = (kitchen: Kitchen, machines: Machines, at: Due['at']): Stepped => {
  const before = new Set(sounding(kitchen.attention.context));
  const stepped = stepAttention(kitchen, machines, { type: 'due', at });
  const again = sounding(stepped.kitchen.attention.context).filter((call) => !before.has(call));
  return { ...stepped, says: again.map(({ who, stage }) => ({ who, stage })) };
};

/** One deadline falls due on what it concerns; `taken` is false where nothing answers to it. */
export const fallDue = (kitchen: Kitchen, machines: Machines, due: Due): Stepped => {
  const { who, at, task, timer } = due;
  if (task !== undefined) return fallTask(kitchen, machines, due, task);
  // A timer is due by its instant alone: there is nothing to step.
  if (who === TIMER) return { kitchen, taken: true, says: [{ who, stage: timer ?? '' }] };
  if (who === LEFT_ON) return { kitchen, taken: true, says: [{ who: 'oven', stage: 'turnOff' }] };
  if (who === STARTER) {
    // In the fridge it only stands to be seen: nothing is said.
    const where = kitchen.starter.put?.where;
    return { kitchen, taken: true, says: where === 'counter' ? [{ who, stage: where }] : [] };
  }
  return who === 'attention'
    ? ringAgain(kitchen, machines, at)
    : stepMachine(kitchen, machines, who, { type: 'due', at });
};
