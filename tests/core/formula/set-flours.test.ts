import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Flour, Formula } from '../../../src/core/formula/formula.ts';
import { toBowl } from '../../../src/core/formula/in-bowl-percent.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import {
  addFlour,
  changeFlour,
  dropFlour,
  FLOUR_BEGINS,
} from '../../../src/core/formula/set-flours.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut'); // 85 % wheat, 15 % rye; 9 % of it in the levain
const spelt: Omit<Flour, 'pct'> = { id: 'spelt', name: 'spelt flour', grain: 'spelt' };
const pctOf = ({ flours }: Formula): Record<string, number> =>
  Object.fromEntries(flours.map(({ id, pct }) => [id, pct]));
const sum = (parts: readonly { readonly pct: number }[]): number =>
  parts.reduce((all, { pct }) => all + pct, 0);

describe('another flour', () => {
  it('begins at a tenth; the others give way, each by its share', () => {
    const next = addFlour(cherry, spelt)!;
    expect(pctOf(next)).toEqual({ wheat: 76.5, rye: 13.5, spelt: 10 });
    expect({ ...next, flours: [] }).toEqual({ ...cherry, flours: [] });
  });

  it('is a tenth of the bowl where that is how percent is counted, and the levain stays', () => {
    const bowl: Formula = { ...cherry, convention: 'bowl' };
    const [before, after] = [toBowl(bowl), toBowl(addFlour(bowl, spelt)!)];
    // 83.52 and 16.48 % of the bowl's flour, nine tenths of each.
    expect(after.flours.map(({ pct }) => Number(pct.toFixed(2)))).toEqual([75.16, 14.84, 10]);
    expect(after.levain).toBeCloseTo(before.levain, 9);
    expect(after.levainFlours).toEqual([{ id: 'wheat', pct: 100 }]);
    expect(after.salt).toBeCloseTo(before.salt, 9);
  });

  it('is refused beside eight, and where another would be hardly there', () => {
    const eight = Array.from({ length: 8 }, (_, i) => ({ ...spelt, id: `f${i}`, pct: 12.5 }));
    expect(addFlour({ ...cherry, flours: eight }, spelt)).toBeNull();
    const tiny = cherry.flours.map((one, i) => ({ ...one, pct: i === 0 ? 99.9 : 0.1 }));
    expect(addFlour({ ...cherry, flours: tiny }, spelt)).toBeNull();
  });
});

describe('a flour that goes', () => {
  it('leaves its share to the others, each by its own, and is never the last', () => {
    const three = addFlour(cherry, spelt)!;
    const left = pctOf(dropFlour(three, 'rye')!);
    expect(left['wheat']).toBeCloseTo((76.5 / 86.5) * 100, 9);
    expect(left['spelt']).toBeCloseTo((10 / 86.5) * 100, 9);
    const one = dropFlour(dropFlour(three, 'rye')!, 'spelt')!;
    expect(pctOf(one)).toEqual({ wheat: 100 });
    expect(dropFlour(one, 'wheat')).toBeNull();
  });

  it('leaves the levain’s own mix without it; one that was fed it alone is fed as usual', () => {
    const fed = (flours: Formula['levain']['flours']): Formula => ({
      ...cherry,
      levain: { ...cherry.levain, ...(flours ? { flours } : {}) },
    });
    const three = addFlour(
      fed([
        { id: 'rye', pct: 50 },
        { id: 'wheat', pct: 50 },
      ]),
      spelt,
    )!;
    expect(dropFlour(three, 'rye')!.levain.flours).toEqual([{ id: 'wheat', pct: 100 }]);
    expect(dropFlour(fed([{ id: 'rye', pct: 100 }]), 'rye')!.levain).not.toHaveProperty('flours');
    const bowl: Formula = { ...fed([{ id: 'rye', pct: 100 }]), convention: 'bowl' };
    const left = dropFlour(bowl, 'rye')!;
    expect(toBowl(left).levainFlours).toEqual([{ id: 'wheat', pct: 100 }]);
    expect(toBowl(left).levain).toBeCloseTo(toBowl(bowl).levain, 9);
  });
});

it('a flour of another name or grain is not what its packet told of', () => {
  const told = cherry.flours.map((one) => ({ ...one, packet: 'read' as const }));
  const next = changeFlour({ ...cherry, flours: told }, 'rye', { name: 'light rye', grain: 'rye' });
  expect(next.flours[1]).toEqual({ id: 'rye', name: 'light rye', grain: 'rye', pct: 15 });
  expect(next.flours[0]).toEqual(told[0]);
});

it('whatever is added and dropped, flours are 100 in all, the reader takes it, and it is undone by its other', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SHIPPED),
      fc.constantFrom('whole' as const, 'bowl' as const),
      (name, convention) => {
        const formula: Formula = { ...shippedFormula(name), convention };
        const added = addFlour(formula, { ...spelt, id: 'new' });
        if (added === null) throw new Error(`${name} takes no flour.`);
        expect(sum(added.flours)).toBeCloseTo(100, 9);
        expect(readFormula(added).formula).toEqual(added);
        const counted = convention === 'bowl' ? toBowl(added).flours : added.flours;
        expect(counted.find(({ id }) => id === 'new')!.pct).toBeCloseTo(FLOUR_BEGINS, 9);
        const again = dropFlour(added, 'new')!;
        again.flours.forEach(({ pct }, i) => expect(pct).toBeCloseTo(formula.flours[i]!.pct, 9));
        expect(again.hydration).toBeCloseTo(formula.hydration, 9);
      },
    ),
    { numRuns: 40 },
  );
});
