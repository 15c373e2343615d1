import { bakeLoss } from '../formula/bake-loss.ts';
import type { Grams } from '../units.ts';

/** A piece as it was divided, and the cool loaf it became. */
export interface WeighIn {
  readonly dough: Grams;
  readonly loaf: Grams;
}

/** What is believed of the share of dough that leaves in the oven, 0–1. */
export interface LossBelief {
  readonly mean: number;
  readonly sd: number;
}

/** 10–13 %. Common practice, no source; the sd is judgement. */
export const LOSS_PRIOR: LossBelief = { mean: 0.115, sd: 0.02 };
/** Scatter from loaf to loaf: scale, place in the oven, colour. Judgement. */
const LOAF_SD = 0.015;
/** A loss outside is another loaf's weight, or a slip of the keys. Judgement. */
const PLAUSIBLE = { least: 0.02, most: 0.3 } as const;

/** `count`: weigh-ins that were used; `odd`: kept by the log, but not believed. */
export interface LearnedLoss extends LossBelief {
  readonly count: number;
  readonly odd: number;
}

/**
 * Bake loss learned from weigh-ins, 0–1: N(.115, .02²) weighed with each loaf's own loss ± .015, exact
 * for normals; what is implausible (under 2 %, over 30 %, no weight) is counted and left out. `prior`:
 * what is believed instead of the usual, as of a tin or a small loaf.
 * Source: 10–13 % common practice, no source; scatters are judgement.
 *
 * @example
 * learnedLoss([]).mean // → 0.115
 * learnedLoss([{ dough: 900, loaf: 774 }]).mean // → 0.1310
 */
export function learnedLoss(
  weighIns: readonly WeighIn[],
  prior: LossBelief = LOSS_PRIOR,
): LearnedLoss {
  const losses = weighIns.map(({ dough, loaf }) => 1 - loaf / dough);
  const good = losses.filter(isPlausibleLoss);
  const [before, each] = [1 / prior.sd ** 2, 1 / LOAF_SD ** 2];
  const weight = before + good.length * each;
  const sum = good.reduce((all, loss) => all + loss * each, prior.mean * before);
  return {
    mean: sum / weight,
    sd: Math.sqrt(1 / weight),
    count: good.length,
    odd: losses.length - good.length,
  };
}

/** Whether a share of dough may have left in the oven. */
export const isPlausibleLoss = (loss: number): boolean =>
  loss >= PLAUSIBLE.least && loss <= PLAUSIBLE.most;

/**
 * Bake loss of a piece of so many grams in this kitchen, 0–1: what is usual at its size (`bakeLoss`), weighed
 * with what other loaves lost more or less than is usual at theirs.
 * Source: as `learnedLoss`; that small loaves lose more, as `bakeLoss`.
 *
 * @example
 * lossOf(900, []).mean // → 0.13
 * lossOf(400, [{ dough: 900, loaf: 765 }]).mean // → 0.1728
 */
export function lossOf(piece: Grams, weighIns: readonly WeighIn[]): LearnedLoss {
  const usual = bakeLoss(piece);
  const good = weighIns.filter(({ dough, loaf }) => isPlausibleLoss(1 - loaf / dough));
  const asHere = good.map(({ dough, loaf }) => ({
    dough,
    loaf: loaf + dough * (bakeLoss(dough) - usual),
  }));
  const learned = learnedLoss(asHere, { mean: usual, sd: LOSS_PRIOR.sd });
  return { ...learned, odd: weighIns.length - learned.count };
}

/**
 * Dough to divide for a loaf of so many grams when it is cool, by the loss that is believed.
 *
 * @example
 * doughForLoaf(800, { mean: 0.2, sd: 0.02 }) // → 1000
 */
export const doughForLoaf = (loaf: Grams, { mean }: LossBelief): Grams => loaf / (1 - mean);
