import type { Celsius, Hours } from '../units.ts';
import { temperatureAt, type Path } from './stretch.ts';
import { theta } from './theta.ts';

/** Step of the search, hours. */
const STEP = 1 / 3;
/** The answer is found to this, hours (0.02 s). */
const CLOSE = 5e-6;

/** Hours of the path at which a starter of vigour v is there, or null when not before the horizon. */
export type ReadyCurve = (vigour: number) => Hours | null;

/**
 * The clock's ETA for every vigour at once: the first hour of a path, from `begin` on, at which v·Θ
 * since `begin` reaches what is needed at the dough's temperature of that moment; null when that is
 * not before `horizon` (both hours of the path). The path is walked once, in steps of twenty minutes,
 * and only as far as was asked; each answer is then closed in on to 0.02 s.
 * Source: the clock's ETA, ready at the first t with v·Θ(t)/m_needed(T(t)) ≥ 1.
 */
export function readyCurve(
  path: Path,
  begin: Hours,
  horizon: Hours,
  needed: (celsius: Celsius) => number,
): ReadyCurve {
  const needs = (t: Hours): number => needed(temperatureAt(path, t));
  const steps = [{ at: begin, sum: 0, needs: needs(begin) }];
  const step = (i: number): (typeof steps)[number] | null => {
    const known = steps[i];
    if (known) return known;
    const last = steps.at(-1)!;
    if (last.at >= horizon) return null;
    const at = Math.min(horizon, last.at + STEP);
    steps.push({ at, sum: last.sum + theta(path, last.at, at), needs: needs(at) });
    return steps.at(-1)!;
  };
  return (vigour) => {
    let before = steps[0]!;
    if (vigour * before.sum >= before.needs) return before.at;
    for (let i = 1; ; i += 1) {
      const next = step(i);
      if (next === null) return null;
      if (vigour * next.sum >= next.needs) {
        let [low, high] = [before.at, next.at];
        while (high - low > CLOSE) {
          const middle = (low + high) / 2;
          const sum = before.sum + theta(path, before.at, middle);
          if (vigour * sum >= needs(middle)) high = middle;
          else low = middle;
        }
        return high;
      }
      before = next;
    }
  };
}

/** The ETA of a starter of the model's own speed: `readyCurve` at v = 1. */
export const hoursUntil = (
  path: Path,
  begin: Hours,
  horizon: Hours,
  needed: (celsius: Celsius) => number,
): Hours | null => readyCurve(path, begin, horizon, needed)(1);
