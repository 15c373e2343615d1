import { beforeAll, describe, expect, it } from 'vitest';
import { MACHINE_SEEDS, machineGain, machineYear, rms, type MachineYear } from './machine-year.ts';

const [SEED] = MACHINE_SEEDS as [number];

/** 120 invented doughs on the real machine, their readings keyed as facts; it claims nothing of real ones. */
describe('a year on the real machine, read off its facts', { timeout: 300_000 }, () => {
  let walked: MachineYear;
  beforeAll(() => {
    walked = machineYear('walks', SEED);
  }, 300_000);

  it('is foretold better by a quarter with the vigour carried over, where the starter walks', () => {
    expect(walked.carried).toHaveLength(120);
    // In the first bake nothing was carried yet: the two kitchens foretell the same.
    expect(walked.carried[0]).toBeCloseTo(walked.unlearned[0]!, 3);
    expect(rms(walked.unlearned)).toBeGreaterThan(60);
    expect(machineGain(walked)).toBeGreaterThan(0.25);
  });

  it('loses next to nothing where every bake has another vigour', () => {
    expect(Math.abs(machineGain(machineYear('leaps', SEED)))).toBeLessThan(0.08);
  });
});
