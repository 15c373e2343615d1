import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysBetween, feedsAfterCold } from '../../../src/core/readiness/fridge-rest.ts';
import { vigourOf } from '../../../src/core/readiness/vigour.ts';
import { DAY } from '../../../src/core/units.ts';

const of = (speed: number, sd = 0.1) => vigourOf({ mean: Math.log(speed), sd });

describe('a starter’s speed as a baker says it', () => {
  it.each([
    [1, 'usual', null],
    [0.96, 'usual', null],
    [0.9, 'slower', 'tenth'],
    [0.8, 'slower', 'fifth'],
    [0.75, 'slower', 'quarter'],
    [0.667, 'slower', 'third'],
    [0.44, 'slower', 'half'],
    [1.1, 'faster', 'tenth'],
    [1.2, 'faster', 'fifth'],
    [1.5, 'faster', 'half'],
  ])('%f of the usual is told as %s, %s', (speed, pace, part) => {
    expect(of(speed)).toMatchObject({ pace, part });
  });

  it('is told to the next five percent, with where it lies four times in five', () => {
    expect(of(0.81)).toMatchObject({ percent: 80, least: 70, most: 90, known: true });
  });

  it('is a guess until bakes have taught it', () => {
    expect([of(1, 0.3).known, of(1, 0.25).known, of(1, 0.15).known]).toEqual([false, false, true]);
  });

  it('is never outside its own doubt', () => {
    const any = fc.record({
      mean: fc.double({ min: -1, max: 1, noNaN: true }),
      sd: fc.double({ min: 0.01, max: 0.4, noNaN: true }),
    });
    fc.assert(
      fc.property(any, (belief) => {
        const { least, percent, most } = vigourOf(belief);
        expect(least <= percent && percent <= most).toBe(true);
      }),
    );
  });
});

describe('a starter in the fridge', () => {
  it.each([
    [0, 0],
    [6, 0],
    [7, 1],
    [13, 1],
    [14, 2],
    [27, 2],
    [28, 3],
    [400, 3],
  ])('after %i days wants %i feeds before a bake', (days, feeds) => {
    expect(feedsAfterCold(days)).toBe(feeds);
  });

  it('has been there for whole days, never less than none', () => {
    expect([daysBetween(0, DAY - 1), daysBetween(0, DAY), daysBetween(DAY, 0)]).toEqual([0, 1, 0]);
  });
});
