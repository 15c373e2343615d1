import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { starterWait } from '../../src/core/day/starter-wait.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import { makeRecipe } from '../../src/core/formula/make-recipe.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { forecastError, type ForecastError } from '../../src/core/log/forecast-error.ts';
import { DAY, MINUTE, type Minutes } from '../../src/core/units.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { trueDough } from '../machines/support/true-dough.ts';
import { makeDice, READING_SD, type Dice } from './synthetic.ts';
import { BAKES, BESIDE, DAYS, LOOKS, yearDays, type Starter, type YearDay } from './year-days.ts';

/** What a thermometer in a dough is off by, K. Invented. */
const THERMOMETER_SD = 0.2;
/** Readings are this far apart at least, min: nearer ones are one look. */
const APART: Minutes = 12;

function recipe(): Recipe {
  const file = new URL('../../assets/formulas/lane-wheat.json', import.meta.url);
  const formula = JSON.parse(readFileSync(fileURLToPath(file), 'utf8')) as Formula;
  const made = makeRecipe(formula, { loaves: 2, piece: formula.piece });
  if (made.recipe === null) throw new Error(made.reason.key);
  return made.recipe;
}

const must = (taken: boolean, what: string): void => {
  if (!taken) throw new Error(`Refused: ${what}.`);
};

/**
 * One dough of the year, keyed on the machine: weighed, mixed, its temperature taken, folded, its rise
 * told three times, and called ready at the minute it truly is. The machine never hears of ln v.
 */
function bakeOn(hand: Hand, bake: string, day: YearDay, dice: Dice, of: Recipe): ForecastError {
  const { lnV, room, mixed } = day;
  const loaves = [`${bake}.1`, `${bake}.2`];
  const kitchen = Math.round(2 * room) / 2;
  must(hand.do({ kind: 'start', bake, loaves, from: 'mix.weigh', recipe: of, kitchen }), 'start');
  walkTo(hand, bake, 'mix.temperature', bake);
  const { entered } = hand.kitchen.bakes[bake]!.context;
  const begin = entered['mix.first']!;
  const dough = trueDough(of, { begin, salted: entered['mix.work']! }, { lnV, room, from: mixed });
  const celsius = dice.normal(dough.celsius(hand.now), THERMOMETER_SD);
  must(hand.dough(bake, Math.round(10 * celsius) / 10), 'dough');
  const ready = Math.round(dough.ready);
  let looked = 0;
  let last = begin;
  for (let steps = 0; steps < 200; steps += 1) {
    const stage = hand.stage(bake);
    if (stage === 'bulk.fold') must(hand.press(bake, 'folded'), 'folded');
    else if (stage === 'bulk.look') {
      if (hand.now >= ready) break;
      must(hand.press(bake, 'bulkNotYet'), 'bulkNotYet');
    } else {
      const { likely } = hand.kitchen.bakes[bake]!.context.marks;
      const share = (LOOKS[looked] ?? Infinity) * Math.exp(dice.normal(0, BESIDE));
      const look = Math.max(hand.now, last + APART * MINUTE, begin + share * (likely! - begin));
      const end = stage === 'bulk.proving' ? ready : Infinity;
      const to = Math.max(hand.now, Math.min(look, end, hand.deadline(bake)!));
      const reads = looked < LOOKS.length && look <= to;
      hand.turnTo(Math.round(to));
      if (reads) {
        const percent = Math.max(0, Math.round(dice.normal(dough.percent(hand.now), READING_SD)));
        must(hand.measure(bake, { what: 'rise', percent, of: 'dough' }), 'rise');
        last = hand.now;
        looked += 1;
      } else if (stage === 'bulk.proving' && hand.now >= ready) break;
    }
  }
  must(hand.press(bake, 'bulkReady'), 'bulkReady');
  must(hand.press(bake, 'ended'), 'ended');
  return forecastError(hand.records.slice(-200), bake)!;
}

/** First forecasts of a year read off its facts, min: late above 0, what nobody learned from and what was. */
export interface MachineYear {
  readonly unlearned: readonly Minutes[];
  readonly carried: readonly Minutes[];
}

/**
 * An invented year on the real machine with a turned clock, twice the same doughs and the same scatter: in
 * one kitchen that keeps its log, and in kitchens without a past. The errors are read off the facts as the
 * Log reads them.
 */
export function machineYear(starter: Starter, seed: number): MachineYear {
  const days = yearDays(makeDice(seed), starter);
  const of = recipe();
  const fresh = (at: number): Hand => new Hand({ now: at, wait: waitFor, starter: starterWait });
  const from = Date.UTC(2031, 0, 1, 8);
  const keeps = fresh(from);
  const each = days.map((day, i) => {
    const at = Math.round(from + (i * DAYS * DAY) / BAKES);
    const dice = (): Dice => makeDice(seed * 1_000 + i);
    keeps.turnTo(Math.max(at, keeps.now));
    const carried = bakeOn(keeps, `bake-${i + 1}`, day, dice(), of).late;
    const unlearned = bakeOn(fresh(at), `bake-${i + 1}`, day, dice(), of).late;
    return { carried, unlearned };
  });
  return {
    unlearned: each.map((one) => one.unlearned),
    carried: each.map((one) => one.carried),
  };
}

/** Root of the mean of squares. */
export const rms = (errors: readonly number[]): number =>
  Math.sqrt(errors.reduce((sum, one) => sum + one ** 2, 0) / errors.length);

/** By how much of the unlearned error the carried one is less; below 0 it is more. */
export const machineGain = ({ unlearned, carried }: MachineYear): number =>
  1 - rms(carried) / rms(unlearned);

/** Fixed, and printed: the first is walked in every run of the tests. */
export const MACHINE_SEEDS = [1, 2, 3, 4, 5];
