import { gamma } from '../clock/gamma.ts';
import { HOUR, type Celsius, type Hours, type Instant } from '../units.ts';
import type { BakePage } from './bake-page.ts';

/** Hours at 26 °C that a dough had lived since its first measured temperature. */
export interface DoughHours {
  readonly at: Instant;
  readonly hours: Hours;
}

interface Measured {
  readonly at: Instant;
  readonly celsius: Celsius;
}

/** Panels of Simpson's rule between two readings: their error is below what a probe can tell. */
const PANELS = 12;

const between = (a: Measured, b: Measured): Hours => {
  const rate = (n: number): number =>
    gamma(a.celsius + ((b.celsius - a.celsius) * n) / (2 * PANELS));
  let sum = rate(0) + rate(2 * PANELS);
  for (let n = 1; n < 2 * PANELS; n += 1) sum += rate(n) * (n % 2 === 1 ? 4 : 2);
  return (sum * ((b.at - a.at) / HOUR)) / (6 * PANELS);
};

/** Cold loaves follow no straight line: from here on nothing is reckoned. */
const isCold = ({ stage }: { readonly stage: string }): boolean => stage === 'proof.retard';

/**
 * How long a dough had lived by each of its measured temperatures, were it at 26 °C all the while:
 * Θ = ∫ γ(T) dt, T straight from reading to reading, of those taken before the loaves went into the cold.
 * What was kept as odd is left out; [] where fewer than two are left. Rye and salt, which slow every dough of
 * a formula alike, are not reckoned in.
 * γ is today's (clock/gamma.ts): this was not told in the bake, and forecast nothing.
 *
 * @example
 * doughHours({ readings: [], stages: [] }) // → []
 */
export function doughHours({
  readings,
  stages,
}: Pick<BakePage, 'readings' | 'stages'>): readonly DoughHours[] {
  const cold = stages.find(isCold)?.from ?? Infinity;
  const measured = readings.flatMap(({ at, odd, reading }): Measured[] =>
    reading.what === 'doughTemperature' && !odd && at < cold
      ? [{ at, celsius: reading.celsius }]
      : [],
  );
  if (measured.length < 2) return [];
  let hours = 0;
  return measured.map((one, n) => {
    if (n > 0) hours += between(measured[n - 1]!, one);
    return { at: one.at, hours };
  });
}
