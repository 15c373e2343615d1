import { describe, expect, it } from 'vitest';
import type { BulkTouch } from '../../../src/core/formula/formula.ts';
import {
  gapLimits,
  hasSheet,
  withFold,
  withGap,
  withoutFold,
  withoutSheet,
  withoutTouch,
  withSheet,
} from '../../../src/core/formula/touches.ts';

const fold = (gap: number): BulkTouch => ({ kind: 'fold', after: gap });
const sheet = (gap: number): BulkTouch => ({ kind: 'laminate', after: gap });
const hours = (touches: readonly BulkTouch[]): number[] =>
  touches.map((_, i) => touches.slice(0, i + 1).reduce((sum, one) => sum + one.after, 0));

describe('the touches of a dough', () => {
  it('are one more by a fold as long after as the last fold', () => {
    expect(withFold([])).toEqual([fold(30)]);
    expect(withFold([fold(40), sheet(20)])).toEqual([fold(40), sheet(20), fold(40)]);
  });

  it('are one fewer by the last fold, and the sheet stays at its hour', () => {
    expect(withoutFold([fold(30), sheet(30), fold(20)])).toEqual([fold(30), sheet(30)]);
    expect(withoutFold([fold(30), sheet(30)])).toEqual([sheet(60)]);
    expect(withoutFold([sheet(60)])).toEqual([sheet(60)]);
  });

  it('keep all their hours but that of the one that is taken out', () => {
    const touches = [fold(20), sheet(35), fold(40), fold(25)];
    for (const [i] of touches.entries()) {
      const others = hours(touches).filter((_, at) => at !== i);
      expect(hours(withoutTouch(touches, i))).toEqual(others);
    }
  });

  it('get a sheet in the place of the touch nearest to an hour after the mix', () => {
    expect(withSheet([fold(30), fold(30), fold(30)])).toEqual([fold(30), sheet(30), fold(30)]);
    expect(withSheet([fold(45), fold(45)])).toEqual([sheet(45), fold(45)]);
  });

  it('get a sheet of their own where none of them lies within a sheet’s hours', () => {
    expect(withSheet([])).toEqual([sheet(60)]);
    expect(withSheet([fold(20)])).toEqual([fold(20), sheet(40)]);
    expect(withSheet([fold(20), fold(80)])).toEqual([fold(20), sheet(40), fold(40)]);
    expect(withSheet([fold(100)])).toEqual([sheet(60), fold(40)]);
  });

  it('lose a sheet to a fold at its hour', () => {
    const touches = withSheet([fold(30), fold(30)]);
    expect(hasSheet(touches)).toBe(true);
    expect(withoutSheet(touches)).toEqual([fold(30), fold(30)]);
  });

  it('are usual within 20 to 60 minutes, a sheet within 30 to 90 of the mix', () => {
    const touches = [fold(30), sheet(30), sheet(50)];
    expect(gapLimits(touches, 0)).toEqual({ least: 20, most: 60 });
    expect(gapLimits(touches, 1)).toEqual({ least: 0, most: 60 });
    expect(gapLimits(touches, 2)).toEqual({ least: 0, most: 30 });
    expect(withGap(touches, 1, 45)).toEqual([fold(30), sheet(45), sheet(50)]);
  });
});
