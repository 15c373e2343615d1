import type { Planner } from '../../machines/ports.ts';
import { tellEach } from '../../src/adapters/planner/tell-each.ts';

/** A planner that plans on the spot: everything has been told when `lay` comes back. */
export const makePlannerAtOnce = (): Planner => ({
  lay(input, onPlan) {
    tellEach(input, (answer) => {
      if (answer.kind === 'failed') throw new Error(answer.message);
      onPlan(answer.result, answer.isLast);
    });
    return () => undefined;
  },
});
