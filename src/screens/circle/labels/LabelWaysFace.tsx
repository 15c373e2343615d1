import { createSignal, For, Show, type JSX } from 'solid-js';
import { LABEL_LISTS, LABEL_PAPERS, type CircleWays } from '../../../core/circle/circle.ts';
import { plainText } from '../../../core/circle/label/plain-text.ts';
import { labelPage as words } from '../../../core/speech/words/label.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { TextFace } from '../../TextFace.tsx';
import { written } from '../written.ts';

/** A maker's lines: so many, and so long. Judgement: a label is small. */
const MOST_LINES = 4;
const MOST_LETTERS = 240;

/** Whose list a label goes by, what it is printed on, and the maker's own lines. */
export function LabelWaysFace(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  readonly onBack: () => void;
}): JSX.Element {
  const [typing, setTyping] = createSignal(false);
  const ways = () => props.circle.circle().ways;
  const set = (change: Partial<CircleWays>): Promise<boolean> =>
    written(props.house, props.circle.write({ puts: [], ways: change }));
  const take = async (text: string): Promise<void> => {
    const lines = text
      .split('\n')
      .map(plainText)
      .filter((line) => line !== '')
      .slice(0, MOST_LINES);
    if (await set({ lines })) setTyping(false);
  };
  return (
    <Show
      when={typing()}
      fallback={
        <CirclePage
          wide
          back={words.print}
          onBack={() => props.onBack()}
          words={
            <Words headline={words.waysAsk} detail={words.waysDetail}>
              <div class="circle-grid circle-top">
                <For each={LABEL_LISTS}>
                  {(list) => (
                    <Control
                      label={words.lists[list]}
                      chosen={ways().list === list}
                      onPress={() => void set({ list })}
                    />
                  )}
                </For>
                <For each={LABEL_PAPERS}>
                  {(paper) => (
                    <Control
                      label={words.papers[paper]}
                      chosen={ways().paper === paper}
                      onPress={() => void set({ paper })}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          controls={
            <Control
              label={words.lines}
              value={ways().lines.join(' · ') || words.noLines}
              fresh={words.lines}
              onPress={() => setTyping(true)}
            />
          }
        />
      }
    >
      <TextFace
        page={CirclePage}
        ask={words.linesAsk}
        detail={words.linesDetail}
        begun={ways().lines.join('\n')}
        lines="many"
        most={MOST_LETTERS}
        blank
        back={words.ways}
        onTake={(text) => void take(text)}
        onBack={() => setTyping(false)}
      />
    </Show>
  );
}
