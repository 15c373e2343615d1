import { createSignal, Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/en/bench.ts';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import { BookPage } from './BookPage.tsx';

/** Words typed in, where somebody wants to: a name in one line, notes in several. */
export function TextFace(props: {
  readonly ask: string;
  readonly detail?: string;
  readonly begun: string;
  readonly lines: 'one' | 'many';
  /** Letters at most. */
  readonly most: number;
  /** Nothing typed is an answer too. */
  readonly blank: boolean;
  readonly back: string;
  /** Each change, so that nothing is lost. */
  readonly onText?: (text: string) => void;
  readonly onTake: (text: string) => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [text, setText] = createSignal(props.begun);
  const typed = (words: string): void => {
    setText(words);
    props.onText?.(words);
  };
  return (
    <BookPage
      back={props.back}
      onBack={() => props.onTake(text())}
      words={
        <Words headline={props.ask} detail={props.detail}>
          <Show
            when={props.lines === 'many'}
            fallback={
              <input
                class="book-text book-top"
                type="text"
                autocomplete="off"
                aria-label={props.ask}
                maxlength={props.most}
                value={text()}
                onInput={(e) => typed(e.currentTarget.value)}
              />
            }
          >
            <textarea
              class="book-text book-top"
              aria-label={props.ask}
              maxlength={props.most}
              value={text()}
              onInput={(e) => typed(e.currentTarget.value)}
            />
          </Show>
        </Words>
      }
      slab={
        <Slab
          label={bench.thatsIt}
          then={props.back}
          fresh={props.ask}
          disabled={!props.blank && text().trim() === ''}
          onPress={() => props.onTake(text().trim())}
        />
      }
    />
  );
}
