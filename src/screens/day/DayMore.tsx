import { createSignal, Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { dayPlan } from '../../core/speech/words/day.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';

/** What else a plan is good for: its table, and giving it up where it stands. */
export function DayMore(props: {
  readonly table: boolean;
  readonly onTable: () => void;
  /** Left out where the plan does not stand yet. */
  readonly onGiveUp?: (() => void) | undefined;
  /** Further presses: to paper, to a calendar. */
  readonly more?: JSX.Element;
  readonly onClose: () => void;
}): JSX.Element {
  const [asks, setAsks] = createSignal(false);
  return (
    <Show
      when={asks()}
      fallback={
        <Sheet title={bench.more}>
          <div class="sheet-grid">
            <Control label={bench.close} onPress={() => props.onClose()} />
            <Control
              label={props.table ? dayPlan.tape : dayPlan.table}
              onPress={() => props.onTable()}
            />
            {props.more}
            <Show when={props.onGiveUp}>
              <Control label={dayPlan.giveUp} onPress={() => setAsks(true)} />
            </Show>
          </div>
        </Sheet>
      }
    >
      <Sheet title={dayPlan.giveUpAsk}>
        <p>{dayPlan.giveUpSaid}</p>
        <div class="sheet-grid">
          <Control label={dayPlan.keep} onPress={() => setAsks(false)} />
          <Control label={dayPlan.giveUpYes} onPress={() => props.onGiveUp?.()} />
        </div>
      </Sheet>
    </Show>
  );
}
