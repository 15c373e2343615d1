import {
  LOAF_CAUSES,
  LOAF_SIGNS,
  type LoafCause,
  type LoafSign,
  type Shown,
} from './loaf-names.ts';

/** A number for every cause: how likely something is under it. */
export type Likely = Readonly<Record<LoafCause, number>>;

/** How often each cause is met before anything is seen, as shares of one. Judgement. */
export const BEFORE: Likely = {
  under: 0.18,
  short: 0.15,
  over: 0.12,
  cutHot: 0.06,
  notBaked: 0.07,
  skin: 0.08,
  benchFlour: 0.04,
  ovenLow: 0.06,
  ovenHot: 0.05,
  wetFilling: 0.05,
  well: 0.14,
};

/** One column a value, in the order of `LOAF_SIGNS`. */
type Columns = Readonly<Record<LoafCause, readonly number[]>>;

/**
 * Of a hundred loaves with this cause and no other, how many show each value. Which sign goes with
 * which cause is common practice, no source; the numbers are judgement. A loaf that shows a fault is
 * not well, by the word; a sour one may be.
 */
export const SHOWS: Readonly<Record<LoafSign, Columns>> = {
  holes: {
    under: [30, 38, 27, 5],
    short: [35, 22, 38, 5],
    over: [38, 40, 17, 5],
    cutHot: [45, 6, 44, 5],
    notBaked: [45, 8, 42, 5],
    skin: [15, 62, 18, 5],
    benchFlour: [35, 25, 35, 5],
    ovenLow: [60, 5, 30, 5],
    ovenHot: [40, 30, 25, 5],
    wetFilling: [15, 8, 12, 65],
    well: [50, 0, 50, 0],
  },
  crumb: {
    under: [5, 40, 30, 22, 3],
    short: [35, 25, 25, 12, 3],
    over: [35, 15, 15, 30, 5],
    cutHot: [25, 5, 5, 62, 3],
    notBaked: [12, 12, 5, 68, 3],
    skin: [55, 12, 20, 10, 3],
    benchFlour: [15, 5, 15, 5, 60],
    ovenLow: [35, 25, 5, 30, 5],
    ovenHot: [60, 12, 8, 17, 3],
    wetFilling: [22, 10, 20, 45, 3],
    well: [100, 0, 0, 0, 0],
  },
  spread: {
    under: [28, 17, 55],
    short: [55, 8, 37],
    over: [10, 87, 3],
    cutHot: [72, 18, 10],
    notBaked: [60, 30, 10],
    skin: [38, 22, 40],
    benchFlour: [55, 20, 25],
    ovenLow: [40, 50, 10],
    ovenHot: [62, 8, 30],
    wetFilling: [50, 40, 10],
    well: [100, 0, 0],
  },
  base: {
    under: [25, 70, 5],
    short: [60, 32, 8],
    over: [65, 27, 8],
    cutHot: [55, 37, 8],
    notBaked: [40, 57, 3],
    skin: [82, 10, 8],
    benchFlour: [80, 12, 8],
    ovenLow: [60, 37, 3],
    ovenHot: [35, 5, 60],
    wetFilling: [55, 37, 8],
    well: [100, 0, 0],
  },
  crust: {
    under: [55, 15, 30],
    short: [72, 10, 18],
    over: [35, 60, 5],
    cutHot: [78, 12, 10],
    notBaked: [45, 50, 5],
    skin: [70, 15, 15],
    benchFlour: [70, 18, 12],
    ovenLow: [25, 73, 2],
    ovenHot: [13, 2, 85],
    wetFilling: [68, 22, 10],
    well: [100, 0, 0],
  },
  sour: {
    under: [92, 8],
    short: [88, 12],
    over: [30, 70],
    cutHot: [80, 20],
    notBaked: [80, 20],
    skin: [80, 20],
    benchFlour: [80, 20],
    ovenLow: [80, 20],
    ovenHot: [80, 20],
    wetFilling: [80, 20],
    well: [88, 12],
  },
};

/** One number for each cause. */
export const eachCause = (number: (cause: LoafCause) => number): Likely =>
  Object.fromEntries(LOAF_CAUSES.map((cause) => [cause, number(cause)])) as Record<
    LoafCause,
    number
  >;

/**
 * How likely a loaf is to show this, cause by cause, 0–1.
 *
 * @example
 * likelyTo('sour', 'sour').over // → 0.7
 */
export const likelyTo = <S extends LoafSign>(sign: S, shown: Shown<S>): Likely => {
  const column = (LOAF_SIGNS[sign] as readonly string[]).indexOf(shown);
  return eachCause((cause) => (SHOWS[sign][cause][column] ?? 0) / 100);
};
