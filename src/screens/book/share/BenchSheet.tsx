import { For, Show, type JSX } from 'solid-js';
import { benchSheet as words } from '../../../core/speech/en/share.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import type { BenchLine, BenchView } from './sheet-view.ts';
import './BenchSheet.css';

function Lines(props: {
  readonly title: string;
  readonly lines: readonly BenchLine[];
}): JSX.Element {
  return (
    <section>
      <h2>{props.title}</h2>
      <ul>
        <For each={props.lines}>
          {({ what, much }) => (
            <li>
              <span class="sheet-box" />
              <span class="sheet-what">{what}</span>
              <b>{much}</b>
            </li>
          )}
        </For>
      </ul>
    </section>
  );
}

/** A bake on paper, for a bench where no tablet stands: the screen does not show it. */
export function BenchSheet(props: { readonly view: BenchView }): JSX.Element {
  return (
    <article class="bench-sheet" data-close={props.view.close}>
      <header>
        <h1>{props.view.title}</h1>
        <p>{props.view.of}</p>
        <Show when={props.view.bowls}>
          {(bowls) => <p class="sheet-bowls">{unbroken(bowls())}</p>}
        </Show>
      </header>
      <div class="sheet-columns">
        <div>
          <For each={props.view.lists}>
            {(list) => <Lines title={list.title} lines={list.lines} />}
          </For>
        </div>
        <div>
          <Lines title={words.steps} lines={props.view.steps} />
        </div>
      </div>
      <footer>
        <For each={props.view.notes}>{(note) => <p>{note}</p>}</For>
      </footer>
    </article>
  );
}
