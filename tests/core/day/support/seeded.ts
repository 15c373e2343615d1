/** Chance with a seed, for instances that are the same on every machine (mulberry32, public domain). */
export interface Seeded {
  /** From 0 up to 1. */
  next(): number;
  /** A whole number, both ends included. */
  whole(least: number, most: number): number;
  chance(share: number): boolean;
  of<T>(list: readonly T[]): T;
}

export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 15), z | 1);
    z ^= z + Math.imul(z ^ (z >>> 7), z | 61);
    return ((z ^ (z >>> 14)) >>> 0) / 4_294_967_296;
  };
  const whole = (least: number, most: number): number =>
    least + Math.floor(next() * (most - least + 1));
  return {
    next,
    whole,
    chance: (share) => next() < share,
    of: (list) => list[whole(0, list.length - 1)]!,
  };
}
