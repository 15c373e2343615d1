import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { baseAmounts, baseDoughs } from '../../../src/core/circle/base-dough.ts';
import { batchesOf } from '../../../src/core/circle/batches.ts';
import type { OrderLine } from '../../../src/core/circle/circle.ts';
import { isSameDough } from '../../../src/core/circle/same-dough.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { mixedAmounts } from '../../../src/core/formula/mixed-amounts.ts';
import { recipeBowls } from '../../../src/core/kitchen/split-bowls.ts';
import { shippedFormula } from '../formula/shipped.ts';
import { figBread, plainBread } from './support/same-dough-breads.ts';

const BOWLS = { count: null, kilos: 3, litres: null };
const line = (bread: string, count: number, grams: number | null = null): OrderLine => {
  return { bread, count, grams, cut: false };
};
const FORMULAS = [plainBread, figBread, shippedFormula('lane-wheat'), shippedFormula('seed-oat')];
const batched = (...lines: OrderLine[]) =>
  batchesOf([{ at: null, lines }], { formulas: FORMULAS, weighIns: [], scale: null }).batches;
const dough = (...lines: OrderLine[]) =>
  baseDoughs(batched(...lines), { scale: null, bowls: BOWLS });
const sum = (lines: readonly { grams: number }[]) =>
  lines.reduce((all, { grams }) => all + grams, 0);

describe('a dough for all that differs in its filling only', () => {
  it('is one for 8 plain and 4 filled, in four bowls six minutes apart', () => {
    const [base, ...others] = dough(line('plain', 8, 700), line('fig', 4, 800));
    expect(others).toEqual([]);
    const of = (item: string) => base!.lines.find((one) => one.item === item)?.grams;
    // By hand, of pieces of 805 and 918 g: (8·805 + 4·918/1.18)/.98 = 9746.8 g, of it 5076.5 flour.
    expect(of('flour:wheat')).toBe(5075);
    expect(of('water')! + of('secondWater')!).toBe(3657);
    expect(of('levain')).toBe(913);
    expect(of('salt')).toBe(101);
    expect(base!.batches[1]!.recipe.lines.filling.map(({ grams }) => grams)).toEqual([560]);
    expect(base!.bowls.map(({ later }) => later)).toEqual([0, 6, 12, 18]);
    for (const { lines } of base!.bowls) expect(Math.abs(sum(lines) - 2438)).toBeLessThan(5);
  });

  it('loses in the bowl what is in the bowl, and no filling', () => {
    const { fillings, dough: all } = mixedAmounts(figBread, 4, 1180);
    expect(fillings[0]!.grams).toBeCloseTo(4 * 180, 6);
    expect(all - fillings[0]!.grams).toBeCloseTo(4000 / 0.98, 6);
    // Spooned dough takes its filling in before it is divided.
    const spooned = { ...figBread, process: { ...figBread.process, shaping: 'scoop' } } as Formula;
    expect(mixedAmounts(spooned, 4, 1180).fillings[0]!.grams).toBeCloseTo((4 * 180) / 0.98, 6);
  });

  it('feeds one levain for all of it', () => {
    const [base] = dough(line('plain', 8, 700), line('fig', 4, 800));
    const inside = baseAmounts(base!.batches).levain;
    expect(Math.abs(sum(base!.feed) - (inside + 30) * 1.05)).toBeLessThanOrEqual(0.5);
  });

  it('is weighed as the bench weighs it, where one bread has it to itself', () => {
    for (const bread of ['fig', 'lane-wheat', 'seed-oat']) {
      const [batch] = batched(line(bread, 5));
      const [base] = dough(line(bread, 5));
      const { first, second } = batch!.recipe.lines;
      expect(base!.lines).toEqual([...first, ...second]);
      expect(base!.feed).toEqual(batch!.recipe.lines.feed);
      expect(base!.bowls).toHaveLength(recipeBowls(batch!.recipe, { bowls: BOWLS }).length);
    }
  });

  it('keeps apart what is another dough', () => {
    expect(dough(line('plain', 2), line('lane-wheat', 2), line('fig', 1))).toMatchObject([
      { batches: [{ formula: { id: 'plain' } }, { formula: { id: 'fig' } }] },
      { batches: [{ formula: { id: 'lane-wheat' } }] },
    ]);
  });

  it('loses nothing between orders, lines and bowls, whatever is ordered', () => {
    const anyLine = fc.record({
      bread: fc.constantFrom('plain', 'fig', 'lane-wheat', 'seed-oat'),
      count: fc.integer({ min: 1, max: 36 }),
      grams: fc.option(fc.integer({ min: 300, max: 1500 })),
      cut: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(anyLine, { minLength: 1, maxLength: 6 }), (lines) => {
        const batches = batched(...lines);
        const bases = dough(...lines);
        expect(bases.flatMap((base) => base.batches)).toHaveLength(batches.length);
        for (const base of bases) {
          const inBowls = base.bowls.flatMap((bowl) => bowl.lines);
          expect(sum(inBowls)).toBeCloseTo(sum(base.lines), 6);
          expect(sum(base.lines)).toBeCloseTo(base.dough, 6);
          for (const { item, grams } of base.lines) {
            const shares = inBowls.filter((one) => one.item === item);
            expect(sum(shares)).toBeCloseTo(grams, 6);
          }
          // What comes to the table is what the loaves are made of.
          const pieces = base.batches.reduce((all, { loaves, piece }) => all + loaves * piece, 0);
          const fillings = base.batches.flatMap(({ recipe }) => recipe.lines.filling);
          const step = Math.max(...[...base.lines, ...fillings].map(({ division }) => division));
          const slack = step / 2 + fillings.length * step;
          const most = base.batches.length === 1 ? step / 2 : slack;
          expect(Math.abs(base.dough * 0.98 + sum(fillings) - pieces)).toBeLessThanOrEqual(
            most + 0.02 * step * fillings.length + 1e-6,
          );
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the same dough', () => {
  const other = (change: Partial<Formula>) => isSameDough(plainBread, { ...plainBread, ...change });

  it('has flours of other ids, and not of other names or shares', () => {
    const [flour] = plainBread.flours;
    const named = (id: string, name: string) => ({
      flours: [{ ...flour!, id, name }],
      levain: { ...plainBread.levain, flours: [{ id, pct: 100 }] },
    });
    expect(other(named('f1', 'Strong  wheat flour'))).toBe(true);
    expect(other(named('wheat', 'soft wheat flour'))).toBe(false);
  });

  it('is not one with more water, salt or levain, or with less of the water at first', () => {
    expect(other({ hydration: plainBread.hydration + 0.04 })).toBe(true);
    expect(other({ hydration: plainBread.hydration + 1 })).toBe(false);
    expect(other({ salt: plainBread.salt + 0.1 })).toBe(false);
    expect(other({ secondWater: plainBread.secondWater + 0.05 })).toBe(false);
    const { levain } = plainBread;
    expect(other({ levain: { ...levain, pff: levain.pff + 0.01 } })).toBe(false);
    expect(other({ levain: { ...levain, hydration: 0.8 } })).toBe(false);
    expect(other({ levain: { ...levain, feed: { seed: 1, flour: 3, water: 3 } } })).toBe(false);
  });

  it('may be lifted, filled and baked in other ways', () => {
    expect(other({ fillings: figBread.fillings, process: figBread.process, piece: 500 })).toBe(
      true,
    );
  });
});
