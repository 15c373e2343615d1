import { hoursUntil } from '../../src/core/clock/hours-until.ts';
import { ripeGrowth, seedShare } from '../../src/core/clock/levain-ripe.ts';
import { prefermented } from '../../src/core/clock/prefermented.ts';
import { growthForRise, rise } from '../../src/core/clock/rise.ts';
import { saltAndRye } from '../../src/core/clock/salt-and-rye.ts';
import { TAU, temperatureAt, type Path } from '../../src/core/clock/stretch.ts';
import { theta } from '../../src/core/clock/theta.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { MINUTE } from '../../src/core/units.ts';
import { SHIPPED, shippedFormula } from '../core/formula/shipped.ts';
import { RECIPE } from '../machines/support/recipe.ts';
import { rowsOf, type Row } from './row.ts';

const PRACTICE = 'bakers’ usual times, common practice, no source';
const TRADE = 'the clock’s equations, worked out apart';

const still = (celsius: number, hours: number, factor: number): Path[number] => ({
  hours,
  from: celsius,
  toward: celsius,
  tau: 5,
  factor,
});

const hoursTo = (path: Path, needed: (celsius: number) => number): number =>
  hoursUntil(path, 0, 72, needed) ?? NaN;

/** Both what the clock must say and what bakers say, of the same hours. */
const both = (
  what: string,
  ours: number,
  clock: number,
  usual: Row['expected'],
  source = PRACTICE,
) => [
  rowsOf('hours of the clock', 'port', TRADE)(what, ours, clock),
  rowsOf('bakers’ hours', source === PRACTICE ? 'practice' : 'outside', source)(what, ours, usual),
];

/** Levain at one temperature, from feed to ripe. */
function levains(): Row[] {
  const hours = (celsius: number, hydration: number, seed: number, flour: number): number => {
    const ripe = ripeGrowth(seedShare({ hydration, feed: { seed, flour } }));
    return hoursTo([still(celsius, 72, 1)], () => ripe);
  };
  const hamelman = 'Hamelman, Bread, transcribed';
  return [
    ...both('levain 1:1:1 at 26 °C', hours(26, 1, 1, 1), 3.97, 4),
    ...both('levain 1:5:5 at 24 °C', hours(24, 1, 1, 5), 8.54, [8, 10]),
    ...both('levain 1:10:10 at 21.5 °C', hours(21.5, 1, 1, 10), 13.08, [12, 14]),
    rowsOf('bakers’ hours', 'outside', hamelman)(
      '30 g seed at 125 % + 150 g flour at 21 °C',
      hours(21, 1.25, 30, 150),
      [12, 16],
    ),
  ];
}

/** Bulk: a plain dough at one temperature, and one that cools from 27.5 to 25.8 °C. */
function bulks(): Row[] {
  const plain = (celsius: number): number => {
    const p = prefermented(20, 100);
    const path = [still(celsius, 72, saltAndRye(1.8, 0))];
    return hoursTo(path, (at) => growthForRise(0.9, p, at));
  };
  const p = prefermented(18, 100);
  // Newton's law toward a far room is a straight line: 1.7 °C lost in 3 h.
  const line = { from: 27.5, toward: 27.5 - (1.7 / 3) * 1e5, tau: 1e5 };
  const path = [
    still(27.5, 0.5, saltAndRye(0, 0.15)),
    { hours: 12, ...line, factor: saltAndRye(1.8, 0.15) },
  ];
  const salted = hoursTo(path, (at) => growthForRise(0.9, p, at)) - 0.5;
  const risen = (hours: number): number =>
    100 * rise(theta(path, 0, 0.5 + hours), p, temperatureAt(path, 0.5 + hours));
  const port = rowsOf('rise', 'port', TRADE);
  return [
    ...both('levain 20 % at 24 °C to 90 %', plain(24), 4.88, [4, 5]),
    ...both('levain 20 % at 21 °C to 90 %', plain(21), 6.76, [6, 8]),
    ...both('levain 20 % at 29 °C to 90 %', plain(29), 2.84, [2.5, 3]),
    ...both('levain 18 %, rye 15 %, 27.5 → 25.8 °C, from the salt to 90 %', salted, 3.01, 3),
    port('its rise after 1 h, %', risen(1), 11),
    port('after 2 h, %', risen(2), 39),
    port('after 2.5 h, %', risen(2.5), 62),
    port('after 3 h, %', risen(3), 90),
    port('nearly twice at 3 h, %', risen(3), [80, 100], { mark: 'practice', source: PRACTICE }),
  ];
}

