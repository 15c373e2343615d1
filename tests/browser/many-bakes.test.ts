import { expect, inject, it } from 'vitest';
import { manyBakes } from '../bench/many-bakes.ts';

it('opens a log of five thousand bakes at once on a slow tablet, and scrolls it without a jerk', async () => {
  const { presses, frames } = await manyBakes(inject('site'), 5_000, 4);
  for (const [what, ms] of presses) expect.soft(ms, what).toBeLessThan(300);
  expect(frames.presses).toBeGreaterThan(60);
  // Three beats of a screen that has sixty a second.
  expect.soft(frames.worst, 'a frame').toBeLessThan(50.5);
});
