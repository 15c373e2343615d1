import type { LogRecord } from '../../src/core/records/record.ts';

/** A row of the log about nothing in particular, for tests of what carries rows. */
export function makeRow(seq: number, call = `call ${seq}`): LogRecord {
  const at = Date.UTC(2031, 4, 3, 6, seq);
  return {
    seq,
    machineVersion: 2,
    fact: { kind: 'heard', call, id: `row-${seq}`, device: 'counter', at, raw: at },
    position: {
      now: at,
      bakes: {},
      oven: {
        stage: 'off',
        marks: {},
        entered: {},
        byDue: false,
        answers: {},
        tasks: {},
        vessel: 'pot',
        soon: false,
        waiting: [],
        out: [],
      },
      lanes: {},
      attention: { heard: [call], snoozed: {} },
      timers: {},
      starter: { signs: [], marks: {} },
    },
  };
}
