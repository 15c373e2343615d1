import { createMemo, createSignal, For, onCleanup, Show, type JSX } from 'solid-js';
import type { Remedy } from '../../core/log/remedies.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { remedyPage as words } from '../../core/speech/words/remedy-page.ts';
import { tellRemedy } from '../../core/speech/tell-remedy.ts';
import { Control } from '../../parts/Control.tsx';
import { RemedyWords } from '../../parts/RemedyWords.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import type { House } from '../house.ts';
import { remediesHere } from './remedies-here.ts';

const nameOf = ({ stage, sign }: Remedy): string => `${stage} ${sign}`;

/** Something looks wrong at this stage: which sign, and what is done about it now and the next time. */
export default function RemedySheet(props: {
  readonly house: House;
  readonly bake: string;
  readonly onClose: () => void;
}): JSX.Element {
  // As they stood when it was asked for: a clock that goes on takes no sign out from under a finger.
  // eslint-disable-next-line solid/reactivity -- read once
  const groups = remediesHere(props.house, props.bake);
  const all = groups.flat();
  const [chosen, setChosen] = createSignal<Remedy | null>(null);
  const told = createMemo(() => {
    const row = chosen();
    return row && tellRemedy(row, props.house.ways(), props.house.equipment().height ?? 0);
  });
  const choose = (name: string): void => {
    const row = all.find((one) => nameOf(one) === name) ?? null;
    setChosen(row);
    const care = told()?.care;
    if (care) props.house.say(care);
  };
  onCleanup(() => props.house.say(''));
  return (
    <Show
      when={told()}
      fallback={
        <Sheet title={words.ask}>
          <p class="act-detail">{words.detail}</p>
          <For each={groups}>
            {(group) => (
              <Tiles
                label={words.ask}
                options={group.map((row) => ({ value: nameOf(row), label: row.words.sign }))}
                onChoose={choose}
              />
            )}
          </For>
          <div class="sheet-grid">
            <Control label={controls.backToBench} onPress={() => props.onClose()} />
          </div>
        </Sheet>
      }
    >
      {(its) => (
        <Sheet title={its().sign}>
          <RemedyWords told={its()} />
          <div class="sheet-grid">
            <Control label={controls.backToBench} onPress={() => props.onClose()} />
            <Control label={words.others} onPress={() => setChosen(null)} />
          </div>
        </Sheet>
      )}
    </Show>
  );
}
