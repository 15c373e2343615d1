import type { Hours } from '../units.ts';
import { gamma, GAMMA_BENDS } from './gamma.ts';
import { temperatureIn, type Path, type Stretch } from './stretch.ts';

/** Widest panel of the integral: hours, and as a share of τ, for bodies that drift fast. */
const PANEL = { hours: 1 / 12, ofTau: 1 / 30 } as const;

/** Hours into a stretch at which its temperature passes a bend of gamma, in order. */
function bends({ from, toward, tau }: Stretch, begin: Hours, end: Hours): Hours[] {
  if (from === toward) return [];
  return GAMMA_BENDS.map((bend) => -tau * Math.log((bend - toward) / (from - toward)))
    .filter((t) => t > begin && t < end) // NaN, where it never passes, falls out here
    .sort((a, b) => a - b);
}

/** Simpson's rule over one smooth piece of a stretch. */
function smooth(stretch: Stretch, begin: Hours, end: Hours): number {
  const widest = Math.min(PANEL.hours, PANEL.ofTau * stretch.tau);
  const panels = Math.max(1, Math.ceil((end - begin) / widest));
  const h = (end - begin) / panels / 2;
  const rate = (i: number): number => gamma(temperatureIn(stretch, begin + i * h));
  let sum = rate(0) + rate(2 * panels);
  for (let i = 1; i < 2 * panels; i += 1) sum += rate(i) * (i % 2 === 1 ? 4 : 2);
  return (sum * h) / 3;
}

function within(stretch: Stretch, begin: Hours, end: Hours): number {
  if (end <= begin) return 0;
  if (stretch.from === stretch.toward) {
    return gamma(stretch.from) * (end - begin) * stretch.factor;
  }
  const edges = [begin, ...bends(stretch, begin, end), end];
  let sum = 0;
  for (let i = 1; i < edges.length; i += 1) {
    sum += smooth(stretch, edges[i - 1] ?? 0, edges[i] ?? 0);
  }
  return sum * stretch.factor;
}

/**
 * Equivalent hours at 26 °C that a dough lives between `begin` and `end` hours of its path:
 * Θ = ∫ γ(T)·factor dt. Finite ends, begin ≤ end; beyond the path's end nothing is added.
 * Constant stretches are exact; drifting ones by Simpson's rule in panels of at most five minutes
 * and a thirtieth of τ, split where γ bends: error below 1e-7 h for τ of 1 h or more (tests/core/clock/theta.test.ts).
 * Source: the dough clock.
 */
export function theta(path: Path, begin: Hours, end: Hours): Hours {
  let sum = 0;
  let start = 0;
  for (const stretch of path) {
    if (start >= end) break;
    sum += within(stretch, Math.max(0, begin - start), Math.min(stretch.hours, end - start));
    start += stretch.hours;
  }
  return sum;
}
