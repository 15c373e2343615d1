import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readyCurve } from '../../../src/core/clock/hours-until.ts';
import { growthForRise } from '../../../src/core/clock/rise.ts';
import type { Path } from '../../../src/core/clock/stretch.ts';
import { theta } from '../../../src/core/clock/theta.ts';
import {
  dentEvidence,
  dentOdds,
  domeEvidence,
  riseEvidence,
} from '../../../src/core/readiness/evidence.ts';
import {
  beliefOf,
  openPosterior,
  quantile,
  weighIn,
  type Posterior,
} from '../../../src/core/readiness/posterior.ts';

const PRIOR = { mean: 0.1, sd: 0.25 };
const SEEN = { theta: 2.6, p: 0.08257, celsius: 26 };

describe('the posterior of a vigour', () => {
  it('is the prior before anything was seen', () => {
    const open = openPosterior(PRIOR);
    expect(beliefOf(open).mean).toBeCloseTo(0.1, 9);
    expect(beliefOf(open).sd).toBeCloseTo(0.25, 3);
    expect(quantile(open, 0.5)).toBeCloseTo(0.1, 9);
    expect(quantile(open, 0.9)).toBeCloseTo(0.1 + 1.2816 * 0.25, 3);
  });

  /** Normal evidence of ln v has its answer in closed form: precisions add up. */
  it('agrees with the conjugate normal within 1e-3', () => {
    const from = fc.double({ min: -0.35, max: 0.55, noNaN: true });
    const sd = fc.double({ min: 0.06, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(from, sd, (x, s) => {
        const seen = weighIn(openPosterior(PRIOR), (v) => -0.5 * ((x - Math.log(v)) / s) ** 2);
        const precision = 1 / PRIOR.sd ** 2 + 1 / s ** 2;
        const mean = (PRIOR.mean / PRIOR.sd ** 2 + x / s ** 2) / precision;
        expect(Math.abs(beliefOf(seen).mean - mean)).toBeLessThan(1e-3);
        expect(Math.abs(beliefOf(seen).sd - precision ** -0.5)).toBeLessThan(1e-3);
        expect(Math.abs(quantile(seen, 0.5) - mean)).toBeLessThan(1e-3);
      }),
    );
  });

  it('does not mind the order of independent readings', () => {
    const all = [
      riseEvidence(40, SEEN),
      domeEvidence(false, { ...SEEN, theta: 2 }),
      riseEvidence(70, { ...SEEN, theta: 3 }),
    ];
    const through = (some: typeof all): Posterior => some.reduce(weighIn, openPosterior(PRIOR));
    const forward = beliefOf(through(all));
    const back = beliefOf(through(all.toReversed()));
    expect(back.mean).toBeCloseTo(forward.mean, 12);
    expect(back.sd).toBeCloseTo(forward.sd, 12);
  });

  it('holds a starter for livelier the higher the dough has risen, and the window comes sooner', () => {
    const path: Path = [{ hours: 60, from: 26, toward: 22, tau: 5, factor: 0.95 }];
    const curve = readyCurve(path, 0, 60, (c) => growthForRise(0.9, SEEN.p, c));
    const percent = fc.double({ min: 0, max: 110, noNaN: true });
    fc.assert(
      fc.property(percent, percent, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const at = { ...SEEN, theta: theta(path, 0, 2.5) };
        const ends = (seen: number) => {
          const posterior = weighIn(openPosterior(PRIOR), riseEvidence(seen, at));
          return [0.9, 0.5, 0.1].map((share) => curve(Math.exp(quantile(posterior, share))) ?? 60);
        };
        const [later, sooner] = [ends(low), ends(high)];
        for (const [i, hours] of sooner.entries()) {
          expect(hours).toBeLessThanOrEqual(later[i]! + 1e-4);
        }
      }),
    );
  });

  it('is never a point: signs that only the slowest starter explains leave it some doubt', () => {
    const never = riseEvidence(0, { theta: 40, p: 0.08, celsius: 24 });
    const { sd } = beliefOf([1, 2, 3].reduce((p) => weighIn(p, never), openPosterior(PRIOR)));
    expect(sd).toBeGreaterThan(0.002);
  });

  it('does not use a rise above 110 %, nor lose itself over a reading nothing explains', () => {
    const open = openPosterior(PRIOR);
    expect(beliefOf(weighIn(open, riseEvidence(150, SEEN)))).toEqual(beliefOf(open));
    expect(weighIn(open, () => Number.NEGATIVE_INFINITY)).toBe(open);
    const far = beliefOf(weighIn(open, riseEvidence(-20, { ...SEEN, theta: 40 })));
    expect(Number.isFinite(far.mean)).toBe(true);
  });
});

describe('a dent', () => {
  it('has one answer of three, the likelier the further the proof', () => {
    for (let q = 0; q <= 2; q += 0.05) {
      const { springs, slow, stays } = dentOdds(q);
      expect(springs + slow + stays).toBeCloseTo(1, 12);
      expect(Math.min(springs, slow, stays)).toBeGreaterThan(0);
    }
    expect(dentOdds(0.5).springs).toBeGreaterThan(0.9);
    expect(dentOdds(1.05).slow).toBeGreaterThan(0.8);
    expect(dentOdds(1.6).stays).toBeGreaterThan(0.9);
  });

  it('that stays speaks for a livelier starter than one that springs back', () => {
    const at = { theta: 1, p: SEEN.p, celsius: 24 };
    const after = (dent: 'springs' | 'stays') =>
      beliefOf(weighIn(openPosterior({ mean: 0, sd: 0.2 }), dentEvidence(dent, 4, at))).mean;
    expect(after('stays')).toBeGreaterThan(after('springs'));
  });
});

it('a curve asked for one vigour after another gives what it gives alone', () => {
  const path: Path = [{ hours: 72, from: 27, toward: 20, tau: 5, factor: 1 }];
  const needed = (c: number) => growthForRise(0.9, 0.08, c);
  const together = readyCurve(path, 0, 72, needed);
  for (const v of [1, 0.5, 1.7, 1.02, 0.05]) {
    expect(together(v)).toBe(readyCurve(path, 0, 72, needed)(v));
  }
  expect(together(1)! * 0).toBe(0);
});
