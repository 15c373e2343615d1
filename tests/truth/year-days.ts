import type { Dice } from './synthetic.ts';

/**
 * A year of one kitchen, invented: 120 bakes of one dough, a kitchen that is warmest in late July, and
 * a starter whose ln v goes its own way from bake to bake.
 */
export const BAKES = 120;
export const DAYS = 365;
const WARMEST = 205;
/** Kitchen over the year, °C. Invented. */
const KITCHEN = { middle: 21.5, swing: 3.5, sd: 1 } as const;
/** The dough's own temperature: most of it the baker's water, some the kitchen's. Invented. */
const MIXED = { middle: 25.5, share: 0.3, sd: 0.7 } as const;

export const VIGOUR_SD = 0.25;
export const STEP_SD = 0.1;

/** When a baker looks, as shares of the ETA as it then stands, and how far beside it. */
export const LOOKS = [0.45, 0.7, 0.85];
export const BESIDE = 0.05;

/**
 * How the starter goes: 'walks' freely, sd .10 a bake; 'homes', the same but drawn back to its usual
 * speed, so that it keeps an sd of .25; 'leaps', each bake drawn anew.
 */
export type Starter = 'walks' | 'homes' | 'leaps';

const PULL = Math.sqrt(1 - (STEP_SD / VIGOUR_SD) ** 2);

const next = (dice: Dice, starter: Starter, before: number): number => {
  if (starter === 'leaps') return dice.normal(0, VIGOUR_SD);
  return (starter === 'homes' ? PULL : 1) * before + dice.normal(0, STEP_SD);
};

/** What one bake of the year really is: its starter's ln v, its room and its dough out of the mix, °C. */
export interface YearDay {
  readonly lnV: number;
  readonly room: number;
  readonly mixed: number;
}

/** The days of a year in order. */
export function yearDays(dice: Dice, starter: Starter): readonly YearDay[] {
  let lnV = dice.normal(0, VIGOUR_SD);
  return Array.from({ length: BAKES }, (_, i) => {
    if (i > 0) lnV = next(dice, starter, lnV);
    const turn = Math.cos((2 * Math.PI * ((i * DAYS) / BAKES - WARMEST)) / DAYS);
    const room = dice.normal(KITCHEN.middle + KITCHEN.swing * turn, KITCHEN.sd);
    const mixed = MIXED.middle + MIXED.share * (room - KITCHEN.middle);
    return { lnV, room, mixed: dice.normal(mixed, MIXED.sd) };
  });
}
