import { describe, expect, it } from 'vitest';
import type { DayAsk } from '../../../../src/core/day/laid/day-plan.ts';
import { layAsk } from '../../../../src/core/day/laid/lay-ask.ts';
import { takeChange, withChange } from '../../../../src/core/day/laid/take-change.ts';
import type { Change } from '../../../../src/core/day/plan/types.ts';
import { HOUR, MINUTE } from '../../../../src/core/units.ts';
import { askedBake, askWorld, dayAsk, fitting, inputOf } from '../../../fakes/laid-day.ts';

const usual = fitting(dayAsk(), askWorld());
const at = (name: string): number => usual.touches.find((one) => one.name === name)!.at;
const pinned = (pins: Readonly<Record<string, number>>): DayAsk =>
  dayAsk({ bakes: [askedBake({ pins })] });

/** What would do, where nothing fits. */
const changesOf = (ask: DayAsk): readonly Change[] => {
  const { result } = [...layAsk(ask, askWorld())].at(-1)!;
  if (result?.fits !== false) throw new Error('It fits.');
  return result.changes;
};

describe('a pin that stands in the way', () => {
  // The mix hours after it would have to be, the bread still due.
  const ask = pinned({ mix: at('divide') + 6 * HOUR, shape: at('shape') });
  const [first, ...others] = changesOf(ask).filter((one) => one.change === 'unpin');

  it('is offered before all else, and the one that stands in nobody’s way is not', () => {
    expect(changesOf(ask)[0]).toEqual(first);
    expect(first).toEqual({
      change: 'unpin',
      batch: 'Cherry and hazelnut',
      touch: 'mix',
      at: at('divide') + 6 * HOUR,
    });
    expect(others).toEqual([]);
  });

  it('let go, there is a plan, and the other pin stands', () => {
    const free = takeChange(ask, first!);
    expect(free.bakes[0]!.pins).toEqual({ shape: at('shape') });
    expect(free.taken).toBeUndefined();
    const laid = fitting(free, askWorld());
    expect(laid.touches.find(({ name }) => name === 'shape')).toMatchObject({ at: at('shape') });
    expect(withChange(inputOf(ask, askWorld()), first!)).toEqual(inputOf(free, askWorld()));
  });

  it('is no offer where it alone would not do', () => {
    const away = [{ name: 'out', from: at('feed levain') - HOUR, to: at('load 1') - 30 * MINUTE }];
    const both = { ...ask, away };
    expect(changesOf(both).some(({ change }) => change === 'unpin')).toBe(false);
  });
});
