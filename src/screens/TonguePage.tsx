import { For, Show, type JSX } from 'solid-js';
import { TONGUES } from '../core/speech/tongue.ts';
import { bench } from '../core/speech/words/bench.ts';
import { ways as words } from '../core/speech/words/ways.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House } from './house.ts';
import { tongueVoiceOf } from './tongue-voice.ts';

/** The tongue of words, each by its own name, and who speaks the one that stands; the page opens anew in another. */
export default function TonguePage(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  const voice = tongueVoiceOf(props.house);
  return (
    <Sheet title={words.tongue.name}>
      <div class="ways">
        <div class="ways-group" role="group" aria-label={words.tongue.name}>
          <Show when={voice()}>{(told) => <p class="ways-name">{told()}</p>}</Show>
          <div class="ways-choices">
            <For each={TONGUES}>
              {(tongue) => (
                <Control
                  label={words.tongue[tongue]}
                  chosen={props.house.ways().tongue === tongue}
                  // What is not on the disk yet would be gone with the page: its notice says what to do.
                  disabled={props.house.unsaved() > 0}
                  onPress={() => props.house.choose({ tongue })}
                />
              )}
            </For>
            <Control label={bench.close} onPress={() => props.onClose()} />
          </div>
        </div>
      </div>
    </Sheet>
  );
}
