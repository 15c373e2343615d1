import { describe, expect, it, vi } from 'vitest';
import { plan } from '../../../../src/core/day/plan.ts';
import { anyInstance, withPoke } from '../support/instances.ts';
import { answerTwice, disagreeing, seedsFrom } from '../support/solver.ts';

// A solver takes its time, and the machine may have other things to do.
vi.setConfig({ testTimeout: 180_000 });

/** A few of the questions; all of them are in tests/faults/planner-solver.test.ts. */
describe('the planner and the solver HiGHS, each with a statement of the rules of its own', () => {
  it.each([
    { batches: 1, seeds: seedsFrom(10, 9) },
    { batches: 2, seeds: seedsFrom(1, 3) },
  ])(
    'agree on the cost, or that there is no plan: $batches at once',
    async ({ batches, seeds }) => {
      const answers = await answerTwice(seeds, batches);
      expect(disagreeing(answers)).toEqual([]);
      const fitting = answers.filter(({ ours }) => ours !== null).length;
      expect(fitting).toBeGreaterThan(0);
      expect(fitting).toBeLessThan(seeds.length);
    },
  );

  it('agree where a touch and the oven’s may meet within one wait', async () => {
    const warm = (seed: number): boolean =>
      anyInstance(seed).batches[0]!.steps.some(({ beforeNext, uses }) => beforeNext && !uses);
    const seeds = seedsFrom(1, 40).filter(warm).slice(0, 8);
    const answers = await answerTwice(seeds, 1, withPoke);
    expect(disagreeing(answers)).toEqual([]);
    // It does make a difference to some of them.
    const plain = seeds.map((seed) => plan(anyInstance(seed), { why: false }));
    expect(
      answers.some(({ ours }, i) => ours !== null && plain[i]!.fits && ours !== plain[i]!.cost),
    ).toBe(true);
  });
});
