import type { Celsius } from '../units.ts';

/**
 * The trade's rule of thumb: wanted temperature times the number of temperatures it sums, less
 * their sum, less a friction difference. `others` are flour and room, and levain where there is one.
 * All in one unit; the friction is a difference. It takes 200 g of levain for as much as a kilo of
 * flour: shown beside the balance, never in its place.
 * Source: common practice (SFBI, Lehmann and others print worked examples).
 *
 * @example
 * waterByMultiplier(75, [65, 65], 8) // → 87
 */
export function waterByMultiplier(
  wanted: number,
  others: readonly number[],
  friction: number,
): number {
  return wanted * (others.length + 1) - others.reduce((sum, one) => sum + one, 0) - friction;
}

/** Friction of a way of mixing, K. By hand 0–3, a stand mixer 11, a processor 14. Common practice. */
export const FRICTION: Readonly<Record<'hand' | 'mixer' | 'processor', number>> = {
  hand: 1.5,
  mixer: 11,
  processor: 14,
};

/** The rule in °C for a dough with levain, or without. */
export const multiplierAdvice = (
  wanted: Celsius,
  temperatures: {
    readonly flour: Celsius;
    readonly room: Celsius;
    readonly levain: Celsius | null;
  },
  way: keyof typeof FRICTION,
): Celsius => {
  const { flour, room, levain } = temperatures;
  const others = levain === null ? [flour, room] : [flour, room, levain];
  return waterByMultiplier(wanted, others, FRICTION[way]);
};
