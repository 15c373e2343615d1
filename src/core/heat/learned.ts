/** Mixes it takes before the learned offset replaces the doubt about the heat of wetting. */
export const LEARNED_AFTER = 5;

/**
 * K that a mix is believed to be off by at most: heat of wetting ± 1.6, a hand's friction 0–3, a cold
 * bowl −1. What lies beyond is a slip of the probe. Judgement.
 */
export const MOST_OFFSET = 4;

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return Number.isInteger(half)
    ? (sorted[half - 1]! + sorted[half]!) / 2
    : sorted[Math.floor(half)]!;
};

const held = (kelvins: number): number => Math.min(MOST_OFFSET, Math.max(-MOST_OFFSET, kelvins));

/**
 * What the last five mixes of a kitchen came out above the balance, K: their median; 0 where there
 * are none. Source: the trade’s rule.
 */
export function usualOffset(offsets: readonly number[]): number {
  const last = offsets.slice(-LEARNED_AFTER).map(held);
  return last.length === 0 ? 0 : median(last);
}

/**
 * What the next mix will come out above the balance, K (negative: below), from what earlier ones of
 * this kitchen did, oldest first. One mix alone may have been a slip, so that of n mixes n/(n + 1) is
 * believed until there are five.
 * Source: judgement.
 *
 * @example
 * learnedOffset([2]) // → 1
 */
export function learnedOffset(offsets: readonly number[]): number {
  const count = Math.min(offsets.length, LEARNED_AFTER);
  const believed = count >= LEARNED_AFTER ? 1 : count / (count + 1);
  return believed * usualOffset(offsets);
}
