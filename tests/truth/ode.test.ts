import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { gasMade } from '../../src/core/clock/gas-made.ts';
import { saltAndRye } from '../../src/core/clock/salt-and-rye.ts';
import { temperatureAt, type Path } from '../../src/core/clock/stretch.ts';
import { theta } from '../../src/core/clock/theta.ts';

interface Solver {
  absoluteTolerance: number;
  relativeTolerance: number;
  initialStepSize: number;
  solve(
    slope: (x: number, y: number[]) => number[],
    from: number,
    y: number[],
    to: number,
  ): { y: number[] };
}
// Its types are written for an older compiler, so it is asked for at run time.
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Solver };

/** γ written out again, not ours, so that a slip in one of them shows. */
const rate = (t: number): number =>
  Math.pow(2.8, (Math.min(t, 30) - 26) / 10) * Math.min(1, Math.max(0, t / 10));

/**
 * The dough as differential equations: temperature by Newton's law, Θ, the yeast by logistic growth,
 * CO₂ in proportion to it. Each stretch is solved by itself, and split where γ bends.
 */
const solveDough = (path: Path, p: number) => {
  let y = [path[0]!.from, 0, p, 0];
  for (const { hours, from, toward, tau, factor } of path) {
    const solver = new Solver(4);
    solver.absoluteTolerance = 1e-12;
    solver.relativeTolerance = 1e-12;
    solver.initialStepSize = 1e-3;
    y = [from, y[1]!, y[2]!, y[3]!];
    const slope = (_: number, [t, , x]: number[]): number[] => {
      const quick = rate(t!) * factor;
      return [(toward - t!) / tau, quick, 0.54 * x! * (1 - x!) * quick, 3.2 * 0.54 * x! * quick];
    };
    const bends = [0, 10, 30]
      .map((bend) => -tau * Math.log((bend - toward) / (from - toward)))
      .filter((at) => at > 0 && at < hours)
      .toSorted((a, b) => a - b);
    let at = 0;
    for (const until of [...bends, hours]) {
      y = solver.solve(slope, at, y, until).y;
      at = until;
    }
  }
  return { celsius: y[0]!, theta: y[1]!, gas: y[3]! };
};

const salted = saltAndRye(1.8, 0.15);
const PATHS: readonly (readonly [string, Path])[] = [
  ['a bowl that cools', [{ hours: 4, from: 27.5, toward: 22, tau: 5, factor: salted }]],
  [
    'a rest before the salt, then a warmer room',
    [
      { hours: 0.5, from: 27.5, toward: 22, tau: 5, factor: saltAndRye(0, 0.15) },
      { hours: 1.5, from: 26.98, toward: 22, tau: 5, factor: salted },
      { hours: 3, from: 25.6, toward: 28, tau: 5, factor: salted },
    ],
  ],
  ['a loaf into the fridge', [{ hours: 14, from: 25.2, toward: 4, tau: 2.5, factor: salted }]],
  ['a hot spot above the bend', [{ hours: 6, from: 36, toward: 24, tau: 3, factor: salted }]],
  ['two days', [{ hours: 48, from: 26, toward: 12, tau: 6, factor: salted }]],
];

/** Reference: odex (Hairer & Wanner's extrapolation solver), tolerance 1e-12. */
describe.each(PATHS)('%s', (_, path) => {
  const hours = path.reduce((sum, one) => sum + one.hours, 0);
  it.each([0.03, 0.08257, 0.2])('from p %f agrees with the solver within 1e-6', (p) => {
    const solved = solveDough(path, p);
    const ours = theta(path, 0, hours);
    expect(Math.abs(temperatureAt(path, hours) - solved.celsius)).toBeLessThan(1e-6);
    expect(Math.abs(ours - solved.theta)).toBeLessThan(1e-6);
    expect(Math.abs(gasMade(ours, p) - solved.gas)).toBeLessThan(1e-6);
  });
});
