import { expect, it } from 'vitest';
import { fetchLogAhead } from '../../src/app/log-ahead.ts';
import { begun, noted, rowsOf } from '../core/log/support/log-rows.ts';

it('waits for the page’s free time, and no more once the page is gone', () => {
  const waiting: (() => void)[] = [];
  const whenFree = (then: () => void) => {
    waiting.push(then);
    return () => void waiting.splice(waiting.indexOf(then), 1);
  };
  const rows = rowsOf(
    Array.from({ length: 2_500 }, (_, n) => [begun(`b${n}`), noted(`b${n}`)]).flat(),
  );
  const stop = fetchLogAhead({ records: () => rows }, whenFree);
  expect(waiting).toHaveLength(1);
  stop();
  expect(waiting).toHaveLength(0);
});
