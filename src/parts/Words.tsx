import { Show, type JSX } from 'solid-js';
import { unbroken } from './unbroken.ts';
import './Words.css';

export interface WordsProps {
  /** At most seven words, verb first. */
  readonly headline: string;
  /** At most twelve words. */
  readonly detail?: string | undefined;
  /** The usual caution of this step. */
  readonly care?: string | undefined;
  /** A drawing of hands doing it; its alt text is its own. */
  readonly picture?: JSX.Element;
  /** Window, tiles, list: what the step asks or shows beside its words. */
  readonly children?: JSX.Element;
}

/** The one act of the screen: headline, detail, caution. */
export function Words(props: WordsProps): JSX.Element {
  return (
    <div class="act">
      {/* What is asked for once more is drawn once more: each is read by its Show alone. */}
      <Show when={props.picture}>{(picture) => <div class="act-picture">{picture()}</div>}</Show>
      <h1 class="act-headline">{unbroken(props.headline)}</h1>
      <Show when={props.detail}>{(detail) => <p class="act-detail">{unbroken(detail())}</p>}</Show>
      <Show when={props.care}>{(care) => <p class="act-care barred">{unbroken(care())}</p>}</Show>
      <Show when={props.children}>{(more) => <div class="act-more">{more()}</div>}</Show>
    </div>
  );
}
