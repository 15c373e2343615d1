import { loads } from '../oven/loads.ts';
import type { Recipe } from '../formula/recipe.ts';
import { OPENING_BELIEF } from '../readiness/belief.ts';
import type { BakeStage, OvenStage } from '../records/stage.ts';
import { isWarm } from '../formula/is-warm.ts';
import { bakeStagesOf } from '../records/stages-of.ts';
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
  /** The last loaf out of the oven, as it usually goes: `ends.likely`. */
  readonly out: Instant;
  /** The same where levain and dough are both at the quick or both at the slow end. */
  readonly ends: { readonly earliest: Instant; readonly likely: Instant; readonly latest: Instant };
  readonly cooled: Instant;
}

/** Where the walk begins. */
export interface OutlineInput {
  readonly recipe: Recipe;
  readonly kitchen: Celsius;
  readonly from: BakeStage;
  readonly now: Instant;
  /** Loaves one load takes; one unless given. */
  readonly perLoad?: number;
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
  'shape.scoop': { base: 3, each: 2 },
  'proof.toFridge': { base: 5, each: 0 },
  'proof.look': { base: 2, each: 0 },
  'proof.poke': { base: 2, each: 0 },
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
  'proof.warm',
  'cool.cooling',
];
/** Waits that the dough decides. */
const DOUGH: readonly BakeStage[] = ['levain.ripening', 'bulk.proving', 'proof.warm'];
/** Hands a load takes: score, load, lid, look, unload. Practice. */
const LOAD_HANDS: Minutes = 10;

/** One walk; the waits that the dough decides end at `end` of their window. */
function walk(
  { recipe, kitchen, from, now, perLoad = 1 }: OutlineInput,
  end: 'earliest' | 'likely' | 'latest',
): Pick<Outline, 'touches' | 'cold' | 'out'> {
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
      prior: OPENING_BELIEF,
      seen: [],
      done: [],
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
    // For a warm proof it is hot by the time the loaves are.
    if (!isWarm(process) || from === 'oven.queued') wait('preheating', 'hot');
    const each = process.lidded + process.open;
    const many = loads(loaves, perLoad);
    walked.push({ stage: 'oven.queued', at, hands: LOAD_HANDS * many });
    at += (many * each + (many - 1) * process.recovery) * MINUTE;
    out = at;
  };
  const stages = bakeStagesOf(process);
  for (const stage of stages.slice(Math.max(0, stages.indexOf(from)))) {
    entered[stage] = at;
    if (stage === 'bulk.between') bulkTouches();
    else if (stage === 'bulk.fold' || stage === 'bulk.spread') continue;
    else if (stage === 'oven.queued') bake();
    else if (WAITS.includes(stage)) {
      const began = at;
      if (stage === 'proof.retard') {
        at += process.retard * MINUTE;
        cold = { from: began, to: at };
      } else wait(stage, DOUGH.includes(stage) ? end : 'end');
    } else touch(stage);
  }
  return { touches: walked, cold, out };
}

/**
 * Walks the usual bake from `from`: waits at their likely length, touches at their usual minutes,
 * `perLoad` loaves a load. Nothing here is a promise: the waits that the dough decides show their window later.
 * `ends` moves those two waits to the 10 % or 90 % end of a starter never baked with.
 */
export function planOutline(input: OutlineInput): Outline {
  const { touches, cold, out } = walk(input, 'likely');
  const earliest = walk(input, 'earliest').out;
  const latest = walk(input, 'latest').out;
  return {
    touches,
    handsOn: touches.reduce((sum, { hands }) => sum + hands, 0),
    loads: loads(input.recipe.loaves, input.perLoad ?? 1),
    cold,
    out,
    ends: { earliest, likely: out, latest },
    cooled: out + input.recipe.process.cool * MINUTE,
  };
}
