import { describe, expect, it } from 'vitest';
import { answerTwice, disagreeing, seedsFrom } from '../support/solver.ts';

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
});
