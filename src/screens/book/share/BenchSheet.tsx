import { For, Show, type JSX } from 'solid-js';
import { benchSheet as words } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import type { BenchLine } from './sheet-pages.ts';
import type { BenchView } from './sheet-view.ts';
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

/** A bake on paper, for a bench where no tablet stands: the screen does not show it. A page an article. */
export function BenchSheet(props: { readonly view: BenchView }): JSX.Element {
  const count = () => props.view.pages.length;
  return (
    <For each={props.view.pages}>
      {(page, i) => (
        <article class="bench-sheet" data-close={props.view.close}>
          <header>
            <h1>{props.view.title}</h1>
            <p>{props.view.of}</p>
            <Show when={props.view.bowls}>
              {(bowls) => <p class="sheet-bowls">{unbroken(bowls())}</p>}
            </Show>
            <Show when={count() > 1}>
              <p>{fill(words.page, { n: i() + 1, count: count() })}</p>
            </Show>
          </header>
          <div class="sheet-columns">
            <For each={page.columns}>
              {(lists) => (
                <div>
                  <For each={lists}>
                    {(list) => <Lines title={list.title} lines={list.lines} />}
                  </For>
                </div>
              )}
            </For>
          </div>
          <footer>
            <For each={page.notes}>{(note) => <p>{note}</p>}</For>
          </footer>
        </article>
      )}
    </For>
  );
}
