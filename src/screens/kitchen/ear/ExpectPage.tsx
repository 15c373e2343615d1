import { For, type JSX } from 'solid-js';
import { earKitchen as words } from '../../../core/speech/words/ear-kitchen.ts';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';

/** What the ear can do, what it cannot, and what becomes of a voice. */
export function ExpectPage(props: { readonly onBack: () => void }): JSX.Element {
  return (
    <KitchenPage
      back={words.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.expect}>
          <ul class="kitchen-told">
            <For each={words.expected}>{(line) => <li class="act-detail">{line}</li>}</For>
          </ul>
        </Words>
      }
    />
  );
}
