import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { soonBakes } from '../../../machines/kitchen/settle.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { Recipe } from '../../core/formula/recipe.ts';
import type { Focus } from '../focus.ts';
import { bakeStagesOf, ovenStagesOf } from '../../core/records/stages-of.ts';

/** They stand at their neighbours' ticks. */
const NO_TICK: readonly string[] = [
  'oven.queued',
  'off',
  'standing',
  'holding',
  'recover',
  'tray',
  'proof.soon',
];

/** The steps of a bake in the order they come, the oven's in their place: the edge's ticks. */
export const stepsOf = ({ process }: Recipe): readonly string[] => {
  const ticked = (stage: string): boolean => !NO_TICK.includes(stage);
  const bake = bakeStagesOf(process).filter(ticked);
  const cool = bake.findIndex((stage) => stage.startsWith('cool.'));
  const hot = ovenStagesOf(process.vessel).filter(ticked);
  return [...bake.slice(0, cool), ...hot, ...bake.slice(cool)];
};

/** Stages that have no tick of their own stand at their neighbour's. */
const STANDS_AT: Readonly<Record<string, string>> = {
  'proof.soon': 'proof.warm',
  // Where nothing else is warm: loaves that stand out after the fridge.
  'proof.warm': 'proof.look',
  'proof.poke': 'proof.look',
  'oven.queued': 'turnOn',
  off: 'turnOn',
  holding: 'preheating',
  standing: 'poke',
  recover: 'poke',
  tray: 'load',
  'rescue.tray': 'turnOn',
};

/** The oven's stage while it heats for this bake's loaves and they still rise; else null. */
export const ovenAhead = (kitchen: Kitchen, { who, bake }: Focus): string | null => {
  const stage = stageOf(kitchen.oven);
  const heats = stage === 'preheating' || stage === 'holding';
  const soon = soonBakes(kitchen).some(({ context }) => context.id === bake.context.id);
  return who !== 'oven' && heats && soon ? stage : null;
};

/** Which tick a stage stands at; the first where it has none. */
export const tickOf = (steps: readonly string[], stage: string): number => {
  const at = steps.indexOf(stage);
  const neighbour = STANDS_AT[stage];
  return at < 0 && neighbour !== undefined ? tickOf(steps, neighbour) : Math.max(0, at);
};

/** Where the steps of a bake open a new part: those ticks are long. */
export const isLong = (steps: readonly string[], i: number): boolean =>
  steps[i]?.split('.')[0] !== steps[i - 1]?.split('.')[0] && (steps[i] ?? '').includes('.');
