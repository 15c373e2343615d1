import type { Recipe } from '../../core/formula/recipe.ts';
import { BAKE_STAGES, OVEN_STAGES } from '../../core/records/stage.ts';

const SKIPPED = ['rescue.tray', 'done', 'ended', 'oven.queued'];
const SHEET = ['bulk.spread', 'bulk.scatter', 'bulk.roll'];
const LID = ['lidded', 'lift'];
const STEAM = ['steaming', 'vent'];
const OVEN = OVEN_STAGES.filter((stage) => !['off', 'standing', 'recover'].includes(stage));

/** The steps of a bake in the order they come, the oven's in their place: the edge's ticks. */
export const stepsOf = (recipe: Recipe): readonly string[] => {
  const sheet = recipe.process.touches.some((touch) => touch.kind === 'laminate');
  const bake = BAKE_STAGES.filter(
    (stage) => !SKIPPED.includes(stage) && (sheet || !SHEET.includes(stage)),
  );
  const cool = bake.findIndex((stage) => stage.startsWith('cool.'));
  const none = recipe.process.vessel === 'stone' ? LID : STEAM;
  const hot = OVEN.filter((stage) => !none.includes(stage));
  return [...bake.slice(0, cool), ...hot, ...bake.slice(cool)];
};

/** Stages that have no tick of their own stand at their neighbour's. */
const STANDS_AT: Readonly<Record<string, string>> = {
  'oven.queued': 'turnOn',
  off: 'turnOn',
  standing: 'poke',
  recover: 'poke',
  'rescue.tray': 'turnOn',
};

/** Which tick a stage stands at; the first where it has none. */
export const tickOf = (steps: readonly string[], stage: string): number =>
  Math.max(0, steps.indexOf(STANDS_AT[stage] ?? stage));
