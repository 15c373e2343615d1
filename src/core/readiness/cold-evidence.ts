import { coldDoubt, proofIndex } from '../clock/proof-index.ts';
import type { Reading } from '../records/fact.ts';
import type { Hours } from '../units.ts';
import { dentOdds, type Seen } from './evidence.ts';

/** Nodes and weights of a normal distribution in five points (Gauss–Hermite), in its sd. */
const NODES = [
  [-2.857, 0.01126],
  [-1.3556, 0.22208],
  [0, 0.53333],
  [1.3556, 0.22208],
  [2.857, 0.01126],
] as const;
/** Sd of a doubt that is told as an 80 % interval, as a share of it. */
const OF_INTERVAL = 1 / 1.2816;

/** How sharply the steps of a growth told in words, and of a rim, follow the index. Judgement. */
const SCATTER = { grown: 0.08, rim: 0.12 } as const;
/** Index at which growth in the fridge is told as a little, and as clear. Judgement. */
const GROWN = { little: 0.7, clear: 0.85 } as const;
/** Index at which a loaf stands level with its basket's rim, and above it: the baskets differ. Judgement. */
const RIM = { level: 0.85, above: 1.25 } as const;

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));

/** Odds of three answers in order along the index, each at least a hundredth. */
const steps = (q: number, from: number, to: number, scatter: number): readonly number[] => {
  const low = logistic((from - q) / scatter);
  const high = logistic((q - to) / scatter);
  return [low, 1 - low - high, high].map((share) => 0.97 * Math.max(0, share) + 0.01);
};

/** What the index makes of an answer; null where it says nothing of the loaf. */
const oddsOf = (reading: Reading): ((q: number) => number) | null => {
  if (reading.what === 'poke') {
    const { dent } = reading;
    return dent === 'unsure' ? null : (q) => dentOdds(q)[dent];
  }
  if (reading.what !== 'growth') return null;
  const grown = ['none', 'little', 'grown'].indexOf(reading.grown);
  const rim = ['below', 'level', 'above'].indexOf(reading.rim ?? '');
  if (grown < 0 && rim < 0) return null;
  return (q) =>
    (grown < 0 ? 1 : steps(q, GROWN.little, GROWN.clear, SCATTER.grown)[grown]!) *
    (rim < 0 ? 1 : steps(q, RIM.level, RIM.above, SCATTER.rim)[rim]!);
};

/**
 * Log likelihood, at vigour v, of what a cold loaf showed: its growth, its rim, a dent. A cold loaf's
 * index is known to its doubt at best, so that a dent is a hint and never decides. `grown`: growth at
 * the end of bulk; `hours` in the cold, or since it was last seen there. Null where the reading says
 * nothing of it.
 */
export function coldEvidence(
  reading: Reading,
  grown: number,
  { theta, p, celsius }: Seen,
  hours: Hours,
): ((vigour: number) => number) | null {
  const odds = oddsOf(reading);
  if (odds === null) return null;
  const sd = coldDoubt(hours) * OF_INTERVAL;
  return (vigour) => {
    const q = proofIndex(grown + vigour * theta, p, celsius);
    return Math.log(NODES.reduce((sum, [z, weight]) => sum + weight * odds(q + z * sd), 0));
  };
}
