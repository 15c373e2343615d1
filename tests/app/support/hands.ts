import { readFileSync } from 'node:fs';
import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { machineOf } from '../../../machines/kitchen/machine-of.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import { taskOf } from '../../../machines/tasks.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import { beforeOvenItems } from '../../../src/core/records/lists.ts';
import { listAt, USUAL } from '../../machines/support/onward.ts';

/** A formula that comes with the program, by its file's name. */
export const formulaOf = (name: string): Formula =>
  JSON.parse(readFileSync(`assets/formulas/${name}.json`, 'utf8')) as Formula;

const press = (who: string, act: string, extra: object = {}): Deed =>
  ({ kind: 'press', who, act, ...extra }) as Deed;

/** The one way back into a wait, of stages that have one. */
const NOT_YET: Readonly<Record<string, string>> = {
  'levain.look': 'levainNotYet',
  'bulk.look': 'bulkNotYet',
  'proof.look': 'loafNotYet',
  'proof.poke': 'loafNotYet',
  judge: 'crustNotYet',
};

/** What hands do next for a bake, the oven or a lane; none where only time leads on. */
export function nextDeeds(kitchen: Kitchen, who: string, isReady = true): readonly Deed[] {
  const machine = machineOf(kitchen, who);
  if (machine === undefined || deadlineOf(machine) !== null) return [];
  const stage = stageOf(machine);
  const { waiting, vessel } = kitchen.oven.context;
  if (stage === 'load') return [press('oven', 'loaded', { loaves: waiting.slice(0, 1) })];
  const bake = kitchen.bakes[who]?.context;
  const items = bake
    ? listAt(stage, bake.recipe, bake.answers)
    : stage === 'before'
      ? beforeOvenItems(vessel)
      : null;
  if (items) return items.map((item) => press(who, 'answer', { item, value: 'ready' }));
  const act = (isReady ? undefined : NOT_YET[stage]) ?? USUAL[stage];
  return act === undefined ? [] : [press(who, act)];
}

/** Everybody in a kitchen who may want hands. */
export const allIn = ({ bakes, lanes }: Kitchen): readonly string[] => [
  'oven',
  ...Object.keys(lanes),
  ...Object.keys(bakes),
];

/** What answers a call. */
export function answersTo(
  kitchen: Kitchen,
  { who, stage }: { readonly who: string; readonly stage: string },
  isReady = true,
): readonly Deed[] {
  if (who === 'timer') return [{ kind: 'timerOff', timer: stage }];
  if (who === 'starter') return [{ kind: 'starter', did: 'put', where: 'fridge' }];
  const task = taskOf(stage);
  if (task !== null) return [press(who, 'taskDone', { item: task })];
  return nextDeeds(kitchen, who, isReady);
}
