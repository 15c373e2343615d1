import { createSignal, Show, type JSX } from 'solid-js';
import { kitchenFields } from '../../core/speech/en/kitchen-fields.ts';
import { saveAFile as words } from '../../core/speech/en/save-a-file.ts';
import { saveAsFile } from '../../core/speech/en/trouble.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';

/** All of it as a file; names of neighbours only where that is ticked, and then for this once. */
export function SavePage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [names, setNames] = createSignal(false);
  const [anybody, setAnybody] = createSignal(false);
  // eslint-disable-next-line solid/reactivity -- the house is one
  props.house.circle().then(
    (its) => setAnybody(its.circle().neighbours.length > 0),
    () => undefined,
  );
  const save = (): void => {
    props.house.saveAsFile(names());
    props.onBack();
  };
  return (
    <KitchenPage
      back={kitchenFields.tablet}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={saveAsFile}
          detail={words.detail}
          care={names() ? words.care : undefined}
        />
      }
      slab={
        <Slab label={words.slab} then={kitchenFields.tablet} fresh="save" onPress={() => save()} />
      }
      controls={
        <>
          <Show when={anybody()}>
            <Control
              label={words.names}
              value={names() ? words.named : words.marks}
              chosen={names()}
              onPress={() => setNames(!names())}
            />
          </Show>
          <Control label={kitchenFields.tablet} onPress={() => props.onBack()} />
        </>
      }
    />
  );
}
