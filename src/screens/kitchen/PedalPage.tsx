import { createSignal, For, onCleanup, onMount, Show, type JSX } from 'solid-js';
import {
  keyName,
  mayTeach,
  PEDAL_DOES,
  teach,
  type PedalDoes,
} from '../../core/kitchen/pedal-keys.ts';
import { kitchenFields } from '../../core/speech/words/kitchen-fields.ts';
import { pedal as words } from '../../core/speech/words/pedal.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';

/** Which key does what: each is taught by pressing it once; those of headphones are wanted or not. */
export function PedalPage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [asked, setAsked] = createSignal<PedalDoes | null>(null);
  const keys = () => props.house.equipment().pedal;
  const media = () => props.house.equipment().mediaKeys;
  const name = (does: PedalDoes): string => {
    const key = keys()[does];
    return key === undefined ? words.noKey : keyName(key);
  };
  const take = (does: PedalDoes, key: string | null): void => {
    props.house.equip({ pedal: teach(keys(), does, key) });
    setAsked(null);
  };
  return (
    <Show
      when={asked()}
      fallback={
        <KitchenPage
          back={kitchenFields.tablet}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={words.title}
              detail={media() ? words.mediaDetail : words.detail}
              care={words.care}
            >
              <div class="kitchen-grid">
                <For each={PEDAL_DOES}>
                  {(does) => (
                    <Control
                      label={words.does[does]}
                      value={name(does)}
                      fresh={does}
                      onPress={() => setAsked(does)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          aside={
            <Control
              label={words.media}
              value={words.mediaIs[media() ? 'on' : 'off']}
              chosen={media()}
              onPress={() => props.house.equip({ mediaKeys: !media() })}
            />
          }
        />
      }
    >
      {(does) => (
        <Teach does={does()} onKey={(key) => take(does(), key)} onBack={() => setAsked(null)} />
      )}
    </Show>
  );
}

/** Waits for the one key; nothing else is done by keys meanwhile. */
function Teach(props: {
  readonly does: PedalDoes;
  readonly onKey: (key: string | null) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [refused, setRefused] = createSignal(false);
  const onDown = (e: KeyboardEvent): void => {
    // Round the screen by keys goes on; a key that is held down was pressed before this was asked.
    if (e.key === 'Tab' || e.repeat) return;
    e.preventDefault();
    e.stopImmediatePropagation();
    if (mayTeach(e.key)) props.onKey(e.key);
    else setRefused(true);
  };
  onMount(() => window.addEventListener('keydown', onDown, true));
  onCleanup(() => window.removeEventListener('keydown', onDown, true));
  return (
    <div data-teaches="" style={{ display: 'contents' }}>
      <KitchenPage
        back={words.title}
        onBack={() => props.onBack()}
        words={
          <Words
            headline={words.ask}
            detail={fill(words.for, { name: words.does[props.does] })}
            care={refused() ? words.refused : undefined}
          />
        }
        controls={<Control label={words.forget} onPress={() => props.onKey(null)} />}
      />
    </div>
  );
}
