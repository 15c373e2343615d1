import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planFault } from '../../src/core/records/read-plan.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import { laidDay, THURSDAY } from '../fakes/laid-day.ts';
import { makeRow } from '../fakes/records.ts';

const PLAN = JSON.parse(JSON.stringify(laidDay())) as Record<string, unknown>;
const [BAKE] = (PLAN['ask'] as { bakes: object[] }).bakes;
const [TOUCH] = PLAN['touches'] as object[];

const row = (fact: object) => ({
  ...makeRow(1),
  machineVersion: 8,
  fact: { id: 'x', device: 'd', at: THURSDAY, raw: THURSDAY, ...fact },
});

describe('reading a plan of the log', () => {
  it('takes one as it was accepted, and one that is given up', () => {
    expect(planFault(PLAN)).toBeNull();
    expect(readRecord(row({ kind: 'plan', plan: PLAN }), 8).record).not.toBeNull();
    expect(readRecord(row({ kind: 'planOff', plan: 'day-1' }), 8).record).not.toBeNull();
  });

  it('refuses one given up without a name, by its path', () => {
    const read = readRecord(row({ kind: 'planOff', plan: 7 }), 8);
    expect(read).toMatchObject({ record: null, reason: { path: 'fact.plan', got: '7' } });
  });

  const ask = (change: object) => ({ ...PLAN, ask: { ...(PLAN['ask'] as object), ...change } });
  const bake = (change: object) => ask({ bakes: [{ ...BAKE, ...change }] });
  const touch = (change: object) => ({ ...PLAN, touches: [TOUCH, { ...TOUCH, ...change }] });
  it.each([
    ['plan.id', { ...PLAN, id: '' }],
    ['plan.sequence', { ...PLAN, sequence: 0 }],
    ['plan.ask', { ...PLAN, ask: [] }],
    ['plan.ask.bakes', ask({ bakes: [] })],
    ['plan.ask.kitchen', ask({ kitchen: 'warm' })],
    ['plan.ask.belief.sd', ask({ belief: { mean: 0 } })],
    ['plan.ask.away[0].to', ask({ away: [{ from: 1, to: null }] })],
    ['plan.ask.taken[0].change', ask({ taken: [{}] })],
    ['plan.ask.bakes[0].name', bake({ name: '' })],
    ['plan.ask.bakes[0].recipe', bake({ recipe: 'bread' })],
    ['plan.ask.bakes[0].due', bake({ due: 'noon' })],
    ['plan.ask.bakes[0].startAt', bake({ startAt: undefined })],
    ['plan.ask.bakes[0].bake', bake({ bake: 4 })],
    ['plan.ask.bakes[0].pins.mix', bake({ pins: { mix: 'early' } })],
    ['plan.touches', { ...PLAN, touches: [] }],
    ['plan.touches[1].at', touch({ at: Number.NaN })],
    ['plan.touches[1].hands', touch({ hands: -5 })],
    ['plan.touches[1].choice', touch({ choice: 5 })],
    ['plan.touches[1].frozen', touch({ frozen: 'yes' })],
    ['plan.ready[0].at', { ...PLAN, ready: [{ batch: 'a' }] }],
  ])('names %s where it is wrong', (path, plan) => {
    expect(planFault(plan)?.path).toBe(path);
    const read = readRecord(row({ kind: 'plan', plan }), 8);
    expect('reason' in read && read.reason.path).toBe(`fact.${path}`);
  });

  it('never throws, whatever comes', () => {
    fc.assert(fc.property(fc.anything(), (value) => void planFault(value)));
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(PLAN)), fc.anything(), (key, value) => {
        planFault({ ...PLAN, [key]: value });
      }),
    );
  });
});
