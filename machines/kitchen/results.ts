import type { WaitInput } from '../../src/core/day/waits.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { OPENING_BELIEF, type Belief } from '../../src/core/readiness/belief.ts';
import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { BakeStage, OvenStage } from '../../src/core/records/stage.ts';
import type { Celsius, Instant } from '../../src/core/units.ts';
import { deadlineOf } from './dues.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';
import { metaOf, stageOf } from './stage-of.ts';

/** What tells a wait its instants; the app gives the core's, tests a plain one. */
export type WaitModel = (input: WaitInput) => {
  readonly marks: Readonly<Record<string, Instant>>;
  readonly belief?: Belief;
  readonly model: string;
};

/** Acts that mean "not yet": the wait they lead back to is not the first of its kind. */
const AGAIN = ['levainNotYet', 'bulkNotYet', 'loafNotYet', 'pokeNotYet', 'crustNotYet'];

const isAgain = (fact: Fact): boolean => fact.kind === 'press' && AGAIN.includes(fact.act);

/** The recipe that the oven's minutes are for: of what is in it, else of what waits first. */
const ovenRecipe = (kitchen: Kitchen): { recipe: Recipe; kitchen: Celsius } | null => {
  const { load, waiting } = kitchen.oven.context;
  const loaf = load[0] ?? waiting[0];
  const start = Object.values(kitchen.starts).findLast((s) => s.loaves.includes(loaf ?? ''));
  return start ? { recipe: start.recipe, kitchen: start.kitchen } : null;
};

const ovenResult = (kitchen: Kitchen, again: boolean, wait: WaitModel): Result[] => {
  const stage = stageOf(kitchen.oven) as OvenStage;
  const of = ovenRecipe(kitchen);
  const waits = metaOf(kitchen.oven).waits !== undefined;
  if (!waits || of === null || deadlineOf(kitchen.oven) !== null) return [];
  const { entered } = kitchen.oven.context;
  const { marks, model } = wait({
    ...of,
    stage,
    now: entered[stage] ?? kitchen.now,
    entered,
    touches: 0,
    belief: OPENING_BELIEF,
    readings: {},
    again,
  });
  return [{ who: 'oven', stage, marks, model }];
};

const bakeResult = (
  bake: BakeSnapshot,
  { now, measured, again }: { now: Instant; measured: boolean; again: boolean },
  wait: WaitModel,
): Result[] => {
  const stage = stageOf(bake) as BakeStage;
  if (metaOf(bake).waits === undefined) return [];
  if (deadlineOf(bake) !== null && !measured) return [];
  const { id, recipe, kitchen, entered, touches, belief, readings } = bake.context;
  const said = wait({
    stage,
    now: entered[stage] ?? now,
    recipe,
    kitchen,
    entered,
    touches,
    belief,
    readings,
    again,
  });
  return [
    {
      who: id,
      stage,
      marks: said.marks,
      ...(said.belief ? { belief: said.belief } : {}),
      model: said.model,
    },
  ];
};

/** Which bake a reading or its correction speaks of, if the fact is one. */
const measuredBake = (kitchen: Kitchen, fact: Fact): string | null => {
  if (fact.kind === 'reading') return fact.bake;
  if (fact.kind !== 'correct') return null;
  const old = kitchen.standing.find((standing) => standing.id === fact.target);
  return old?.kind === 'reading' ? old.bake : null;
};

/**
 * The models' one run for a fact, on the kitchen that the bare fact leads to: every wait that has
 * no instants yet, and the wait of a bake just measured. What comes back is attached to the fact.
 */
export const resultsFor = (dry: Kitchen, fact: Fact, wait: WaitModel): Result[] => {
  const again = isAgain(fact);
  const measured = measuredBake(dry, fact);
  return [
    ...ovenResult(dry, again, wait),
    ...Object.values(dry.bakes).flatMap((bake) =>
      bakeResult(bake, { now: dry.now, measured: bake.context.id === measured, again }, wait),
    ),
  ];
};
