import { For, Show, type JSX } from 'solid-js';
import { unbroken } from '../../parts/unbroken.ts';

/** What is unusual, a sentence each, told again to ears where it changes. */
export function Warnings(props: { readonly of: readonly string[] }): JSX.Element {
  return (
    <Show when={props.of.length > 0}>
      <div class="book-told" role="status">
        <ul class="book-warnings">
          <For each={props.of}>{(warning) => <li>{unbroken(warning)}</li>}</For>
        </ul>
      </div>
    </Show>
  );
}
