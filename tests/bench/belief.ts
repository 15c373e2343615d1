import { waitFor, type WaitInput } from '../../src/core/day/waits.ts';
import type { Seen } from '../../src/core/records/seen.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { RECIPE } from '../machines/support/recipe.ts';

export interface UpdateTime {
  readonly signs: number;
  /** Milliseconds of one whole update: drift, belief, window. */
  readonly p50: number;
  readonly p95: number;
}

const T0 = Date.UTC(2031, 4, 3, 6);
const RUNS = 600;

/** A cold bulk of two days, a temperature every hour and a rise every four. */
const history = (): Seen[] =>
  Array.from({ length: 48 }, (_, hour): Seen[] => {
    const at = T0 + hour * HOUR;
    const what = hour % 2 === 1 ? 'doughTemperature' : 'kitchenTemperature';
    const reading: Seen = { at, reading: { what, celsius: 6 + 0.3 * (hour % 5) } };
    const rise: Seen = {
      at: at + MINUTE,
      reading: { what: 'rise', of: 'dough', percent: hour / 2 },
    };
    return hour % 4 === 1 ? [reading, rise] : [reading];
  }).flat();

/** One more reading after 48 hours of them: the whole belief and its window, reckoned anew. */
export function beliefUpdate(): UpdateTime {
  const seen = history();
  const input: WaitInput = {
    stage: 'bulk.proving',
    now: T0 + 48 * HOUR,
    recipe: RECIPE,
    kitchen: 6,
    entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': T0 + HOUR },
    touches: 0,
    prior: { mean: 0, sd: 0.25 },
    seen,
    done: [],
    again: true,
  };
  const times = Array.from({ length: 2 * RUNS }, () => {
    const began = performance.now();
    if (!Number.isFinite(waitFor(input).marks['likely'])) throw new Error('No window came of it.');
    return performance.now() - began;
  })
    .slice(RUNS) // what is not compiled yet is not what a baker waits for
    .toSorted((a, b) => a - b);
  return { signs: seen.length, p50: times[RUNS / 2]!, p95: times[Math.floor(RUNS * 0.95)]! };
}
