import { gamma } from '../../src/core/clock/gamma.ts';
import { gasDissolved } from '../../src/core/clock/gas-dissolved.ts';
import { gasMade } from '../../src/core/clock/gas-made.ts';
import { ripeGrowth, seedShare } from '../../src/core/clock/levain-ripe.ts';
import { prefermented } from '../../src/core/clock/prefermented.ts';
import { growthForRise, rise } from '../../src/core/clock/rise.ts';
import { saltAndRye } from '../../src/core/clock/salt-and-rye.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { RECIPE } from '../machines/support/recipe.ts';
import { rowsOf, type Row } from './row.ts';

/** Time from mix to ready for a starter of vigour v, ms. */
const toReady = (v: number): number =>
  waitFor({
    stage: 'bulk.proving',
    now: 0,
    recipe: RECIPE,
    kitchen: 26,
    entered: {},
    touches: 0,
    prior: { mean: Math.log(v), sd: 0.1 },
    seen: [],
    done: [],
    again: false,
  }).marks['likely'] ?? NaN;

/** Growth of yeast against 28 °C. In culture, not in dough: it says where γ may not go. */
export function yeastRows(): Row[] {
  const gause =
    'Gause 1932, Q. Rev. Biol. 7:27–46, Table 5 (S. cerevisiae, culture); the range is judgement';
  const ganzle = 'Gänzle as quoted at nyx.net/~dgreenw/whatfactorsaffectmicrobial.html (culture)';
  const measured = rowsOf('measured yeast', 'outside', gause);
  const at = (celsius: number) => gamma(celsius) / gamma(28);
  return [
    measured('γ(15)/γ(28)', at(15), [0.22, 0.38]),
    measured('γ(5.7)/γ(28)', at(5.7), [0.03, 0.083]),
    measured('γ(20)/γ(28), half speed', at(20), [0.42, 0.58], { source: ganzle }),
    measured('γ(14)/γ(28), a quarter', at(14), [0.22, 0.28], { source: ganzle }),
  ];
}

/** Values of the clock's own equations worked out apart from this code. */
export function clockRows(): Row[] {
  const port = rowsOf('clock', 'port', 'the clock’s equations, worked out apart');
  const sander = { source: 'constants from Sander 2023, Atmos. Chem. Phys. 23:10901' };
  const rates = [
    [4, 0.0415],
    [10, 0.1926],
    [21, 0.5976],
    [24, 0.8139],
    [29, 1.3619],
    [33, 1.5096],
  ] as const;
  const seed = seedShare({ hydration: 1, feed: { seed: 1, flour: 5 } });
  return [
    ...rates.map(([celsius, rate]) => port(`γ(${celsius})`, gamma(celsius), rate)),
    port('p of 18 % levain at 100 %', prefermented(18, 100), 0.08257),
    port('s of 1:5:5', seed, 0.09091),
    port('m at ripe, 1:1:1', ripeGrowth(1 / 3), (1.45 + Math.LN2) / 0.54),
    port('salt 1.8 %, rye 15 %: factor', saltAndRye(1.8, 0.15), 0.94552, {
      mark: 'judgement',
      source: '.06 and .40 are judgement',
    }),
    port('CO₂ held at 25 °C, volumes', gasDissolved(25), 0.476, sander),
    port('CO₂ held at 4 °C, volumes', gasDissolved(4), 0.814, sander),
    port('G(4, .0826), volumes', gasMade(4, 0.0826), 1.5706),
    port('m → V → m at 26 °C', growthForRise(rise(4, 0.0826, 26), 0.0826, 26), 4),
    port('v 1.2 divides the time needed by', toReady(1) / toReady(1.2), 1.2),
  ];
}
