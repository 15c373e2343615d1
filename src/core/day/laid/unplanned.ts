import { bowlsFor } from '../../kitchen/bowls.ts';
import { plan } from '../plan.ts';
import { expandFormula, whyNoPlan } from '../plan/expand.ts';
import type { Batch, PlanInput, Span } from '../plan/types.ts';
import { MINUTE, type Minutes } from '../../units.ts';
import type { BakeSpan } from './bake-span.ts';
import { kitchenFor, type AskWorld, type RunningBake } from './ask-world.ts';
import type { DayAsk } from './day-plan.ts';
import { cutBatch } from './live-batch.ts';

/** When bakes that nobody planned want hands, and the oven. */
export interface Unplanned {
  readonly hands: readonly BakeSpan[];
  readonly oven: readonly Span[];
}

/** More bowls than any bake holds: it has what it stands in. Judgement. */
const ENOUGH = 99;
/** Nobody looks further on than this for what is left of a bake, min. Judgement. */
const HORIZON: Minutes = 4 * 24 * 60;

/** What is left of a running bake, as a batch of its own from now on; null where nothing is. */
function leftOf(
  ask: DayAsk,
  { bake, recipe, loaves }: RunningBake,
  world: AskWorld,
  blocked: readonly Span[],
): Batch | null {
  const { now, equipment, running } = world;
  if (loaves.length === 0) return null;
  const made = { ...recipe, loaves: loaves.length };
  const kitchen = kitchenFor(ask, { recipe: made }, equipment);
  if (whyNoPlan(made, kitchen, ask.belief)) return null;
  const bowls = bowlsFor(recipe.dough, equipment.bowls);
  const steps = expandFormula(made, { ...kitchen, bowls }, ask.belief);
  const batch: Batch = { name: bake, loaves: loaves.length, steps, due: null, startAt: now };
  const name = recipe.formula.name;
  const asked = { name, recipe: made, due: null, startAt: now, bake, pins: {} };
  const kitchenNow = running!.places;
  return cutBatch(batch, { asked, kitchen: kitchenNow, loaves, touches: null, blocked, now }).batch;
}

/** A bake laid by itself: its hands, and the oven from its first load to its last. */
function usesOf(batch: Batch, name: string, input: PlanInput): Unplanned {
  const one = { ...input, batches: [{ ...batch, horizonMinutes: HORIZON }] };
  const laid = plan(one, { why: false });
  // Somebody has to do it, away or not.
  const result = laid.fits ? laid : plan({ ...one, blocked: [] }, { why: false });
  if (!result.fits) return { hands: [], oven: [] };
  const hands = result.touches.flatMap(({ at, hands: minutes }): BakeSpan[] =>
    minutes > 0
      ? [{ name, bake: batch.name, from: at, to: at + minutes * MINUTE, canBend: false }]
      : [],
  );
  const held = batch.steps.flatMap((step) => {
    const touch = result.touches.find((other) => other.name === step.name);
    if (touch === undefined || (step.uses?.oven !== 1 && step.ovenAfter === undefined)) return [];
    return [[touch.at, touch.at + (touch.hands + (step.ovenAfter ?? 0)) * MINUTE] as const];
  });
  if (held.length === 0) return { hands, oven: [] };
  const from = Math.min(...held.map(([at]) => at));
  return { hands, oven: [{ name, from, to: Math.max(...held.map(([, to]) => to)) }] };
}

/**
 * What running bakes that are not in an ask still want of the kitchen: each laid by itself from where it
 * stands, as soon as is good. Bakes of the ask are left out. A guess, for nobody planned them.
 */
export function unplannedUse(ask: DayAsk, world: AskWorld, blocked: readonly Span[]): Unplanned {
  const { running, now, equipment } = world;
  const planned = new Set(ask.bakes.map(({ bake }) => bake));
  const uses = (running?.bakes ?? [])
    .filter(({ bake }) => !planned.has(bake))
    .map((bake): Unplanned => {
      const batch = leftOf(ask, bake, world, blocked);
      if (batch === null) return { hands: [], oven: [] };
      const kitchen = kitchenFor(ask, bake, equipment);
      const roomy = { ...kitchen, fridgePlaces: bake.loaves.length, bowls: ENOUGH };
      return usesOf(batch, bake.recipe.formula.name, {
        planFrom: now,
        now,
        blocked: [...blocked],
        ratherNot: [],
        kitchen: roomy,
        batches: [],
      });
    });
  return { hands: uses.flatMap(({ hands }) => hands), oven: uses.flatMap(({ oven }) => oven) };
}
