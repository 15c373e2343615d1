import { describe, expect, it } from 'vitest';
import { standingLog } from '../../../src/core/log/standing-log.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkToEnd } from '../../machines/support/onward.ts';

const hand = new Hand();
hand.start('a', 'mix.first');
const begun: readonly LogRecord[] = [...hand.records];
const start = begun[0]!.fact.id;
walkToEnd(hand, 'a');
const ended: readonly LogRecord[] = [...hand.records];
hand.start('a', 'mix.first');
const again = hand.records.at(-1)!.fact.id;

describe('the log a bake stands in', () => {
  it('is the one with its end, wherever it stands; with no end anywhere the first', () => {
    expect(standingLog([begun, ended], start)?.records).toBe(ended);
    expect(standingLog([ended, begun], start)?.records).toBe(ended);
    expect(standingLog([begun, begun.slice()], start)?.records).toBe(begun);
  });

  it('tells two bakes of one name apart by their starts', () => {
    const two = [...hand.records];
    expect(standingLog([two], start)).toMatchObject({ bake: 'a', found: { start: { id: start } } });
    expect(standingLog([two], start)?.found.end).not.toBeNull();
    expect(standingLog([two], again)).toMatchObject({ found: { start: { id: again }, end: null } });
  });

  it('is none where nobody knows it, or it was taken back', () => {
    expect(standingLog([begun, ended], 'nobody')).toBeNull();
    expect(hand.takeBack()).toBe(true);
    expect(standingLog([[...hand.records]], again)).toBeNull();
  });
});
