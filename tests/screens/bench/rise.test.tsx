import { cleanup, screen, within } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench, lastFact } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const chart = (name = /^Rise against time/) =>
  screen.findByRole('img', { name }, { timeout: 10_000 });

it('is two presses from a wait, with a table of the same values', async () => {
  const at = await atBench('bulk.proving');
  await at.press('More');
  await at.press('Show the rise');
  expect((await chart()).getAttribute('aria-label')).toMatch(/goal \d+ %\. Readings: 0\./);
  const table = screen.getByRole('table', { name: 'The same in numbers' });
  expect(
    within(table)
      .getAllByRole('columnheader')
      .map((el) => el.textContent),
  ).toEqual(['Time', 'Read', 'Likely', 'Between']);
  expect(within(table).getAllByRole('row').length).toBeGreaterThan(3);
  await at.press('Say this chart');
  expect(at.said.at(-1)).toMatch(/percent now, about\. /);
  await at.press('Back to the bench');
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
});

it('takes a rise read off a jar for what it is, and shows it as a jar', async () => {
  const at = await atBench('bulk.proving');
  await at.press('More');
  await at.press('Show the rise');
  await chart();
  await at.press('Rise in a jar');
  expect(screen.getByRole('dialog').textContent).toContain('How far has the jar risen?');
  await at.press('By a quarter');
  expect((await lastFact(at, 'reading')).reading).toEqual({
    what: 'rise',
    percent: 25,
    of: 'dough',
    in: 'jar',
  });
  await at.press('More');
  await at.press('Show the rise');
  expect((await chart()).querySelector('.rise-mark[data-shape="jar"]')?.textContent).toBe(
    'jar 25 %',
  );
  await at.press('Back to the bench');
  // Mended, it stays a jar's.
  await at.press('More');
  await at.press('Readings so far');
  await at.press('Dough rise');
  await at.press('3');
  await at.press('0');
  await at.press('That’s it');
  expect((await lastFact(at, 'correct')).reading).toMatchObject({ percent: 30, in: 'jar' });
});

it('of loaves in the fridge shows how far they are, without a bowl to read', async () => {
  const at = await atBench('proof.retard');
  await at.press('More');
  await at.press('Show the rise');
  await chart(/^Readiness against time/);
  expect(screen.queryByRole('button', { name: 'Rise in a jar' })).toBeNull();
});
