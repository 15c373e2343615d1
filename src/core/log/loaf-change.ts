import type { LoafDay } from './loaf-day.ts';
import type { LoafCause, LoafChange } from './loaf-names.ts';

/** A dough this cool or warm is the thing to change first, °C. Judgement. */
const DOUGH = { cool: 22, warm: 28 } as const;
/** From this share of the wanted rise on the bulk was long enough, up to this not too long. Judgement. */
const ENOUGH = { least: 0.9, most: 1.15 } as const;
/** As in `loaf-day.ts`, %. */
const WANTED = 75;

const PLAIN: Readonly<Record<Exclude<LoafCause, 'well' | 'skin'>, LoafChange>> = {
  under: 'longerBulk',
  short: 'longerBulk',
  over: 'shorterBulk',
  cutHot: 'coolLonger',
  notBaked: 'bakeLonger',
  benchFlour: 'lessFlour',
  ovenLow: 'hotterOven',
  ovenHot: 'coolerOven',
  wetFilling: 'drierFilling',
};

/**
 * The one thing to change for a cause, by where in the day it came about: a cool dough before a short
 * bulk, a long stay in the cold before a long bulk. Common practice, no source.
 *
 * @example
 * changeFor('under', {}, { doughCelsius: 20 }) // → 'warmerDough'
 * changeFor('over', {}, {}) // → 'shorterBulk'
 */
export function changeFor(
  cause: Exclude<LoafCause, 'well'>,
  answers: { readonly base?: string; readonly spread?: string },
  { doughCelsius, rise, coldHours }: LoafDay,
): LoafChange {
  const share = rise === undefined ? null : rise.percent / (rise.wanted ?? WANTED);
  if (cause === 'skin') return answers.spread === 'spread' ? 'tighterSkin' : 'coverSkin';
  if (cause === 'ovenHot' && answers.base === 'dark') return 'trayBelow';
  if (cause === 'under' || cause === 'short') {
    if (doughCelsius !== undefined && doughCelsius < DOUGH.cool) return 'warmerDough';
    return share !== null && share >= ENOUGH.least ? 'longerProof' : 'longerBulk';
  }
  if (cause === 'over') {
    if (doughCelsius !== undefined && doughCelsius > DOUGH.warm) return 'coolerDough';
    const cold = (coldHours ?? 0) > 0;
    return cold && share !== null && share <= ENOUGH.most ? 'shorterCold' : 'shorterBulk';
  }
  return PLAIN[cause];
}
