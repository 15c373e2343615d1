import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amounts } from '../../../src/core/formula/amounts.ts';
import { countedPct, keptPct } from '../../../src/core/formula/filling-basis.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { fromBowl, toBowl, type BowlSheet } from '../../../src/core/formula/in-bowl-percent.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const wheat = shippedFormula('lane-wheat');
const cherry = shippedFormula('cherry-hazelnut');
const plain = (formula: Formula): Formula => ({
  ...formula,
  flours: [{ id: 'wheat', name: 'wheat', grain: 'wheat', pct: 100 }],
});
const SHEET: BowlSheet = {
  flours: [{ id: 'wheat', pct: 100 }],
  water: 75,
  levain: 20,
  levainHydration: 1,
  levainFlours: [{ id: 'wheat', pct: 100 }],
  salt: 2,
  fillings: [],
};
const readFrom = (base: Formula, sheet: BowlSheet): Formula => {
  const { formula, reason } = fromBowl(base, sheet);
  if (formula === null) throw new Error(JSON.stringify(reason));
  return formula;
};

describe('percent of the bowl’s flour', () => {
  it('1000 flour, 750 water, 200 levain at 100 %: 75 and 20 there, 77.3 and 9.1 of all flour', () => {
    const formula = readFrom(plain(wheat), SHEET);
    expect(formula.hydration).toBeCloseTo(77.27, 2);
    expect(formula.levain.pff * 100).toBeCloseTo(9.09, 2);
    expect(formula.salt).toBeCloseTo(1.82, 2);
    expect(formula.levain).not.toHaveProperty('flours');
    const { totalFlour, levain, finalWater, levainFlour } = amounts(formula, 1970);
    expect([totalFlour - levainFlour, finalWater, levain].map((g) => Number(g.toFixed(6)))).toEqual(
      [1000, 750, 200],
    );
  });

  it('a stiff levain counts for more flour and less water', () => {
    const stiff = readFrom(plain(wheat), { ...SHEET, levainHydration: 0.5 });
    expect(stiff.levain.pff).toBeCloseTo(13.3333 / 113.3333, 5);
    expect(stiff.hydration).toBeCloseTo(((75 + 6.6667) / 113.3333) * 100, 3);
  });

  it.each(SHIPPED)('%s there and back is as it was', (name) => {
    const formula = shippedFormula(name);
    const sheet = toBowl(formula);
    expect(sheet.flours.reduce((sum, { pct }) => sum + pct, 0)).toBeCloseTo(100, 9);
    const back = readFrom(formula, sheet);
    expect(Object.keys(back.levain)).toEqual(Object.keys(formula.levain));
    const close = (a: unknown, b: unknown): void => {
      if (typeof a === 'number') expect(a).toBeCloseTo(b as number, 9);
      else if (typeof a === 'object' && a !== null)
        for (const [key, value] of Object.entries(a)) close(value, (b as never)[key]);
      else expect(a).toBe(b);
    };
    close(formula, back);
  });

  it('keeps the levain’s own flours, there and back', () => {
    const own: Formula = {
      ...cherry,
      levain: { ...cherry.levain, flours: [{ id: 'rye', pct: 100 }] },
    };
    const sheet = toBowl(own);
    expect(sheet.levainFlours).toEqual([{ id: 'rye', pct: 100 }]);
    expect(sheet.flours[1]!.pct).toBeCloseTo((15 - 9) / 0.91, 9);
    expect(readFrom(own, sheet).levain.flours).toEqual([{ id: 'rye', pct: 100 }]);
  });

  it('any sheet there and back is as it was', () => {
    const n = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        n(50, 100),
        n(3, 60),
        n(0.5, 1.5),
        n(0, 3),
        n(1, 30),
        n(1, 99),
        (water, levain, levainHydration, salt, filling, rye) => {
          const sheet: BowlSheet = {
            ...SHEET,
            flours: [
              { id: 'wheat', pct: 100 - rye },
              { id: 'rye', pct: rye },
            ],
            levainFlours: [{ id: 'rye', pct: 100 }],
            water,
            levain,
            levainHydration,
            salt,
            fillings: [
              { id: 'cherry', pct: filling },
              { id: 'hazelnut', pct: 12 },
            ],
          };
          const back = toBowl(readFrom(cherry, sheet));
          expect(back.water).toBeCloseTo(water, 6);
          expect(back.levain).toBeCloseTo(levain, 6);
          expect(back.salt).toBeCloseTo(salt, 6);
          expect(back.fillings[0]!.pct).toBeCloseTo(filling, 6);
          expect(back.flours[1]!.pct).toBeCloseTo(rye, 6);
          expect(back.levainFlours).toEqual([{ id: 'rye', pct: expect.closeTo(100, 6) }]);
        },
      ),
    );
  });

  it('refuses flours that are not 100 %, and what the reader refuses', () => {
    const half = { ...SHEET, flours: [{ id: 'wheat', pct: 90 }] };
    expect(fromBowl(plain(wheat), half).reason).toEqual({ key: 'bowlFlours', values: { sum: 90 } });
    expect(fromBowl(plain(wheat), { ...SHEET, salt: 40 }).reason).toMatchObject({
      key: 'formulaUnreadable',
      values: { path: 'salt' },
    });
    const none = fromBowl(plain(wheat), { ...SHEET, water: Number.NaN });
    expect(none.reason?.values['path']).toBe('hydration');
  });
});

describe('fillings counted against the dough', () => {
  const ofDough: Formula = { ...cherry, hydration: 75, salt: 2, fillingsOf: 'dough' };

  it('35.4 % of flour is 20 % of the dough before it goes in', () => {
    expect(countedPct(ofDough, 35.4)).toBeCloseTo(20, 9);
    expect(keptPct(ofDough, 20)).toBeCloseTo(35.4, 9);
  });

  it('is of flour where nobody said otherwise', () => {
    expect(countedPct(cherry, 35.4)).toBe(35.4);
    expect(keptPct(cherry, 35.4)).toBe(35.4);
  });
});
