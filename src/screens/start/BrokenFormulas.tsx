import { For, Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { fill } from '../../core/speech/fill.ts';
import type { FormulaFound } from '../house.ts';

/** For ears, whatever page is on show: which files could not be read. */
export function BrokenFormulas(props: { readonly found: readonly FormulaFound[] }): JSX.Element {
  return (
    <For each={props.found}>
      {(found) => (
        <Show when={found.formula === null}>
          <p class="unseen" role="status">
            {fill(bench.brokenFormula, { file: found.file })}
          </p>
        </Show>
      )}
    </For>
  );
}
