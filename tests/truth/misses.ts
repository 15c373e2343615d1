import { clockDoubt, saneCelsius, type Doubt } from '../../src/core/clock/doubt.ts';
import { gamma } from '../../src/core/clock/gamma.ts';
import { ripeGrowth } from '../../src/core/clock/levain-ripe.ts';
import { saltAndRye } from '../../src/core/clock/salt-and-rye.ts';

/** A value the clock is known to miss, and the doubt it tells there instead. */
export interface Miss {
  readonly what: string;
  readonly ours: number;
  readonly expected: number;
  /** What a row within tolerance would come to. */
  readonly within: number;
  readonly doubt: Doubt | null;
  readonly source: string;
}

/**
 * Known misses, kept because bakers' times ask for what the yeast in culture does not do. Not
 * computed here, but known: stiff, very sour cultures at v ≈ .44 (Kline, Sugihara & McCready 1970,
 * transcribed).
 */
export const misses = (): Miss[] => [
  {
    what: 'sourdough yeast at 32 °C against 28: half speed',
    ours: gamma(32) / gamma(28),
    expected: 0.5,
    within: 0.08,
    doubt: saneCelsius(32).doubt,
    source: 'Gänzle as quoted at nyx.net/~dgreenw/whatfactorsaffectmicrobial.html (culture)',
  },
  {
    what: 'S. cerevisiae at 33 °C against 28: it still quickens',
    ours: gamma(33) / gamma(28),
    expected: 0.263 / 0.188,
    within: 0.08,
    doubt: saneCelsius(33).doubt,
    source: 'Gause 1932, Q. Rev. Biol. 7:27–46, Table 5 (culture)',
  },
  {
    what: 'full-acid rye sour, a tenth of seed, at 26 °C: hours',
    ours: ripeGrowth(0.1) / (gamma(26) * saltAndRye(0, 1)),
    expected: 13,
    within: 1,
    doubt: clockDoubt({ celsius: 26, p: 0.1, salt: 0, rye: 1, hydration: 80, rise: 90 }),
    source: '12–14 h, common practice, no source',
  },
];
