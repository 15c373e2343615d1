import { expect, inject, it } from 'vitest';
import { manyBakes } from '../bench/many-bakes.ts';

it('opens a log of five thousand bakes at once on a slow tablet, and scrolls it without a jerk', async () => {
  const { presses, frames } = await manyBakes(inject('site'), 5_000, 4);
  // The figures themselves are the bench's: 300 ms and 50. A noisy machine takes up to twice as long.
  for (const [what, ms] of presses) expect.soft(ms, what).toBeLessThan(600);
  expect(frames.presses).toBeGreaterThan(60);
  expect.soft(frames.worst, 'a frame').toBeLessThan(101);
});
