import type { Planner } from '../../machines/ports.ts';
import { layAsk, layInput } from '../../src/core/day/laid/lay-ask.ts';

/** A planner that plans on the spot: everything has been told when it comes back. */
export const makePlannerAtOnce = (): Planner => ({
  lay(input, onPlan, why) {
    for (const { result, isLast } of layInput(input, { why: why ?? true })) onPlan(result, isLast);
    return () => undefined;
  },
  layAsk(ask, world, onLaid) {
    for (const laid of layAsk(ask, world)) onLaid(laid);
    return () => undefined;
  },
});
