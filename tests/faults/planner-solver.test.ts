import { describe, expect, it } from 'vitest';
import { answerTwice, disagreeing, seedsFrom, timesFaster } from '../core/day/support/solver.ts';

/**
 * Sixty bakes alone and twenty pairs, the answers and times of both printed. The planner is to be so
 * many times faster than the solver in the same process, in the median.
 */
describe('the planner against the solver HiGHS', () => {
  it.each([
    { batches: 1, seeds: seedsFrom(1001, 60), faster: 100 },
    { batches: 2, seeds: seedsFrom(1, 20), faster: 20 },
  ])('$batches at once: same cost, faster', async ({ batches, seeds, faster }) => {
    const began = performance.now();
    const answers = await answerTwice(seeds, batches);
    const ratios = timesFaster(answers);
    const median = ratios[Math.floor(ratios.length / 2)]!;
    console.log(
      `${batches} at once: ${answers.length} questions, ${ratios.length} with a plan, ` +
        `ratio median ${median.toFixed(0)}, least ${ratios[0]!.toFixed(1)}, ` +
        `${((performance.now() - began) / 1000).toFixed(0)} s`,
    );
    expect(disagreeing(answers)).toEqual([]);
    expect(ratios.length).toBeGreaterThan(0);
    expect(ratios.length).toBeLessThan(seeds.length);
    expect(median).toBeGreaterThan(faster);
  });
});
