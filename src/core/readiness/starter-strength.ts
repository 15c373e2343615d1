import { ripeGrowth, seedShare, USABLE } from '../clock/levain-ripe.ts';
import { rise } from '../clock/rise.ts';
import { TAU } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import type { Starter, StarterSign, Top } from '../records/starter.ts';
import { HOUR, MINUTE, type Instant } from '../units.ts';
import type { Belief } from './belief.ts';
import { openPosterior, weighIn, type Posterior } from './posterior.ts';

type Fed = NonNullable<Starter['fed']>;
type Told = Pick<Starter, 'fed' | 'signs'>;

/** Two looks are two only this far apart; of nearer ones the later stands. Judgement. */
export const APART = 30 * MINUTE;

/** How high a jar of starter comes at its highest, as a share of what was put in: ln H ~ N(ln 1.2, .7²). Judgement. */
const PEAK = { mean: Math.log(1.2), sd: 0.7, points: 41, reach: 3 } as const;
/** Scatter of a rise told by eye, % points: pictures are a quarter to a half apart. Judgement. */
const SD = 15;
/** How sharply a top turns from flat to domed and from domed to fallen, in growth. Judgement. */
const TURN = 0.35;
/** What is left of the highest rise once it has wholly fallen, so much growth past usable. Judgement. */
const FALLEN = { left: 0.5, over: 1.4 } as const;
/** Before it is checked a starter may be anything: a neglected one is slower than any bake has seen. Judgement. */
const OPEN_SD = 0.5;

/**
 * Strong: at seven tenths of the usual speed or more, and about doubled at its highest. Weak: at
 * half of it or less, or never up by half. Between them a feed more is wanted. Doubling
 * within a working day as the mark of a ripe starter is common practice, no source; the numbers
 * are judgement.
 */
const STRONG = { vigour: 0.7, peak: 0.9 } as const;
const WEAK = { vigour: 0.5, peak: 0.5 } as const;

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));

/** Looks that count: of those within half an hour the last, a rise and a top alike. */
export const looksOf = (signs: readonly StarterSign[]): readonly StarterSign[] =>
  signs.filter((sign, i) => {
    const next = signs[i + 1];
    return next === undefined || next.at - sign.at >= APART;
  });

/** Its rise after growth m, as a share of its highest: up to the ripe time by the dough clock's shape, then it stands and falls. */
function shareOfPeak(m: number, ripe: number, s: number, celsius: number): number {
  if (m < ripe) return rise(m, s, celsius) / rise(ripe, s, celsius);
  const past = Math.min(1, Math.max(0, (m - ripe - USABLE) / FALLEN.over));
  return 1 - (1 - FALLEN.left) * past;
}

/** How likely a top looks so at growth m: domed while it is usable, fallen after. */
function topOdds(top: Top, m: number, ripe: number): number {
  const fallen = logistic((m - ripe - USABLE) / TURN);
  const rising = logistic((ripe - USABLE - m) / TURN);
  return 0.94 * (top === 'fallen' ? fallen : Math.max(0, 1 - fallen - rising)) + 0.02;
}

/** Log likelihood of all that was seen, of a starter of vigour v that comes up to `peak`. */
function evidence({ at, flour, celsius }: Fed, looks: readonly StarterSign[]) {
  const s = seedShare({ hydration: 1, feed: { seed: 1, flour } });
  const ripe = Math.max(0.1, ripeGrowth(s));
  const path = [{ hours: Infinity, from: celsius, toward: celsius, tau: TAU.jar, factor: 1 }];
  const seen = looks.map((sign) => ({ sign, theta: theta(path, 0, (sign.at - at) / HOUR) }));
  return (vigour: number, peak: number): number =>
    seen.reduce((sum, { sign, theta: hours }) => {
      const m = vigour * hours;
      if ('top' in sign) return sum + Math.log(topOdds(sign.top, m, ripe));
      const expected = 100 * peak * shareOfPeak(m, ripe, s, celsius);
      return sum - 0.5 * ((sign.percent - expected) / SD) ** 2;
    }, 0);
}

const PEAKS = Array.from({ length: PEAK.points }, (_, i) => {
  const z = -PEAK.reach + (2 * PEAK.reach * i) / (PEAK.points - 1);
  return { peak: Math.exp(PEAK.mean + z * PEAK.sd), log: -0.5 * z * z };
});

/** Whether what was seen since the feed says anything at all: one look cannot tell slow from small. */
const enough = ({ fed, signs }: Told): { fed: Fed; looks: readonly StarterSign[] } | null => {
  const looks = looksOf(signs);
  return fed !== undefined && looks.length >= 2 ? { fed, looks } : null;
};

/**
 * What two looks or more say of the vigour, whatever height it comes to; null where there are fewer.
 * A look alone cannot tell a slow starter from one that never comes up far.
 */
export function weighStarter(told: Told, prior: Belief): Posterior | null {
  const found = enough(told);
  if (found === null) return null;
  const log = evidence(found.fed, found.looks);
  return weighIn(openPosterior(prior), (vigour) => {
    const each = PEAKS.map(({ peak, log: prior0 }) => prior0 + log(vigour, peak));
    const most = Math.max(...each);
    return most + Math.log(each.reduce((sum, one) => sum + Math.exp(one - most), 0));
  });
}

export type StrengthAnswer = 'strong' | 'once' | 'weak';

export interface Strength {
  readonly answer: StrengthAnswer;
  /** How much of the belief says so, 0–1. */
  readonly share: number;
}

const answerFor = (vigour: number, peak: number): StrengthAnswer => {
  if (vigour < WEAK.vigour || peak < WEAK.peak) return 'weak';
  return vigour >= STRONG.vigour && peak >= STRONG.peak ? 'strong' : 'once';
};

/**
 * Whether a starter is strong enough to bake with, by two looks or more after one feed, and how
 * much of the belief says so; null on fewer. Source: judgement, see `STRONG` and `WEAK`.
 */
export function strengthOf(told: Told, prior: Belief): Strength | null {
  const found = enough(told);
  if (found === null) return null;
  const log = evidence(found.fed, found.looks);
  const grid = openPosterior({ mean: prior.mean, sd: OPEN_SD });
  const cells = grid.at.flatMap((lnV, i) =>
    PEAKS.map(({ peak, log: ofPeak }) => {
      const vigour = Math.exp(lnV);
      return { answer: answerFor(vigour, peak), log: grid.log[i]! + ofPeak + log(vigour, peak) };
    }),
  );
  const most = Math.max(...cells.map((cell) => cell.log));
  const sums = { strong: 0, once: 0, weak: 0 };
  for (const cell of cells) sums[cell.answer] += Math.exp(cell.log - most);
  const all = sums.strong + sums.once + sums.weak;
  const best = (['strong', 'once', 'weak'] as const).reduce((a, b) => (sums[b] > sums[a] ? b : a));
  return { answer: best, share: sums[best] / all };
}

/** From when on a second look is one of its own; null where none was taken yet. */
export const nextLookFrom = ({ signs }: Told): Instant | null => {
  const last = signs.at(-1);
  return last === undefined ? null : last.at + APART;
};
