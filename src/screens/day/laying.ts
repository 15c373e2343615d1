import { createEffect, createSignal, on, onCleanup, untrack, type Accessor } from 'solid-js';
import { askInput } from '../../core/day/laid/ask-input.ts';
import type { AskTrouble } from '../../core/day/laid/ask-trouble.ts';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import type { PlanInput, PlanResult } from '../../core/day/plan/types.ts';
import type { House } from '../house.ts';

/** How far the question is: what cannot be asked, still looked for, or answered. */
export type Laid =
  | { readonly state: 'troubles'; readonly ask: DayAsk; readonly troubles: readonly AskTrouble[] }
  | {
      readonly state: 'laying' | 'laid';
      readonly ask: DayAsk;
      readonly input: PlanInput;
      /** The best so far; null while there is none. */
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
  untrack(() => {
    const now = house.now();
    return askInput(ask, {
      now,
      zone: house.zone(),
      ahead: now - house.wall(now),
      week: house.equipment().week,
      equipment: house.equipment(),
    });
  });

/** Lays each new ask aside from the page; null where nothing is asked. */
export function createLaying(house: House, ask: Accessor<Asked | null>): Accessor<Laid | null> {
  const [laid, setLaid] = createSignal<Laid | null>(null);
  createEffect(
    on(ask, (asked) => {
      if (asked === null) return void setLaid(null);
      const { ask: its, orElse } = asked;
      const { input, troubles } = inputOf(house, its);
      if (input === null)
        return orElse ? orElse() : void setLaid({ state: 'troubles', ask: its, troubles });
      let stop = (): void => undefined;
      let isOver = false;
      onCleanup(() => {
        isOver = true;
        stop();
      });
      if (!orElse) setLaid({ state: 'laying', ask: its, input, result: null });
      house.planner().then(
        (planner) => {
          if (isOver) return;
          stop = planner.lay(input, (result, isLast) => {
            if (isOver) return;
            if (orElse && result.fits !== true) return isLast ? orElse() : undefined;
            setLaid({ state: isLast ? 'laid' : 'laying', ask: its, input, result });
          });
        },
        () => {
          if (isOver) return;
          if (orElse) orElse();
          else setLaid({ state: 'failed', ask: its });
        },
      );
    }),
  );
  return laid;
}
