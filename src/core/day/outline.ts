import { loads } from '../oven/loads.ts';
import type { Recipe } from '../formula/recipe.ts';
import { OPENING_BELIEF } from '../readiness/belief.ts';
import { BAKE_STAGES, type BakeStage, type OvenStage } from '../records/stage.ts';
import { MINUTE, type Celsius, type Instant, type Minutes } from '../units.ts';
import { waitFor } from './waits.ts';

/** One time that needs hands. */
export interface Touch {
  readonly stage: BakeStage;
  readonly at: Instant;
  readonly hands: Minutes;
}

/** A bake as it usually goes: when hands are needed, how long in all, when the bread is out. */
export interface Outline {
  readonly touches: readonly Touch[];
  readonly handsOn: Minutes;
  readonly loads: number;
  /** In the fridge, or null. */
  readonly cold: { readonly from: Instant; readonly to: Instant } | null;
  readonly out: Instant;
  readonly cooled: Instant;
}

/** Usual minutes of hands a touch takes; per loaf where `each`. Practice; mixing and pots seen. */
const HANDS: Readonly<Partial<Record<BakeStage, { base: Minutes; each: Minutes }>>> = {
  'levain.feed': { base: 5, each: 0 },
  'levain.look': { base: 1, each: 0 },
  'levain.ripe': { base: 2, each: 0 },
  'mix.weigh': { base: 8, each: 0 },
  'mix.first': { base: 7, each: 0 },
  'mix.work': { base: 15, each: 0 },
  'mix.temperature': { base: 1, each: 0 },
  'bulk.fold': { base: 5, each: 0 },
  'bulk.spread': { base: 10, each: 0 },
  'bulk.look': { base: 2, each: 0 },
  'shape.divide': { base: 2, each: 1 },
  'shape.preshape': { base: 0, each: 1 },
  'shape.finalShape': { base: 0, each: 2 },
  'shape.basket': { base: 0, each: 1 },
  'proof.toFridge': { base: 5, each: 0 },
  'proof.look': { base: 2, each: 0 },
  'cool.handOver': { base: 5, each: 0 },
};

/** Stages the usual walk of a bulk passes besides `BAKE_STAGES`' own order. */
const WAITS: readonly BakeStage[] = [
  'levain.ripening',
  'mix.rest',
  'bulk.proving',
  'shape.benchRest',
  'proof.counter',
  'proof.retard',
  'cool.cooling',
];
/** Hands a load takes: score, load, lid, look, unload. Practice. */
const LOAD_HANDS: Minutes = 10;

/**
 * Walks the usual bake from `from`: waits at their likely length, touches at their usual minutes,
 * one pot. Nothing here is a promise: the waits that the dough decides show their window later.
 */
export function planOutline({
  recipe,
  kitchen,
  from,
  now,
}: {
  readonly recipe: Recipe;
  readonly kitchen: Celsius;
  readonly from: BakeStage;
  readonly now: Instant;
}): Outline {
  const { process, loaves } = recipe;
  const walked: Touch[] = [];
  const entered: Record<string, Instant> = {};
  let at = now;
  let cold: Outline['cold'] = null;
  let out = now;
  const touch = (stage: BakeStage): void => {
    const { base, each } = HANDS[stage] ?? { base: 0, each: 0 };
    const hands = base + each * loaves;
    if (hands > 0) walked.push({ stage, at, hands });
    at += hands * MINUTE;
  };
  const wait = (stage: BakeStage | OvenStage, mark: string): void => {
    const { marks } = waitFor({
      stage,
      now: at,
      recipe,
      kitchen,
      entered,
      touches: process.touches.length,
      belief: OPENING_BELIEF,
      readings: {},
      again: false,
    });
    at = Math.max(at, marks[mark] ?? at);
  };
  const bulkTouches = (): void => {
    for (const { kind, after } of process.touches) {
      at += after * MINUTE;
      touch(kind === 'fold' ? 'bulk.fold' : 'bulk.spread');
    }
  };
  const bake = (): void => {
    wait('preheating', 'hot');
    const each = process.lidded + process.open;
    const many = loads(loaves, 1);
    walked.push({ stage: 'oven.queued', at, hands: LOAD_HANDS * many });
    at += (many * each + (many - 1) * process.recovery) * MINUTE;
    out = at;
  };
  for (const stage of BAKE_STAGES.slice(BAKE_STAGES.indexOf(from))) {
    if (stage === 'rescue.tray') break;
    entered[stage] = at;
    if (stage === 'bulk.between') bulkTouches();
    else if (stage === 'bulk.fold' || stage === 'bulk.spread') continue;
    else if (stage === 'oven.queued') bake();
    else if (WAITS.includes(stage)) {
      const began = at;
      wait(
        stage,
        stage === 'levain.ripening' || stage === 'bulk.proving' ? 'likely' : markOf(stage),
      );
      if (stage === 'proof.retard') cold = { from: began, to: at };
    } else touch(stage);
  }
  return {
    touches: walked,
    handsOn: walked.reduce((sum, { hands }) => sum + hands, 0),
    loads: loads(loaves, 1),
    cold,
    out,
    cooled: out + process.cool * MINUTE,
  };
}

const markOf = (stage: BakeStage): string => (stage === 'proof.retard' ? 'look' : 'end');
