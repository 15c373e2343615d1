import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { foldLog } from '../../src/app/fold-log.ts';
import type { LogRecord } from '../../src/core/records/record.ts';

const ROWS = JSON.parse(
  readFileSync('tests/machines/golden/walk-9.json', 'utf8'),
) as readonly LogRecord[];
const deep = (): unknown => JSON.parse(`${'['.repeat(20_000)}${']'.repeat(20_000)}`);

/** The first rows of a bake, the nth of them with another position. */
const withPlace = (n: number, change: (position: object) => unknown, length = 20) =>
  ROWS.slice(0, length).map((row, i) =>
    i === n ? { ...row, position: change(row.position) } : row,
  );

describe('a log whose row has lost where the kitchen stood', () => {
  it.each<[string, (position: object) => unknown]>([
    ['all of it', () => ({})],
    ['its bakes', ({ ...position }) => ({ ...position, bakes: undefined })],
    ['its oven', (position) => ({ ...position, oven: null })],
    ['its lanes', (position) => ({ ...position, lanes: 7 })],
    ['its end', (position) => ({ ...position, starter: { signs: deep(), marks: {} } })],
  ])('opens as far as it is sound, and tells of it: %s', (_, change) => {
    const whole = foldLog(ROWS.slice(0, 10), MACHINES);
    const { kitchen, trouble, records } = foldLog(withPlace(10, change), MACHINES);
    expect(trouble).toMatchObject({ kind: 'differs', seq: 11 });
    expect(records).toHaveLength(20);
    expect(kitchen).toEqual({ ...whole.kitchen, idle: kitchen.idle });
  });

  it('is read up to its last row where that has nowhere to be put back to', () => {
    const { trouble, records } = foldLog(
      withPlace(19, ({ ...position }) => ({ ...position, bakes: undefined })),
      MACHINES,
    );
    expect(trouble).toMatchObject({
      kind: 'unreadable',
      seq: 20,
      reason: { path: 'position.bakes', expected: 'an object', got: 'nothing' },
    });
    expect(records).toHaveLength(19);
  });
});
