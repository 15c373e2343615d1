import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { together, type OvenBatch } from '../../../src/core/circle/oven-batch.ts';
import { BOUNDS, over, ovenHours, roomFor, type DayHas } from '../../../src/core/circle/cap.ts';
import { anyBatch, anyDay, anyHas, BOUNDLESS, WHEAT } from './oven-batches.ts';

const has = (some: Partial<DayHas>): DayHas => ({ ...BOUNDLESS, ...some });
const bowls = (count: number, kilos = 3): DayHas['bowls'] => ({ count, kilos, litres: null });
const withOne = (
  one: OvenBatch,
  count: number,
  taken: readonly OvenBatch[],
): readonly OvenBatch[] => together(taken, [{ ...one, count }]);

/** The oven minute by minute: no formula of loads, one place after the other. */
function simulated(batches: readonly OvenBatch[]): number {
  const queue = batches
    .filter(({ count }) => count > 0)
    .toSorted((a, b) => b.cool - a.cool)
    .flatMap((batch) => Array.from({ length: batch.count }, () => batch));
  let minute = 0;
  let oven: { readonly batch: OvenBatch; readonly until: number; loaves: number } | null = null;
  let left: { readonly batch: OvenBatch; readonly at: number } | null = null;
  for (; queue.length > 0 || oven; minute += 1) {
    if (oven && minute === oven.until) {
      left = { batch: oven.batch, at: minute };
      oven = null;
      if (queue.length === 0) return minute;
    }
    const next = queue[0];
    const hot = !left || minute >= left.at + Math.max(left.batch.recovery, next?.recovery ?? 0);
    if (oven || !next || !hot) continue;
    oven = { batch: next, until: minute + next.bake, loaves: 0 };
    while (queue[0] === next && oven.loaves < next.places) {
      queue.shift();
      oven.loaves += 1;
    }
  }
  return 0;
}

describe('the room a bake day has', () => {
  it('is what the loads in the oven’s hours take: four of three in four hours', () => {
    const room = roomFor(WHEAT, [], has({ oven: 240 }));
    expect(room).toEqual({
      more: 12,
      binds: ['oven'],
      limits: { oven: 12, pots: null, fridge: null, bowls: null },
    });
    expect(roomFor(WHEAT, [{ ...WHEAT, count: 7 }], has({ oven: 240 })).more).toBe(5);
  });

  it('is not limited by hours, fridge or bowls that nobody said', () => {
    expect(roomFor(WHEAT, [WHEAT], BOUNDLESS)).toEqual({
      more: null,
      binds: [],
      limits: { oven: null, pots: null, fridge: null, bowls: null },
    });
  });

  it('is none where no pot may bake it, whatever else there is', () => {
    const room = roomFor({ ...WHEAT, places: 0 }, [], has({ oven: 240, fridge: 8 }));
    expect([room.more, room.binds]).toEqual([0, ['pots']]);
  });

  it('counts the fridge for what waits cold alone', () => {
    const warm = { ...WHEAT, bread: 'barley', cold: false };
    const taken = [
      { ...WHEAT, count: 5 },
      { ...warm, count: 4 },
    ];
    expect(roomFor(WHEAT, taken, has({ fridge: 8 })).limits.fridge).toBe(3);
    expect(roomFor(warm, taken, has({ fridge: 8 })).limits.fridge).toBeNull();
    expect(roomFor(WHEAT, taken, has({ fridge: 4 })).more).toBe(0);
  });

  it('has no two breads in one bowl: 3 kg take three pieces of 900 g with what sticks to it', () => {
    expect(roomFor(WHEAT, [], has({ bowls: bowls(1) })).more).toBe(3);
    const cherry = { ...WHEAT, bread: 'cherry' };
    expect(roomFor(WHEAT, [cherry], has({ bowls: bowls(1) })).more).toBe(0);
    expect(roomFor(WHEAT, [cherry], has({ bowls: bowls(2) })).binds).toEqual(['bowls']);
    // Small ones of the same dough share its bowl.
    const small = { ...WHEAT, grams: 450 };
    expect(roomFor(small, [WHEAT], has({ bowls: bowls(1) })).more).toBe(4);
  });

  it('names all that bind where there is as little of two', () => {
    expect(roomFor(WHEAT, [], has({ oven: 240, fridge: 12 })).binds).toEqual(['oven', 'fridge']);
  });

  it('takes exactly so many and not one more', () => {
    fc.assert(
      fc.property(anyBatch('wheat'), anyDay, anyHas, (one, day, bounds) => {
        const taken = day.map((batch) =>
          batch.bread === one.bread ? { ...one, ...{ count: batch.count } } : batch,
        );
        const { more, binds, limits } = roomFor(one, taken, bounds);
        if (over(taken, bounds).length > 0) return;
        if (more === null) {
          expect(binds).toEqual([]);
          return;
        }
        expect(over(withOne(one, more, taken), bounds)).toEqual([]);
        expect(over(withOne(one, more + 1, taken), bounds)).toEqual(binds);
        expect(Math.min(...BOUNDS.map((bound) => limits[bound] ?? Infinity))).toBe(more);
      }),
      { numRuns: 1000 },
    );
  });

  it('is as many as an oven simulated minute by minute has out in its hours', () => {
    fc.assert(
      fc.property(
        anyBatch('wheat'),
        anyBatch('cherry'),
        fc.integer({ min: 60, max: 500 }),
        (one, other, oven) => {
          const taken = [other];
          if (simulated(taken) > oven) return;
          let most = 0;
          while (
            simulated([other, { ...one, count: most + 1 }].toSorted((a, b) => b.cool - a.cool)) <=
            oven
          )
            most += 1;
          expect(roomFor(one, taken, has({ oven })).more).toBe(most);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('is never lowered by one more place, fridge place, bowl or minute', () => {
    fc.assert(
      fc.property(anyBatch('wheat'), anyDay, anyHas, (one, taken, bounds) => {
        const more = (to: DayHas, places = 0): number => {
          const wider = (batch: OvenBatch): OvenBatch => ({
            ...batch,
            places: batch.places + places,
          });
          return roomFor(wider(one), taken.map(wider), to).more ?? Infinity;
        };
        const now = more(bounds);
        const plus = (n: number | null): number | null => (n === null ? null : n + 1);
        expect(more(bounds, 1)).toBeGreaterThanOrEqual(now);
        expect(more({ ...bounds, oven: plus(bounds.oven) })).toBeGreaterThanOrEqual(now);
        expect(more({ ...bounds, fridge: plus(bounds.fridge) })).toBeGreaterThanOrEqual(now);
        const wide = { ...bounds.bowls, count: plus(bounds.bowls.count) };
        expect(more({ ...bounds, bowls: wide })).toBeGreaterThanOrEqual(now);
      }),
      { numRuns: 500 },
    );
  });

  it('counts the hours of an oven over midnight, and none where nobody said them', () => {
    expect(ovenHours({ from: 8 * 60, to: 15 * 60 })).toBe(420);
    expect(ovenHours({ from: 22 * 60, to: 2 * 60 })).toBe(240);
    expect(ovenHours(null)).toBeNull();
  });
});
