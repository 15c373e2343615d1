import type { Celsius, Hours } from '../units.ts';
import { temperatureAt, type Path } from './stretch.ts';
import { theta } from './theta.ts';

/** Step of the search, hours. */
const STEP = 1 / 6;
/** The answer is found to this, hours (0.02 s). */
const CLOSE = 5e-6;

/**
 * First hour of a path, from `begin` on, at which Θ since `begin` reaches what is needed at the
 * dough's temperature of that moment; null when that is not before `horizon` (both hours of the
 * path). Steps of ten minutes, then bisection to 0.02 s.
 * Source: the clock's ETA, ready at the first t with v·Θ(t)/m_needed(T(t)) ≥ 1.
 */
export function hoursUntil(
  path: Path,
  begin: Hours,
  horizon: Hours,
  needed: (celsius: Celsius) => number,
): Hours | null {
  const reached = (t: Hours, sum: number): boolean => sum >= needed(temperatureAt(path, t));
  let at = begin;
  let sum = 0;
  if (reached(at, 0)) return at;
  while (at < horizon) {
    const next = Math.min(horizon, at + STEP);
    const after = sum + theta(path, at, next);
    if (reached(next, after)) {
      let [low, high] = [at, next];
      while (high - low > CLOSE) {
        const middle = (low + high) / 2;
        if (reached(middle, sum + theta(path, at, middle))) high = middle;
        else low = middle;
      }
      return high;
    }
    [at, sum] = [next, after];
  }
  return null;
}
