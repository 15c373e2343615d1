import { createMemo, createSignal, For, type JSX } from 'solid-js';
import { pageOf } from '../../../core/circle/cupboard.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import type { BakeDay } from '../../../core/circle/orders.ts';
import { shopping as words } from '../../../core/speech/words/cupboard.ts';
import { shown } from '../../../core/speech/facts.ts';
import { Pressable } from '../../../parts/Pressable.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import { PAGE, pagedName, PageControls } from './PageControls.tsx';
import { daysTold } from './shopping-view.ts';

/** For which days is shopped: all that are ahead, or one. */
export function DaysFace(props: {
  readonly days: readonly BakeDay[];
  readonly chosen: DayKey | null;
  readonly onChoose: (day: DayKey | null) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal(0);
  const loaves = (days: readonly BakeDay[]): string =>
    String(shown({ loaves: days.reduce((sum, one) => sum + one.loaves, 0) }).loaves);
  const all = createMemo(() => [
    { day: null, loaves: loaves(props.days) },
    ...props.days.map((one) => ({ day: one.day, loaves: loaves([one]) })),
  ]);
  const page = createMemo(() => pageOf(all(), PAGE, at()));
  return (
    <CupboardPage
      wide
      back={words.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={pagedName(words.which, page())}>
          <div class="cupboard-grid cupboard-top" role="group" aria-label={words.which}>
            <For each={page().shown}>
              {(one) => (
                <Pressable
                  class="cupboard-entry"
                  fresh={one.day}
                  chosen={one.day === props.chosen}
                  onPress={() => props.onChoose(one.day)}
                >
                  <b>{unbroken(daysTold(one.day))}</b>
                  <span>{unbroken(one.loaves)}</span>
                </Pressable>
              )}
            </For>
          </div>
        </Words>
      }
      controls={<PageControls at={page().at} pages={page().pages} onPage={setAt} />}
    />
  );
}
