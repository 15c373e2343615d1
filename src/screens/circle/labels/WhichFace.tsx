import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { daysAhead } from '../../../core/circle/orders.ts';
import { circle } from '../../../core/speech/words/circle.ts';
import { labelPage as words } from '../../../core/speech/words/label.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { createCircleClock } from '../circle-clock.ts';
import type { LabelsFor } from './labels.ts';

/** So many bake days at a time. */
const AHEAD = 5;

export const loavesShown = (count: number): string =>
  count === 1 ? words.loaves.one : fill(words.loaves.many, { count });

/** Of which bake labels are wanted: a day that has orders, or one bread. */
export function WhichFace(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  readonly onChoose: (of: LabelsFor) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [breads, setBreads] = createSignal(false);
  // eslint-disable-next-line solid/reactivity -- the house is one
  const clock = createCircleClock(props.house);
  const ahead = createMemo(() => daysAhead(props.circle.circle(), clock.today(), AHEAD));
  return (
    <Show
      when={breads()}
      fallback={
        <CirclePage
          wide
          back={circle.title}
          onBack={() => props.onBack()}
          words={
            <Words headline={words.which} detail={ahead().length === 0 ? words.none : undefined}>
              <div class="circle-grid circle-top">
                <For each={ahead()}>
                  {({ day, loaves }) => (
                    <Control
                      label={clock.date(day)}
                      value={loavesShown(loaves)}
                      onPress={() => props.onChoose({ day })}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          controls={<Control label={words.oneBread} onPress={() => setBreads(true)} />}
        />
      }
    >
      <CirclePage
        wide
        back={words.title}
        onBack={() => setBreads(false)}
        words={
          <Words headline={words.whichBread}>
            <div class="circle-grid circle-top">
              <For each={props.house.formulas().flatMap(({ formula }) => formula ?? [])}>
                {({ id, name }) => (
                  <Control label={showBread(name)} onPress={() => props.onChoose({ bread: id })} />
                )}
              </For>
            </div>
          </Words>
        }
      />
    </Show>
  );
}
