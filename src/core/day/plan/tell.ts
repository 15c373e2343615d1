import type { Board } from './board.ts';
import { minutesOf, SLOT } from './grid.ts';
import type { OnePlan } from './one-plan.ts';
import type { Slack } from './slack.ts';
import type { PlannedTouch } from './types.ts';

/** A batch's plan in instants, in the order of its touches in time. */
export function tellTouches(board: Board, plan: OnePlan, slack: readonly Slack[]): PlannedTouch[] {
  const { chain } = plan;
  const instant = (slot: number): number => (board.origin + slot) * SLOT;
  const feed = new Map(
    chain.links.map(({ touch, hands, wait }, i) => {
      const d = plan.steps[i + 1]! - plan.steps[i]! - hands;
      return [touch, wait.choice?.[d - wait.min]];
    }),
  );
  return chain.touches
    .map(({ name, hands, fixed }, touch): PlannedTouch => {
      const { earliest, latest, fineUntil, lastPossible } = slack[touch]!;
      const tell = (slot: number): number => (fixed ? fixed.at : instant(slot));
      const choice = feed.get(touch);
      return {
        batch: chain.name,
        name,
        at: tell(plan.slots[touch]!),
        hands: minutesOf(hands),
        earliest: tell(earliest),
        latest: tell(latest),
        fineUntil: tell(fineUntil),
        lastPossible: tell(lastPossible),
        ...(choice === undefined ? {} : { choice }),
        frozen: fixed !== null,
      };
    })
    .sort((a, b) => a.at - b.at);
}

/** The instant a batch is ready. */
export const readyAt = (board: Board, plan: OnePlan): { batch: string; at: number } => ({
  batch: plan.chain.name,
  at: (board.origin + plan.steps.at(-1)!) * SLOT,
});
