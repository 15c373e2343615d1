import { openTasks } from '../../../machines/kitchen/open-tasks.ts';
import { machineOf } from '../../../machines/kitchen/machine-of.ts';
import type { WaitModel } from '../../../machines/kitchen/results.ts';
import { leadOf } from '../../../machines/tasks.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import type { BakeStage } from '../../../src/core/records/stage.ts';
import { TASKS } from '../../../src/core/records/task.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import { Hand, plainWait } from '../../machines/support/hand.ts';
import { stepOn } from '../../machines/support/onward.ts';

/** A stage of a bake, or a task of its wait that calls, and the log that leads there. */
export interface Station {
  readonly name: string;
  readonly at: Instant;
  readonly records: readonly LogRecord[];
}

const AT_OVEN = ['parchment', 'kettle', 'fetch', 'rack'];

/** Every task calls once: those at the oven while it heats, the others in the first rest. */
const withTasks: WaitModel = (input) => {
  const wait = plainWait(input);
  if (input.stage !== 'mix.rest' && input.stage !== 'preheating') return wait;
  const asked = TASKS.filter((one) => AT_OVEN.includes(one) === (input.stage === 'preheating'));
  const leads = asked.map((one, i) => [leadOf(one), input.now + (i + 1) * MINUTE]);
  return { ...wait, marks: { ...wait.marks, ...Object.fromEntries(leads) } };
};

/**
 * The usual way of a bake, each stage and each task that calls once, in the order they come.
 *
 * @param begins when it is begun, epoch ms
 */
export function stationsOf(recipe: Recipe, begins: Instant, from: BakeStage): Station[] {
  const hand = new Hand({ now: begins, wait: withTasks });
  hand.start('a', from, ['a1', 'a2'], recipe);
  const found = new Map<string, Station>();
  const note = (name: string | null): void => {
    if (name !== null && !found.has(name))
      found.set(name, { name, at: hand.now, records: [...hand.records] });
  };
  for (let steps = 0; steps < 300 && hand.stage('a') !== null; steps += 1) {
    // The bake's turn until its loaves wait for the oven.
    const who = hand.stage('a') === 'oven.queued' ? 'oven' : 'a';
    note(hand.stage(who));
    const stands = machineOf(hand.kitchen, hand.place(who));
    for (const { task, at } of stands ? openTasks(stands) : []) {
      hand.turnTo(Math.max(hand.now, at));
      note(task);
      hand.press(who, 'taskDone', { item: task, value: 'left' });
    }
    if (!stepOn(hand, who)) break;
  }
  return [...found.values()];
}
