import { cleanup, screen, within } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { taskPress, tasks } from '../../../src/core/speech/words/tasks.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { aheadOf } from '../../../src/screens/bench/task-view.ts';
import { atBench, lastFact } from './at-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

it('shows a task with its hour and caution before it calls, and takes it in two presses', async () => {
  const at = await atBench('bulk.between');
  const ahead = () => aheadOf(focusOn(at.house.kitchen(), at.bake)!);
  const [first, ...others] = ahead();
  const words = tasks[first!.task];
  // A window stands on the bench: it is under More.
  expect(screen.queryByRole('button', { name: /^Do ahead/ })).toBeNull();
  await at.press('More');
  const sheet = within(await screen.findByRole('dialog', {}, { timeout: 10_000 }));
  expect(sheet.getByText(new RegExp(`calls at.${at.house.hour(first!.at)}`))).toBeDefined();
  await at.press(words.done);
  expect(at.presses).toBe(2);
  expect(await lastFact(at, 'press')).toMatchObject({ act: 'taskDone', item: first!.task });
  await vi.waitFor(() => expect(ahead()).toEqual(others));
}, 20_000);

it('has a tile of its own where no window stands, and is left as the last is done', async () => {
  const at = await atBench('shape.benchRest');
  const ahead = () => aheadOf(focusOn(at.house.kitchen(), at.bake)!);
  const count = ahead().length;
  expect(count).toBeGreaterThan(0);
  await at.press(taskPress.ahead.replace('{count}', String(count)));
  for (const { task } of ahead()) await at.press(tasks[task].done);
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  expect(screen.queryByRole('button', { name: /^Do ahead/ })).toBeNull();
}, 20_000);
