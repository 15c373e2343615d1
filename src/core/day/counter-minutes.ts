import { doughClock } from '../clock/dough-clock.ts';
import { proofIndex, PROOF_WINDOW } from '../clock/proof-index.ts';
import { temperatureAt } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import { quantile } from '../readiness/posterior.ts';
import { HOUR, MINUTE, type Minutes } from '../units.ts';
import { loafPath } from './loaf-path.ts';
import { shapedDough } from './proof-dough.ts';
import type { WaitInput } from './waits.ts';

/** Minutes the counter may take: 0–90, from the starter's vigour. Common practice, no source. */
const MOST: Minutes = 90;
const STEP: Minutes = 5;

/**
 * Minutes that baskets filled at `now` stand on the counter, so that after the process's own time in
 * the fridge a loaf of the believed vigour is ready (index 1): little for a quick starter or a warm
 * fridge, much for a slow one. In steps of five. A spooned dough, whose index nobody fitted, keeps its
 * process's own minutes.
 */
export function counterMinutes(input: WaitInput): Minutes {
  const { recipe, now } = input;
  const { process, formula } = recipe;
  if (process.shaping === 'scoop') return process.counter;
  const shaped = shapedDough(input);
  const { p } = doughClock(formula);
  const vigour = Math.exp(quantile(shaped.handled, 0.5));
  const indexAfter = (minutes: Minutes): number => {
    const chilled = now + minutes * MINUTE;
    const path = loafPath({ ...input, chilled }, shaped);
    const hours = (chilled - shaped.begin) / HOUR + process.retard / 60;
    return proofIndex(shaped.grown + vigour * theta(path, 0, hours), p, temperatureAt(path, hours));
  };
  let best = { minutes: 0, off: Infinity };
  for (let minutes = 0; minutes <= MOST; minutes += STEP) {
    const off = Math.abs(indexAfter(minutes) - PROOF_WINDOW.full);
    if (off < best.off) best = { minutes, off };
  }
  return best.minutes;
}
