import { For, Show, type JSX } from 'solid-js';
import type { Label } from '../../../core/circle/label/label.ts';
import { onLabel } from '../../../core/speech/words/label.ts';
import './LabelCard.css';

/** One label, as it is printed and as it is shown before: every measure of it in its letters' size. */
export function LabelCard(props: { readonly label: Label }): JSX.Element {
  return (
    <article class="label-card">
      <header>
        <h2>{props.label.name}</h2>
        <Show when={props.label.who}>{(who) => <p class="label-who">{who()}</p>}</Show>
      </header>
      <p class="label-ingredients">
        {`${onLabel.ingredients} `}
        <For each={props.label.ingredients}>
          {({ text, apart }) => (
            <Show when={apart} fallback={text}>
              <b>{text}</b>
            </Show>
          )}
        </For>
      </p>
      <Show when={props.label.allergens}>{(told) => <p class="label-strong">{told()}</p>}</Show>
      <Show when={props.label.notFree}>{(told) => <p>{told()}</p>}</Show>
      <p class="label-strong">
        {[props.label.weight, props.label.cut].filter(Boolean).join(' · ')}
      </p>
      <p>{props.label.baked}</p>
      <For each={props.label.keep}>{(line) => <p class="label-strong">{line}</p>}</For>
      <For each={props.label.lines}>{(line) => <p class="label-line">{line}</p>}</For>
    </article>
  );
}
