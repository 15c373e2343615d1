import { describe, expect, it } from 'vitest';
import { withoutHotOven } from '../../../../src/core/day/laid/hot-oven.ts';
import { layInput } from '../../../../src/core/day/laid/lay-ask.ts';
import { movesOf } from '../../../../src/core/day/laid/moved.ts';
import { isWorthMoving } from '../../../../src/core/day/laid/still-stands.ts';
import type { PlanInput, PlannedTouch } from '../../../../src/core/day/plan/types.ts';
import { STONE, TIN } from '../../../machines/support/recipe.ts';
import {
  askedDay,
  at,
  fitting,
  HOUR,
  live,
  dayPlan,
  OVEN_OFF,
  MINUTE,
} from '../support/live-day.ts';

const FIRST = 'cherry and hazelnut';
const SECOND = 'lane wheat';
type Asked = Parameters<typeof askedDay>[0];

const day = (hours: number, recipe?: NonNullable<Asked>[number]['recipe']): PlanInput =>
  askedDay([
    { name: FIRST, due: at(5, 12) },
    { name: SECOND, due: at(5, 12) + hours * HOUR, ...(recipe ? { recipe } : {}) },
  ]);
const ovensOn = (touches: readonly PlannedTouch[]): string[] =>
  touches.filter(({ name }) => name === 'oven on').map(({ batch }) => batch);
const laid = (input: PlanInput) => {
  const last = [...layInput(input)].at(-1)!.result;
  if (!last.fits) throw new Error('No plan.');
  return last;
};

describe('an oven that is hot from the bake before', () => {
  it('is turned on once for two bakes, and no other touch moves or is missing', () => {
    const input = day(2);
    const whole = fitting(input);
    const result = laid(input);
    expect(ovensOn(whole.touches).toSorted()).toEqual([FIRST, SECOND]);
    expect(ovensOn(result.touches)).toEqual([FIRST]);
    const left = whole.touches.filter(
      ({ batch, name }) => !(batch === SECOND && name === 'oven on'),
    );
    expect(result.touches).toEqual(left);
    expect(result.ready).toEqual(whole.ready);
  });

  it('is turned on again where it would stand hot for longer than it takes to heat', () => {
    const far = laid(day(8));
    expect(ovensOn(far.touches)).toEqual([FIRST, SECOND]);
    expect(ovensOn(laid(askedDay()).touches)).toHaveLength(1);
  });

  it('serves a tin after pots; a stone after pots heats by itself', () => {
    /** The second's load half an hour after the first bake's last loaf is out. */
    const put = (recipe: NonNullable<Asked>[number]['recipe']) => {
      const input = day(8, recipe);
      const { touches, ...plan } = fitting(input);
      const load = touches.find(({ batch, name }) => batch === SECOND && name === 'load 1')!;
      const out = touches.findLast(
        ({ batch, name }) => batch === FIRST && name.startsWith('unload '),
      )!;
      const by = out.at + 30 * MINUTE - load.at;
      const moved = touches.map((one) =>
        one.batch === SECOND ? { ...one, at: one.at + by } : one,
      );
      const result = withoutHotOven(input, { ...plan, touches: moved });
      return result.fits ? ovensOn(result.touches) : null;
    };
    expect(put(undefined)).toEqual([FIRST]);
    expect(put(TIN)).toEqual([FIRST]);
    expect(put(STONE)!.toSorted()).toEqual([FIRST, SECOND]);
  });

  it('keeps the touch that the baker pinned', () => {
    const input = day(2);
    const on = fitting(input).touches.find(
      ({ batch, name }) => batch === SECOND && name === 'oven on',
    )!;
    const pinned = {
      ...input,
      batches: input.batches.map((one) =>
        one.name === SECOND ? { ...one, fixed: { 'oven on': on.at } } : one,
      ),
    };
    expect(ovensOn(laid(pinned).touches)).toEqual([FIRST, SECOND]);
  });

  it('that is not hot after all is told as a touch that is new, and asked about', () => {
    const input = day(2);
    const { touches, ready } = laid(input);
    const plan = { ...dayPlan(input), touches, ready };
    const now = at(3, 19, 30);
    const gone = live(plan, input, { bakes: {}, oven: OVEN_OFF, lanes: {} }, now);
    const second = input.batches.find(({ name }) => name === SECOND)!;
    const alone = { ...gone, done: {}, input: { ...input, batches: [second] } };
    const fresh = fitting(alone.input);
    const moves = movesOf(plan, alone, fresh);
    expect(moves.filter(({ from }) => from === null).map(({ name }) => name)).toEqual(['oven on']);
    expect(isWorthMoving(fresh, fresh, { moves, whys: [] })).toBe(true);
  });
});
