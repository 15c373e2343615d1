import { describe, expect, it } from 'vitest';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import { carriedBelief, sameFlour } from '../../../src/core/readiness/carry-over.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const { formula } = RECIPE;
const withRye = (pct: number) => ({
  ...formula,
  flours: [
    { id: 'wheat', name: 'wheat', grain: 'wheat', pct: 100 - pct },
    { id: 'rye', name: 'rye', grain: 'rye', pct },
  ] as const,
});

describe('what a bake begins with', () => {
  it('is the opening belief for a starter never baked with', () => {
    expect(carriedBelief(null, formula)).toBe(OPENING_BELIEF);
  });

  it('is the last bake’s, a little less sure', () => {
    const last = { formula, belief: { mean: 0.2, sd: 0.06 } };
    const { mean, sd } = carriedBelief(last, formula);
    expect(mean).toBe(0.2);
    expect(sd).toBeCloseTo(Math.sqrt(0.06 ** 2 + 0.1 ** 2), 12);
  });

  it('is never vaguer than .25 once the starter was baked with', () => {
    expect(carriedBelief({ formula, belief: { mean: 0, sd: 0.3 } }, formula).sd).toBe(0.25);
  });

  it('opens again in another flour, but keeps its mean', () => {
    const last = { formula: withRye(0), belief: { mean: 0.2, sd: 0.06 } };
    expect(carriedBelief(last, withRye(40))).toEqual({ mean: 0.2, sd: 0.25 });
    expect(carriedBelief(last, withRye(10)).sd).toBeLessThan(0.2);
  });

  it('tells flours by grain, whatever they are called', () => {
    expect(sameFlour(withRye(15), withRye(25))).toBe(true);
    expect(sameFlour(withRye(15), withRye(26))).toBe(false);
  });
});
