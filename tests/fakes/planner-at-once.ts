import type { Planner } from '../../machines/ports.ts';
import { layAsk } from '../../src/core/day/laid/lay-ask.ts';
import { layLive } from '../../src/core/day/laid/lay-live.ts';

/** A planner that plans on the spot: everything has been told when it comes back. */
export const makePlannerAtOnce = (): Planner => ({
  layAsk(ask, world, onLaid) {
    for (const laid of layAsk(ask, world)) onLaid(laid);
    return () => undefined;
  },
  layLive(question, onAnswer) {
    onAnswer(layLive(question));
    return () => undefined;
  },
});
