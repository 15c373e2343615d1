import { expect, it } from 'vitest';
import { makeBand } from '../../../src/core/ear/band.ts';
import { HEARD_AT } from '../../../src/core/ear/heard-at.ts';

/** How much of a tone comes through, dB, once it has begun. */
function through(hertz: number): number {
  const band = makeBand();
  let [sum, all] = [0, 0];
  for (let n = 0; n < HEARD_AT; n += 1) {
    const sample = Math.sin((2 * Math.PI * hertz * n) / HEARD_AT);
    const left = band(sample);
    if (n < HEARD_AT / 10) continue;
    sum += left * left;
    all += sample * sample;
  }
  return 10 * Math.log10(sum / all);
}

it.each([600, 1_000, 2_000])('speech at %i Hz comes through', (hertz) => {
  expect(through(hertz)).toBeGreaterThan(-1);
  expect(through(hertz)).toBeLessThan(0.1);
});

// Two poles a side: half the power at the edge, 12 dB an octave beyond it.
it.each([
  [300, -3],
  [3_500, -3],
  [150, -12.3],
  [75, -24.1],
])('at %i Hz it is %d dB', (hertz, db) => {
  expect(through(hertz)).toBeGreaterThan(db - 0.6);
  expect(through(hertz)).toBeLessThan(db + 0.6);
});
