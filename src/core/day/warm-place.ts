import { readyCurve } from '../clock/hours-until.ts';
import { temperatureAt } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import { driftPath } from '../heat/drift.ts';
import { quantile } from '../readiness/posterior.ts';
import { HOUR, MINUTE, type Celsius, type Instant } from '../units.ts';
import type { BulkDough } from './bulk-dough.ts';
import { HORIZON } from './window.ts';

/** A warm place as a kitchen has one, °C: within the 24–27 a sluggish dough is warmed to. Common practice, no source. */
export const WARM_PLACE: Celsius = 26;
/** What carrying the bowl there must save to be worth a word. Judgement. */
const WORTH = 45 * MINUTE;

/**
 * When a dough would likely be ready if its bowl stood in a warm place from `from` on; null where that
 * saves less than three quarters of an hour. `tau` in h; `needed` is growth at a temperature.
 */
export function readyInWarmPlace(
  { begin, path, posterior }: BulkDough,
  { from, likely, tau }: { readonly from: Instant; readonly likely: Instant; readonly tau: number },
  needed: (celsius: Celsius) => number,
): Instant | null {
  if (likely - from < WORTH) return null;
  const stood = Math.max(0, (from - begin) / HOUR);
  const factor = path.at(-1)!.factor;
  const body = { from: temperatureAt(path, stood), tau, offset: 0 };
  const there = driftPath(body, [{ hours: 0, celsius: WARM_PLACE }], HORIZON).map((stretch) => ({
    ...stretch,
    factor,
  }));
  // What it has grown by then it need not grow there.
  const v = Math.exp(quantile(posterior, 0.5));
  const grown = v * theta(path, 0, stood);
  const hours = readyCurve(there, 0, HORIZON, (celsius) => needed(celsius) - grown)(v);
  const ready = Math.round(from + (hours ?? HORIZON) * HOUR);
  return likely - ready >= WORTH && ready > from ? ready : null;
}
