import { For, Show, type JSX } from 'solid-js';
import type { PlannedTouch } from '../../core/day/plan/types.ts';
import { dayPlan, touchPage } from '../../core/speech/words/day.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import type { House } from '../house.ts';
import { AsksPage } from './AsksPage.tsx';
import type { DayShown } from './day-shown.ts';
import { touchWords } from './shown-of.ts';

/** What a press moves a touch by. */
const STEP = 15 * MINUTE;

/** One touch: how late it may be, and presses that put it to another hour. */
export function TouchPage(props: {
  readonly house: House;
  readonly day: DayShown;
  readonly touch: PlannedTouch;
  readonly pinned: boolean;
  /** How much later the dough's other bowls are. */
  readonly bowls: string | null;
  /** What the last press came to, where it did not fit. */
  readonly note: string | undefined;
  /** Puts it to an hour, or (null) lets it go; left out where the plan stands. */
  readonly onPin?: ((at: Instant | null) => void) | undefined;
  readonly onBack: () => void;
}): JSX.Element {
  const words = () => touchWords(props.house, props.day, props.touch, props.pinned);
  return (
    <AsksPage
      house={props.house}
      headline={words().headline}
      back={dayPlan.backToPlan}
      fresh="touch"
      onBack={() => props.onBack()}
      controls={
        <Show when={props.onPin}>
          {(pin) => (
            <>
              <Control label={touchPage.earlier} onPress={() => pin()(props.touch.at - STEP)} />
              <Control label={touchPage.later} onPress={() => pin()(props.touch.at + STEP)} />
              <Control
                label={props.pinned ? touchPage.free : touchPage.pin}
                onPress={() => pin()(props.pinned ? null : props.touch.at)}
              />
            </>
          )}
        </Show>
      }
    >
      <div class="day-lines">
        <Show when={props.note}>{(note) => <p class="day-note">{note()}</p>}</Show>
        <Show when={props.bowls}>{(line) => <p class="act-detail">{unbroken(line())}</p>}</Show>
        <For each={words().lines}>{(line) => <p class="act-detail">{line}</p>}</For>
      </div>
    </AsksPage>
  );
}
