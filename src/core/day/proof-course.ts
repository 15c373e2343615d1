import { coldDoubt, proofIndex } from '../clock/proof-index.ts';
import { temperatureAt } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import { quantile } from '../readiness/posterior.ts';
import type { Hours } from '../units.ts';
import type { ProofDough } from './proof-dough.ts';

/** A loaf's proof index at an hour of its path: four of five loaves lie between `low` and `high`. */
export interface IndexAt {
  readonly hours: Hours;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Share of the belief on either side of the interval. */
const SIDE = 0.1;

/**
 * The proof index hour by hour, from `from` to `to` of the loaf's path, both ends included, in steps
 * of `step` hours: what is believed of its vigour, and in the cold the clock's own doubt on top.
 */
export function proofCourse(
  { path, p, grown, posterior, coldSince }: ProofDough,
  from: Hours,
  to: Hours,
  step: Hours,
): readonly IndexAt[] {
  const [slow, middle, fast] = [SIDE, 0.5, 1 - SIDE].map((a) => Math.exp(quantile(posterior, a)));
  const course: IndexAt[] = [];
  let sum = theta(path, 0, from);
  let last = from;
  const count = Math.max(0, Math.ceil((to - from) / step - 1e-9));
  for (let i = 0; i <= count; i += 1) {
    const hours = Math.min(to, from + i * step);
    sum += theta(path, last, hours);
    last = hours;
    const celsius = temperatureAt(path, hours);
    const at = (vigour: number): number => proofIndex(grown + vigour * sum, p, celsius);
    const doubt = coldSince === null ? 0 : coldDoubt(Math.max(0, hours - coldSince));
    // Doubt gathers faster than a slow loaf grows in the cold; what it has grown it keeps.
    const kept = course.at(-1)?.low ?? 0;
    const likely = at(middle!);
    const low = Math.min(likely, Math.max(kept, at(slow!) - doubt));
    course.push({ hours, low, likely, high: at(fast!) + doubt });
  }
  return course;
}
