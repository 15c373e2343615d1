import { createEffect, createSignal, on, onCleanup, untrack, type Accessor } from 'solid-js';
import { askInput } from '../../core/day/laid/ask-input.ts';
import type { AskTrouble } from '../../core/day/laid/ask-trouble.ts';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import type { PlanInput, PlanResult } from '../../core/day/plan/types.ts';
import { askWorldOf, runningWorldOf } from '../ask-world.ts';
import type { House } from '../house.ts';

/** How far the question is: what cannot be asked, still looked for, or answered. */
export type Laid =
  | { readonly state: 'troubles'; readonly ask: DayAsk; readonly troubles: readonly AskTrouble[] }
  | {
      readonly state: 'laying' | 'laid';
      readonly ask: DayAsk;
      /** The question it became, and the best plan so far; null while there is none. */
      readonly input: PlanInput | null;
      readonly result: PlanResult | null;
    }
  | { readonly state: 'failed'; readonly ask: DayAsk };

/** What is asked. `orElse`: the plan on show stays until this one fits, and where it does not. */
export interface Asked {
  readonly ask: DayAsk;
  readonly orElse: (() => void) | null;
}

/** The planner's question of an ask, as this house's clock and kitchen stand. */
export const inputOf = (house: House, ask: DayAsk) =>
  untrack(() => askInput(ask, askWorldOf(house)));

/** Lays each new ask aside from the page; null where nothing is asked. */
export function createLaying(house: House, ask: Accessor<Asked | null>): Accessor<Laid | null> {
  const [laid, setLaid] = createSignal<Laid | null>(null);
  createEffect(
    on(ask, (asked) => {
      if (asked === null) return void setLaid(null);
      const { ask: its, orElse } = asked;
      let stop = (): void => undefined;
      let isOver = false;
      onCleanup(() => {
        isOver = true;
        stop();
      });
      if (!orElse) setLaid({ state: 'laying', ask: its, input: null, result: null });
      const failed = (): void => {
        if (isOver) return;
        if (orElse) orElse();
        else setLaid({ state: 'failed', ask: its });
      };
      house.planner().then((planner) => {
        if (isOver) return;
        const world = untrack(() => runningWorldOf(house));
        stop = planner.layAsk(its, world, ({ troubles, input, result, isLast }) => {
          if (isOver) return;
          if (result === null && troubles.length === 0) return failed();
          if (orElse && result?.fits !== true) return isLast ? orElse() : undefined;
          if (result === null) setLaid({ state: 'troubles', ask: its, troubles });
          else setLaid({ state: isLast ? 'laid' : 'laying', ask: its, input, result });
        });
      }, failed);
    }),
  );
  return laid;
}