/** q = V/3.0 of a loaf after 36 min on the bench, the counter at 25.2 °C, then the fridge at 4 °C. */
function proof(v: number, counter: number, cold: number): number {
  const p = prefermented(20, 100);
  const factor = saltAndRye(1.8, 0.15);
  const path = [
    still(25.2, (36 + counter) / 60, factor),
    { hours: cold, from: 25.2, toward: 4, tau: TAU.fridgeLoaf, factor },
  ];
  const end = (36 + counter) / 60 + cold;
  const m = growthForRise(0.9, p, 26) + v * theta(path, 0, end);
  return rise(m, p, temperatureAt(path, end)) / 3;
}

/** The cold proof: growth along a cooling path, beyond the rise that the clock was fitted to. */
function proofs(): Row[] {
  const port = rowsOf('proof', 'port', TRADE);
  const COUNTER = [0, 20, 40, 60];
  const table: readonly (readonly [number, readonly number[]])[] = [
    [0.8, [0.69, 0.77, 0.85, 0.94]],
    [1, [0.85, 0.97, 1.08, 1.2]],
    [1.2, [1.03, 1.18, 1.33, 1.48]],
  ];
  const usual = rowsOf('proof', 'practice', 'q .85–1.25, common practice, no source');
  return [
    port('20 min on the counter + 10 h at 4 °C: q', proof(1, 20, 10), 0.93),
    port('20 min + 14 h: q', proof(1, 20, 14), 1),
    usual('20 min + 10 h is a ready loaf: q', proof(1, 20, 10), [0.85, 1.25]),
    usual('20 min + 14 h is a ready loaf: q', proof(1, 20, 14), [0.85, 1.25]),
    usual(
      '20 min + 12 h, between what published growth curves give: q',
      proof(1, 20, 12),
      [0.78, 1.11],
      {
        mark: 'outside',
        source:
          'cardinal temperatures as quoted at nyx.net/~dgreenw/whatfactorsaffectmicrobial.html',
      },
    ),
    ...table.flatMap(([v, expected]) =>
      expected.map((q, i) => {
        const counter = COUNTER[i] ?? NaN;
        return port(`v ${v}, ${counter} min + 12 h: q`, proof(v, counter, 12), q);
      }),
    ),
  ];
}

/** Minutes of warm proof at 24 °C, from the shaped loaf to likely ready, as the program lays them. */
function warmProofs(): Row[] {
  const seen = rowsOf('warm proof', 'practice', 'warm proof 60–210 min, seen in print');
  return SHIPPED.map(shippedFormula)
    .filter(({ process }) => process.retard === 0)
    .map((formula) => {
      const { marks } = waitFor({
        stage: 'proof.warm',
        now: 0,
        recipe: { ...RECIPE, formula, process: formula.process },
        kitchen: 24,
        // Divided forty minutes before: preshape, bench rest, shaping.
        entered: { 'shape.divide': -40 * MINUTE },
        touches: 0,
        prior: { mean: 0, sd: 0.25 },
        seen: [],
        done: [],
        again: false,
      });
      return seen(`${formula.name}: warm proof, min`, (marks['likely'] ?? NaN) / MINUTE, [60, 210]);
    });
}

export const breadRows = (): Row[] => [...levains(), ...bulks(), ...proofs(), ...warmProofs()];
