import { describe, expect, it } from 'vitest';
import { BAKE_STAGES, OVEN_STAGES } from '../../../src/core/records/stage.ts';
import { canWait, minutesLeft } from '../../../src/core/kitchen/quiet-hours.ts';

const HOUR = 60;

describe('the quiet hours', () => {
  it.each([
    [22 * HOUR, 8 * HOUR],
    [23 * HOUR + 30, 6 * HOUR + 30],
    [0, 6 * HOUR],
    [6 * HOUR - 1, 1],
    [6 * HOUR, null],
    [12 * HOUR, null],
    [22 * HOUR - 1, null],
  ])('from 22 to 6, at minute %i, last %s more', (minute, left) => {
    expect(minutesLeft(minute, { from: 22 * HOUR, to: 6 * HOUR })).toBe(left);
  });

  it('may lie within one day, and are none where they end as they begin', () => {
    expect(minutesLeft(2 * HOUR, { from: HOUR, to: 5 * HOUR })).toBe(3 * HOUR);
    expect(minutesLeft(0, { from: HOUR, to: 5 * HOUR })).toBeNull();
    expect(minutesLeft(HOUR, { from: HOUR, to: HOUR })).toBeNull();
  });
});

it('only what nothing is lost by waits for the morning', () => {
  const waits = [...BAKE_STAGES, ...OVEN_STAGES].filter(canWait);
  expect(waits).toEqual(['levain.look', 'proof.look', 'cool.handOver']);
  // Neither a task of a wait nor a timer.
  expect(['lead.feed', 'nuts', ''].filter(canWait)).toEqual([]);
});
