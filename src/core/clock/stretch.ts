import type { Celsius, Hours } from '../units.ts';

/**
 * A stretch of a dough's time: from `from` °C its temperature drifts by Newton's law toward
 * `toward` with time constant `tau` (h), T(t) = Ta + (T₀ − Ta)·e^{−t/τ}, and its rate carries the
 * factor `factor` of `saltAndRye`. Constant where `from` equals `toward`. `hours` is its length;
 * the last one of a path may be Infinity.
 */
export interface Stretch {
  readonly hours: Hours;
  readonly from: Celsius;
  readonly toward: Celsius;
  readonly tau: Hours;
  readonly factor: number;
}

/** A dough's whole way: one stretch after the other, time counted in hours from its beginning. */
export type Path = readonly Stretch[];

/**
 * Time constants of Newton drift, hours: a bowl of dough (3–8), a loaf in the fridge (1.8–3.5), a
 * jar of levain. Common practice, no source.
 */
export const TAU = { bowl: 5, fridgeLoaf: 2.5, jar: 1.1 } as const;

/**
 * Temperature, °C, `t` hours into a stretch. t ≥ 0; Infinity gives `toward`.
 * Source: Newton's law of cooling.
 *
 * @example
 * temperatureIn({ from: 25.2, toward: 4, tau: 2.5 }, 2.5) // → 11.799
 */
export function temperatureIn(
  { from, toward, tau }: Pick<Stretch, 'from' | 'toward' | 'tau'>,
  t: Hours,
): Celsius {
  return toward + (from - toward) * Math.exp(-t / tau);
}

/**
 * Temperature, °C, `t` hours into a path; after its end, that of its end. t ≥ 0, the path not empty.
 */
export function temperatureAt(path: Path, t: Hours): Celsius {
  let left = t;
  for (const stretch of path.slice(0, -1)) {
    if (left < stretch.hours) return temperatureIn(stretch, left);
    left -= stretch.hours;
  }
  const last = path.at(-1);
  if (last === undefined) throw new Error('temperatureAt: the path must not be empty.');
  return temperatureIn(last, Math.min(left, last.hours));
}
