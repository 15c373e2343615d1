import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRecord } from '../../src/core/records/read-record.ts';

const ROW = {
  seq: 1,
  machineVersion: 1,
  position: { now: 5 },
  fact: { kind: 'heard', id: 'x', device: 'd', at: 5, raw: 5, call: 'oven:lift:5' },
};

describe('reading one row of a log', () => {
  it('takes a whole record as it is', () => {
    expect(readRecord(ROW, 1).record).toBe(ROW);
  });

  it('refuses a newer version by name, never half-read', () => {
    const read = readRecord({ ...ROW, machineVersion: 2 }, 1);
    expect(read).toEqual({
      record: null,
      reason: { path: 'machineVersion', expected: 'at most 1', got: '2' },
    });
  });

  it.each([
    ['seq', { ...ROW, seq: 0 }],
    ['position', { ...ROW, position: null }],
    ['fact', { ...ROW, fact: 3 }],
    ['fact.kind', { ...ROW, fact: { ...ROW.fact, kind: 'eaten' } }],
    ['fact.at', { ...ROW, fact: { ...ROW.fact, at: Number.NaN } }],
    ['fact.call', { ...ROW, fact: { ...ROW.fact, call: undefined } }],
  ])('names %s where it is wrong', (path, row) => {
    const read = readRecord(row, 1);
    expect(read.record).toBeNull();
    expect('reason' in read && read.reason.path).toBe(path);
  });

  it('never throws, whatever comes', () => {
    fc.assert(fc.property(fc.anything(), (row) => void readRecord(row, 1)));
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(ROW)), fc.anything(), (key, value) => {
        const read = readRecord({ ...ROW, [key]: value }, 1);
        if (read.record === null) expect(read.reason.expected).not.toBe('');
      }),
    );
  });
});
