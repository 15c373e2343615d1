import { describe, expect, it } from 'vitest';
import { takeChange, withChange } from '../../../../src/core/day/laid/take-change.ts';
import type { Change, PlanInput, Wait } from '../../../../src/core/day/plan/types.ts';
import { HOUR, MINUTE } from '../../../../src/core/units.ts';
import { askedBake, askWorld, dayAsk, inputOf, SATURDAY_NOON } from '../../../fakes/laid-day.ts';

const NAME = 'Cherry and hazelnut';
const INPUT = inputOf(dayAsk(), askWorld());
const step = (input: PlanInput, name: string) =>
  input.batches[0]!.steps.find((one) => one.name === name)!;
const waitOf = (input: PlanInput, name: string): Wait => step(input, name).wait as Wait;
const [night] = INPUT.blocked;
const bend = { change: 'blocked', name: 'asleep', from: night!.from, to: night!.to } as const;

describe('a change that is taken', () => {
  it('bends the one window it names, at the end it names', () => {
    const sooner = withChange(INPUT, { ...bend, endEarlierBy: 40, startLaterBy: null });
    expect(sooner.blocked[0]).toEqual({ ...night!, to: night!.to - 40 * MINUTE });
    const later = withChange(INPUT, { ...bend, endEarlierBy: null, startLaterBy: 40 });
    expect(later.blocked[0]).toEqual({ ...night!, from: night!.from + 40 * MINUTE });
    expect(later.blocked.slice(1)).toEqual(INPUT.blocked.slice(1));
  });

  it('never turns a window round', () => {
    const gone = withChange(INPUT, { ...bend, endEarlierBy: 9000, startLaterBy: null });
    expect(gone.blocked[0]).toMatchObject({ from: night!.from, to: night!.from });
    const late = withChange(INPUT, { ...bend, endEarlierBy: null, startLaterBy: 9000 });
    expect(late.blocked[0]).toMatchObject({ from: night!.to, to: night!.to });
  });

  it('stretches a wait, an oven’s heat, and shortens one to nothing at most', () => {
    const bulk = 'salt and water';
    const change = (name: 'longer' | 'shorter', wait: string, by: number): Change => ({
      change: name,
      batch: NAME,
      wait,
      by,
    });
    const { min, max } = waitOf(INPUT, bulk);
    expect(waitOf(withChange(INPUT, change('longer', bulk, 15)), bulk).max).toBe(max + 15);
    expect(waitOf(withChange(INPUT, change('shorter', bulk, 15)), bulk).min).toBe(min - 15);
    expect(waitOf(withChange(INPUT, change('shorter', bulk, 9000)), bulk).min).toBe(0);
    const hot = withChange(INPUT, change('longer', 'oven on', 20));
    expect(step(hot, 'to fridge').beforeNext!.max).toBe(
      step(INPUT, 'to fridge').beforeNext!.max + 20,
    );
  });

  it('bakes fewer loads, leaves a fold out, lets a timer turn the oven on', () => {
    const one = withChange(INPUT, { change: 'fewerLoads', batch: NAME, loads: 1 });
    const names = one.batches[0]!.steps.map(({ name }) => name);
    expect(names.filter((name) => name.startsWith('load'))).toEqual(['load 1']);
    const drop = (touch: string): PlanInput =>
      withChange(INPUT, { change: 'dropTouch', batch: NAME, touch });
    const folds = step(drop('fold 1'), 'salt and water').during!.map(({ name }) => name);
    expect(folds).toEqual(['lamination', 'fold 2']);
    expect(step(drop('oven on'), 'to fridge').beforeNext!.hands).toBe(0);
  });

  it('is due later, or begins later', () => {
    const due = withChange(INPUT, { change: 'due', batch: NAME, laterBy: 60 });
    expect(due.batches[0]!.due).toBe(SATURDAY_NOON + HOUR);
    const ask = dayAsk({ bakes: [askedBake({ due: null, startAt: SATURDAY_NOON })] });
    const start = { change: 'start', batch: NAME, laterBy: 60 } as const;
    const begins = withChange(inputOf(ask, askWorld()), start);
    expect(begins.batches[0]!.startAt).toBe(SATURDAY_NOON + HOUR);
    expect(takeChange(ask, start).bakes[0]!.startAt).toBe(SATURDAY_NOON + HOUR);
    expect(takeChange(ask, { ...start, change: 'due' })).toEqual(ask);
  });

  it.each<Change>([
    { ...bend, name: 'at work', endEarlierBy: 40, startLaterBy: null },
    { change: 'due', batch: 'other', laterBy: 60 },
    { change: 'start', batch: NAME, laterBy: 60 },
    { change: 'longer', batch: NAME, wait: 'no such wait', by: 15 },
    { change: 'longer', batch: NAME, wait: 'feed levain', by: 15 },
    { change: 'dropTouch', batch: 'other', touch: 'fold 1' },
    { change: 'fewerLoads', batch: 'other', loads: 1 },
  ])('changes nothing where what it names is not there (%j)', (change) => {
    expect(withChange(INPUT, change)).toEqual(INPUT);
  });

  it('is kept in the ask, an hour as the hour that is asked for', () => {
    const ask = dayAsk();
    const change: Change = { change: 'dropTouch', batch: NAME, touch: 'fold 1' };
    const taken = takeChange(takeChange(ask, change), { change: 'due', batch: NAME, laterBy: 30 });
    expect(taken.taken).toEqual([change]);
    expect(taken.bakes[0]!.due).toBe(SATURDAY_NOON + 30 * MINUTE);
    expect(ask.taken).toBeUndefined();
  });
});
