import { For, Show, type JSX } from 'solid-js';
import type { EarPhrase } from '../core/ear/phrases.ts';
import { Pressable } from './Pressable.tsx';
import { softWords } from './soft-words.ts';
import './Tiles.css';

export interface TileOption {
  readonly value: string;
  readonly label: string;
  /** What it means, in small words under it. */
  readonly means?: string | undefined;
  /** A drawing over the words. */
  readonly picture?: JSX.Element;
  /** What may be said for it. */
  readonly does?: EarPhrase | undefined;
  /** Not to be had now; why is told beside it. */
  readonly off?: boolean | undefined;
}

export interface TilesProps {
  /** What is asked, for ears. */
  readonly label: string;
  /** Two to six answers. */
  readonly options: readonly TileOption[];
  /** The answer that stands, where one may be changed. Nothing is chosen beforehand. */
  readonly chosen?: string | undefined;
  readonly disabled?: boolean | undefined;
  readonly onChoose: (value: string) => void;
  /** Milliseconds; the room's clock unless given. */
  readonly now?: (() => number) | undefined;
}

/** Answers by picture or word, none of them chosen beforehand. */
export function Tiles(props: TilesProps): JSX.Element {
  return (
    <div class="tiles" role="group" aria-label={props.label} data-count={props.options.length}>
      <For each={props.options}>
        {(option) => (
          <Pressable
            class="tile"
            onPress={() => props.onChoose(option.value)}
            fresh={`${props.label}\n${option.value}`}
            disabled={props.disabled === true || option.off === true}
            does={option.does}
            chosen={props.chosen === undefined ? undefined : props.chosen === option.value}
            now={props.now}
          >
            <Show when={option.picture}>
              <span class="tile-picture" aria-hidden="true">
                {option.picture}
              </span>
            </Show>
            <span>{softWords(option.label)}</span>
            <Show when={option.means}>{(means) => <span class="tile-means">{means()}</span>}</Show>
          </Pressable>
        )}
      </For>
    </div>
  );
}
