import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coreAt, minutesToCore } from '../../../src/core/oven/core-heat.ts';
import type { CoreReading } from '../../../src/core/oven/fit-alpha.ts';
import { moreMinutes } from '../../../src/core/oven/more-minutes.ts';

const PRINTED = { lidded: 18, open: 20 };
const read = (minutes: number, core: number, grams = 900): CoreReading => ({
  start: 4,
  grams,
  minutes,
  core,
});
/** Cores as an oven of that diffusivity would show them. */
const kitchen = (alpha: number): CoreReading[] =>
  [34, 38, 42, 36, 40].map((minutes) =>
    read(minutes, coreAt({ start: 4, grams: 900 }, minutes, alpha)!),
  );

describe('minutes to the next look at a low core', () => {
  it('are those the core takes, where the oven is as it always was', () => {
    for (const alpha of [7e-7, 8.5e-7]) {
      const minutes = minutesToCore({ start: 4, grams: 900 }, 88, alpha)!;
      const left = minutesToCore({ start: 4, grams: 900 }, 93, alpha)! - minutes;
      const printed = { lidded: 20, open: minutes };
      expect(moreMinutes(read(minutes, 88), kitchen(alpha), 93, printed)).toBe(Math.round(left));
    }
  });

  it('are more in a kitchen whose loaves have been slow, and fewer where they were fast', () => {
    const of = (alpha: number) => moreMinutes(read(33, 88), kitchen(alpha), 93, PRINTED)!;
    expect(of(7e-7)).toBeGreaterThan(of(1.5e-6));
  });

  it('are more the cooler it is, and within 3 and 10', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 40 }),
        fc.double({ min: 80, max: 92.9, noNaN: true }),
        fc.integer({ min: 300, max: 1500 }),
        (minutes, core, grams) => {
          const more = moreMinutes(read(minutes, core, grams), [], 93, PRINTED);
          expect(more).not.toBeNull();
          expect(more).toBeGreaterThanOrEqual(3);
          expect(more).toBeLessThanOrEqual(10);
          const cooler = moreMinutes(read(minutes, core - 5, grams), [], 93, PRINTED)!;
          expect(cooler).toBeGreaterThanOrEqual(more!);
        },
      ),
    );
  });

  it('never go beyond the bake’s own minutes and a third, and none is told past them', () => {
    // 28 driven by the core and 10 that colour: 47.8 at most.
    expect(moreMinutes(read(41, 74), [], 93, PRINTED)).toBe(6);
    expect(moreMinutes(read(44, 74), [], 93, PRINTED)).toBe(3);
    expect(moreMinutes(read(45, 74), [], 93, PRINTED)).toBeNull();
    expect(moreMinutes(read(400, 74), [], 93, PRINTED)).toBeNull();
  });

  it('are none for a core that is there, and none for one that no water reaches', () => {
    expect(moreMinutes(read(38, 93), [], 93, PRINTED)).toBeNull();
    expect(moreMinutes(read(38, 99), [], 93, PRINTED)).toBeNull();
    expect(moreMinutes({ ...read(38, 85), boils: 90 }, [], 93, PRINTED)).toBeNull();
    expect(moreMinutes({ ...read(38, 83), boils: 95 }, [], 88, PRINTED)).not.toBeNull();
  });

  it('are none where a core says nothing yet, or was misread', () => {
    expect(moreMinutes(read(36, 73), [], 93, PRINTED)).toBeNull();
    expect(moreMinutes(read(36, 20.5), [], 93, PRINTED)).toBeNull();
  });
});
