import { describe, expect, it } from 'vitest';
import { compareFormulas } from '../../../src/core/formula/compare.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut');

describe('two formulas beside each other', () => {
  it.each(SHIPPED)('%s beside itself has no change in any line', (name) => {
    const formula = shippedFormula(name);
    const lines = compareFormulas(formula, formula);
    expect(lines.length).toBeGreaterThan(4);
    for (const { was, is, change } of lines) expect([is, change]).toEqual([was, 0]);
  });

  it('says what changed, what went and what came, in percent of all flour', () => {
    const [fruit] = cherry.fillings;
    const now: Formula = {
      ...cherry,
      hydration: 78,
      levain: { ...cherry.levain, flours: [{ id: 'rye', pct: 100 }] },
      fillings: [
        { ...fruit!, pct: 18 },
        { id: 'oats', name: 'oats', pct: 10, keeps: 'shelf', allergens: [], soak: { water: 120 } },
      ],
    };
    const changed = compareFormulas(cherry, now).filter(({ change }) => change !== 0);
    expect(changed.map(({ line, was, is }) => [line, was, is])).toEqual([
      ['water', 75, 78],
      ['levainFlour:wheat', 9, null],
      ['filling:cherry', 16, 18],
      ['filling:hazelnut', 12, null],
      ['levainFlour:rye', null, 9],
      ['filling:oats', null, 10],
      ['soak:oats', null, 12],
    ]);
    expect(changed.at(0)!.change).toBe(3);
    expect(changed.find(({ line }) => line === 'filling:hazelnut')!.change).toBe(-12);
  });

  it('forwards and backwards is the same but for the sign', () => {
    const other = shippedFormula('olive-seed');
    const forth = compareFormulas(cherry, other);
    const back = compareFormulas(other, cherry);
    expect(back).toHaveLength(forth.length);
    for (const { line, change } of forth) {
      expect(back.find((one) => one.line === line)!.change).toBeCloseTo(-change, 12);
    }
  });
});
