import { describe, expect, it } from 'vitest';
import { replay } from '../../machines/kitchen/replay.ts';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

const troubleAt = (log: readonly LogRecord[]) => replay(log, MACHINES).trouble?.seq;

/** A log in which one answer is given three times: each row leads to the same position. */
const log = (): LogRecord[] => {
  const hand = at(new Hand(), 'before', 'oven.queued');
  for (let n = 0; n < 3; n += 1) hand.answer('oven', { mitts: 'dry' });
  hand.press('oven', 'answer', { item: 'floor', value: 'clear' });
  return hand.records;
};

describe('a replay', () => {
  it('of nothing is an empty kitchen', () => {
    const { kitchen, trouble } = replay([], MACHINES);
    expect(trouble).toBeNull();
    expect(kitchen.seq).toBe(0);
    expect(kitchen.bakes).toEqual({});
  });

  it('tells of a row that is missing, though the rest leads to the same place', () => {
    const records = log();
    const repeated = records.findIndex(({ fact }) => 'item' in fact && fact.item === 'mitts') + 1;
    expect(troubleAt(records)).toBeUndefined();
    expect(troubleAt(records.toSpliced(repeated, 1))).toBe(repeated + 2);
  });

  it('tells of a row that is there twice, or out of its place', () => {
    const records = log();
    const last = records.length - 2;
    const [one, next] = [records[last]!, records[last + 1]!];
    expect(troubleAt(records.toSpliced(last, 0, one))).toBe(one.seq);
    expect(troubleAt(records.toSpliced(last, 2, next, one))).toBe(next.seq);
  });

  it('tells of a fact that nothing takes, and of one that throws', () => {
    const records = log();
    const last = records.at(-1)!;
    const refused = { ...last, fact: { ...last.fact, act: 'unloaded' } } as LogRecord;
    expect(troubleAt([...records.slice(0, -1), refused])).toBe(last.seq);
    const start = records[0]!;
    const broken = { ...start, fact: { ...start.fact, from: 'nowhere' } } as LogRecord;
    expect(troubleAt([broken])).toBe(1);
  });
});
