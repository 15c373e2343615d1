import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { together, type OvenBatch } from '../../../src/core/circle/oven-batch.ts';
import { bakingMinutes, coolAfter, ovenDay, runsOf } from '../../../src/core/circle/oven-day.ts';
import { loadPlan } from '../../../src/core/oven/load-plan.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { anyDay, WHEAT } from './oven-batches.ts';

const BARLEY: OvenBatch = {
  ...WHEAT,
  bread: 'barley',
  places: 2,
  bake: 45,
  recovery: 5,
  cool: 60,
  cold: false,
};
const AT_EIGHT = 8 * HOUR;

describe('the oven of a bake day', () => {
  it('has seven loaves through three pots in three loads, out at 10:50 and cool at 12:50', () => {
    const day = ovenDay([{ ...WHEAT, count: 7 }], AT_EIGHT);
    expect(day.loads.map(({ count }) => count)).toEqual([3, 3, 1]);
    expect(day.loads.map(({ from }) => from - AT_EIGHT)).toEqual([0, HOUR, 2 * HOUR]);
    expect(day.lastOut).toBe(10 * HOUR + 50 * MINUTE);
    expect(day.coolAt).toBe(12 * HOUR + 50 * MINUTE);
    expect(day.breads).toEqual([
      {
        bread: 'wheat',
        grams: 900,
        count: 7,
        out: day.lastOut,
        coolAt: day.coolAt,
        sliceAt: day.coolAt,
      },
    ]);
  });

  it('takes what cools longest first, and the longer recovery between two breads', () => {
    const day = ovenDay(
      [
        { ...BARLEY, count: 3 },
        { ...WHEAT, count: 3 },
      ],
      0,
    );
    expect(day.loads.map(({ bread, from, out }) => [bread, from / MINUTE, out / MINUTE])).toEqual([
      ['wheat', 0, 50],
      ['barley', 60, 105],
      ['barley', 110, 155],
    ]);
    expect(day.breads.map(({ coolAt }) => coolAt / MINUTE)).toEqual([170, 215]);
    expect(day.coolAt).toBe(215 * MINUTE);
  });

  it('says when a sliced loaf can be handed over, and of what bakes nowhere that it has no hour', () => {
    const all = [{ ...WHEAT, count: 2, cool: 60 }];
    expect(coolAfter(all, [{ ...WHEAT, count: 1 }])).toEqual({ warm: 170, cool: 50 + 60 });
    expect(coolAfter(all, [{ ...WHEAT, count: 1, sliced: true }])).toEqual({
      warm: 170,
      cool: 50 + 120,
    });
    const nowhere = [{ ...WHEAT, places: 0 }];
    expect(coolAfter(nowhere, nowhere)).toBeNull();
    expect(ovenDay(nowhere, 0)).toEqual({
      loads: [],
      breads: [],
      nowhere,
      lastOut: null,
      coolAt: null,
    });
  });

  it('never mixes two breads or sizes in a load, overfills none, and bakes every loaf', () => {
    fc.assert(
      fc.property(anyDay, (batches) => {
        const { loads, breads, lastOut } = ovenDay(batches, AT_EIGHT);
        for (const { bread, grams, count, from, out } of loads) {
          const own = batches.find((batch) => batch.bread === bread && batch.grams === grams)!;
          expect(count).toBeGreaterThan(0);
          expect(count).toBeLessThanOrEqual(own.places);
          expect(out - from).toBe(own.bake * MINUTE);
        }
        for (const [i, load] of loads.entries()) {
          if (i === 0) expect(load.from).toBe(AT_EIGHT);
          else expect(load.from).toBeGreaterThan(loads[i - 1]!.out);
        }
        const baked = batches.map(({ bread }) =>
          loads.reduce((sum, load) => sum + (load.bread === bread ? load.count : 0), 0),
        );
        expect(baked).toEqual(batches.map(({ count }) => count));
        expect(lastOut).toBe(loads.at(-1)?.out ?? null);
        expect(breads).toHaveLength(batches.filter(({ count }) => count > 0).length);
      }),
    );
  });

  it('comes to what the plan of the oven has for one bread, loaf by loaf', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 30, max: 60 }),
        fc.integer({ min: 5, max: 15 }),
        (count, places, bake, recovery) => {
          const plan = loadPlan({
            loaves: Array.from({ length: count }, (_, i) => ({ id: `loaf-${i}`, grams: 900 })),
            pots: Array.from({ length: places }, (_, i) => ({ id: `pot-${i}`, holds: null })),
            minutes: { preheat: 0, lidded: 0, open: bake, recovery, loadMinutes: 0 },
            now: 0,
          });
          const batch = { ...WHEAT, count, places, bake, recovery };
          expect(bakingMinutes([batch])).toBe(plan.lastOut! / MINUTE);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('has all of it cool no later than any other order of the breads would', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        // One recovery for all: the rule's own ground.
        const batches = day
          .filter(({ count }) => count > 0)
          .map((one) => ({ ...one, recovery: 10 }));
        const ours = Math.max(0, ...runsOf(batches).map(({ batch, out }) => out + batch.cool));
        const orders = (list: readonly OvenBatch[]): readonly (readonly OvenBatch[])[] =>
          list.length < 2
            ? [list]
            : list.flatMap((one) =>
                orders(list.filter((other) => other !== one)).map((rest) => [one, ...rest]),
              );
        for (const order of orders(batches)) {
          let at = 0;
          let cool = 0;
          for (const { bake, recovery, cool: own, count, places } of order) {
            at += Math.ceil(count / places) * (bake + recovery);
            cool = Math.max(cool, at - recovery + own);
          }
          expect(ours).toBeLessThanOrEqual(cool);
        }
      }),
    );
  });

  it('adds loaves of one bread and size together and leaves out none of a count', () => {
    expect(
      together(
        [WHEAT],
        [
          { ...WHEAT, count: 4 },
          { ...BARLEY, count: 0 },
        ],
      ),
    ).toEqual([{ ...WHEAT, count: 5 }]);
    expect(together([WHEAT], [{ ...WHEAT, grams: 500 }])).toHaveLength(2);
  });
});
