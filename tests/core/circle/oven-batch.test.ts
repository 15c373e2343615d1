import { describe, expect, it } from 'vitest';
import { ovenBatches, ovenBatch, type BakesIn } from '../../../src/core/circle/oven-batch.ts';
import type { OrderLine } from '../../../src/core/circle/circle.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { ANY_POT, type Pot } from '../../../src/core/kitchen/equipment.ts';
import type { TaughtLoss } from '../../../src/core/records/taught.ts';
import { shippedFormula } from '../formula/shipped.ts';

const KITCHEN: BakesIn = { pots: [ANY_POT, ANY_POT, ANY_POT], tins: 4, stones: 2 };
const [WHEAT, TIN, RYE, OLIVE] = (
  ['lane-wheat', 'barley-tin', 'harbour-rye', 'olive-seed'] as const
).map(shippedFormula) as [Formula, Formula, Formula, Formula];
const line = (bread: string, count: number, some: Partial<OrderLine> = {}): OrderLine => ({
  bread,
  count,
  grams: null,
  cut: false,
  ...some,
});
const pots = (...all: Partial<Pot>[]): BakesIn => ({
  ...KITCHEN,
  pots: all.map((pot) => ({ ...ANY_POT, ...pot })),
});

describe('loaves of one bread and size', () => {
  it('stand in as many places as the kitchen has for their vessel', () => {
    const places = [WHEAT, TIN, OLIVE].map((formula) => ovenBatch(formula, KITCHEN, 1).places);
    expect(places).toEqual([3, 4, 2]);
  });

  it('stand only in pots that have room for them and may be loaded hot; in none: nowhere', () => {
    const kitchen = pots({ litres: 3 }, { litres: 5 }, { material: 'clay' });
    expect(ovenBatch(WHEAT, kitchen, 1, 900).places).toBe(2);
    expect(ovenBatch(WHEAT, kitchen, 1, 1200).places).toBe(1);
    expect(ovenBatch(WHEAT, kitchen, 1, 1600).places).toBe(0);
    expect(ovenBatch(WHEAT, pots({ material: 'clay' }), 1).places).toBe(0);
  });

  it('bake by their own weight, and wait cold where their bread is retarded', () => {
    expect(ovenBatch(WHEAT, KITCHEN, 2)).toMatchObject({ grams: 900, bake: 38, cold: true });
    expect(ovenBatch(WHEAT, KITCHEN, 2, 1500).bake).toBe(48);
    expect(ovenBatch(TIN, KITCHEN, 2)).toMatchObject({ bake: 40, cold: false });
  });

  it('cool as their process has it, an hour at least, and are sliced after two', () => {
    expect(ovenBatch(WHEAT, KITCHEN, 1)).toMatchObject({ warm: 120, cool: 120, slice: 120 });
    expect(ovenBatch(RYE, KITCHEN, 1)).toMatchObject({ warm: 120, cool: 960, slice: 960 });
    const wheat = shippedFormula('lane-wheat');
    const quick = { ...wheat, process: { ...wheat.process, cool: 20 } };
    expect(ovenBatch(quick, KITCHEN, 1)).toMatchObject({ warm: 60, cool: 60, slice: 120 });
  });

  it('are added up out of order lines, a size of its own for a weight of its own', () => {
    const { batches, unknown } = ovenBatches(
      [
        line('lane-wheat', 2),
        line('barley-tin', 1),
        line('lane-wheat', 3, { cut: true }),
        line('lane-wheat', 1, { grams: 783 }),
        line('lane-wheat', 2, { grams: 435 }),
        line('gone', 4),
        line('lane-wheat', 0),
      ],
      [WHEAT, TIN],
      KITCHEN,
      [],
    );
    // 783 g of bread are 900 g of dough: the piece of its formula. 435 of 500 as well lose 13 %.
    expect(batches.map(({ bread, grams, count }) => [bread, grams, count])).toEqual([
      ['lane-wheat', 900, 6],
      ['barley-tin', 850, 1],
      ['lane-wheat', 500, 2],
    ]);
    expect(unknown).toEqual(['gone']);
  });

  it('take the dough that loaves of this oven took', () => {
    const lines = [line('lane-wheat', 1, { grams: 720 })];
    const dough = (weighIns: readonly TaughtLoss[]) =>
      ovenBatches(lines, [WHEAT], KITCHEN, weighIns).batches[0]!.grams;
    const light = { dough: 900, loaf: 720, vessel: 'pot' } as const;
    expect(dough([light, light, light])).toBeGreaterThan(dough([]) + 20);
    expect(dough([{ ...light, vessel: 'tin' }])).toBe(dough([]));
  });

  it('of two thousand orders are added up at once', () => {
    const lines = Array.from({ length: 2000 }, (_, i) =>
      line(i % 2 ? 'lane-wheat' : 'barley-tin', 3, { grams: 500 + (i % 7) * 50 }),
    );
    const begun = performance.now();
    const { batches } = ovenBatches(lines, [WHEAT, TIN], KITCHEN, []);
    expect(performance.now() - begun).toBeLessThan(100);
    expect(batches).toHaveLength(14);
    expect(batches.reduce((sum, { count }) => sum + count, 0)).toBe(6000);
  });
});
