import { describe, expect, it } from 'vitest';
import { isPast } from '../../src/core/day/laid/is-past.ts';
import type { DayPlan } from '../../src/core/day/laid/day-plan.ts';
import type { Deed } from '../../src/core/records/fact.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { standingPlan } from '../../src/core/records/standing-plan.ts';
import { HOUR } from '../../src/core/units.ts';
import { laidDay, SATURDAY_NOON, THURSDAY } from '../fakes/laid-day.ts';
import { makeRow } from '../fakes/records.ts';
import { RECIPE } from '../machines/support/recipe.ts';

const PLAN = laidDay();
const NAME = 'Cherry and hazelnut';

/** Rows of so many deeds; the n-th fact's id is `f<n>`, from 1. */
const rows = (...deeds: readonly Deed[]): LogRecord[] =>
  deeds.map((deed, i) => {
    const at = THURSDAY + i * HOUR;
    const fact = { ...deed, id: `f${i + 1}`, device: 'd', at, raw: at };
    return { ...makeRow(i + 1), fact };
  });

const plan = (change: Partial<DayPlan> = {}): Deed => ({
  kind: 'plan',
  plan: { ...PLAN, ...change },
});
const start = (planned?: { plan: string; name: string }): Deed => ({
  kind: 'start',
  bake: 'bake-2',
  loaves: ['a', 'b'],
  from: 'levain.feed',
  recipe: RECIPE,
  kitchen: 22,
  ...(planned ? { planned } : {}),
});
const takeBack = (target: string): Deed => ({ kind: 'takeBack', target });
const bakeOf = (laid: DayPlan | null): string | null => laid!.ask.bakes[0]!.bake;

describe('the plan that stands', () => {
  it('is none, then the last that was accepted, until it is given up', () => {
    expect(standingPlan([])).toBeNull();
    expect(standingPlan(rows(plan()))).toEqual(PLAN);
    expect(standingPlan(rows(plan(), plan({ sequence: 2 })))?.sequence).toBe(2);
    expect(standingPlan(rows(plan(), { kind: 'planOff', plan: 'day-1' }))).toBeNull();
    expect(standingPlan(rows(plan(), { kind: 'planOff', plan: 'other' }))?.id).toBe('day-1');
  });

  it('is the one before where the last was taken back, and stands again where giving up was', () => {
    expect(standingPlan(rows(plan(), plan({ sequence: 2 }), takeBack('f2')))?.sequence).toBe(1);
    expect(standingPlan(rows(plan(), takeBack('f1')))).toBeNull();
    const off: Deed = { kind: 'planOff', plan: 'day-1' };
    expect(standingPlan(rows(plan(), off, takeBack('f2')))?.id).toBe('day-1');
  });

  it('knows a bake of it that was begun, and forgets one whose start was taken back', () => {
    const begun = [plan(), start({ plan: 'day-1', name: NAME })] as const;
    expect(bakeOf(standingPlan(rows(...begun)))).toBe('bake-2');
    expect(bakeOf(standingPlan(rows(...begun, takeBack('f2'))))).toBeNull();
    expect(bakeOf(standingPlan(rows(plan(), start())))).toBeNull();
    expect(bakeOf(standingPlan(rows(plan(), start({ plan: 'day-0', name: NAME }))))).toBeNull();
  });

  it('is of the past half a day after its last bread', () => {
    expect(isPast(PLAN, SATURDAY_NOON + 12 * HOUR)).toBe(false);
    expect(isPast(PLAN, SATURDAY_NOON + 12 * HOUR + 1)).toBe(true);
  });
});
