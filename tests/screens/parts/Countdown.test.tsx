import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, expect, it } from 'vitest';
import { Countdown } from '../../../src/parts/Countdown.tsx';
import { durationAttribute, runningText } from '../../../src/parts/running.ts';

afterEach(cleanup);

const [S, M, H] = [1000, 60_000, 3_600_000];
it.each([
  [H + 12 * M, '1 h 12'],
  [H + 12 * M + 59 * S, '1 h 12'],
  [H + 5 * M, '1 h 05'],
  [H, '1 h 00'],
  [H - 1, '1 h 00'],
  [H - S, '59:59'],
  [12 * M + 5 * S, '12:05'],
  [65 * S, '1:05'],
  [1, '0:01'],
  [0, '0:00'],
  [-999, '0:00'],
  [-20 * S, '+0:20'],
  [-61 * M, '+1 h 01'],
  [26 * H, '26 h 00'],
])('%i ms left stands as %s', (left, text) => {
  expect(runningText(left)).toBe(text);
});

it('writes the same length for machines', () => {
  expect(durationAttribute(H + 12 * M + 500)).toBe('PT1H12M1S');
});

it('follows deadline and now, holds no clock, and turns its label when past', () => {
  const [now, setNow] = createSignal(0);
  render(() => (
    <Countdown
      name="Oven, load 1 of 3"
      label="to the lid"
      labelPast="past the lid"
      deadline={20 * M}
      now={now()}
    />
  ));
  const timer = screen.getByRole('timer');
  expect(timer.textContent).toBe('20:00 to the lid');
  setNow(47 * M);
  expect(timer.textContent).toBe('+27:00 past the lid');
  expect(screen.getByText('Oven, load 1 of 3')).toBeTruthy();
});
