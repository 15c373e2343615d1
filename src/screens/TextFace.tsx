import { createSignal, Show, type Component, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { Control } from '../parts/Control.tsx';
import { Slab } from '../parts/Slab.tsx';
import { Words } from '../parts/Words.tsx';
import type { SidePageProps } from './SidePage.tsx';
import './TextFace.css';

/** Words typed in, where somebody wants to: a name in one line, notes in several. */
export function TextFace(props: {
  /** The page that it stands on. */
  readonly page: Component<SidePageProps>;
  readonly ask: string;
  readonly detail?: string | undefined;
  readonly begun: string;
  readonly lines: 'one' | 'many';
  /** Letters at most. */
  readonly most: number;
  /** Nothing typed is an answer too. */
  readonly blank: boolean;
  readonly back: string;
  /** What is to be said of it before it is taken: it stays on the page. */
  readonly care?: (text: string) => string | undefined;
  /** Each change, so that nothing is lost. */
  readonly onText?: (text: string) => void;
  readonly onTake: (text: string) => void;
  /** A press that takes nothing; without it there is none. */
  readonly onBack?: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [text, setText] = createSignal(props.begun);
  const typed = (of: { readonly currentTarget: { readonly value: string } }): void => {
    setText(of.currentTarget.value);
    props.onText?.(text());
  };
  const back = (): void => (props.onBack ? props.onBack() : props.onTake(text()));
  // eslint-disable-next-line solid/components-return-once, solid/reactivity -- a page is one
  const Page = props.page;
  return (
    <Page
      back={props.back}
      onBack={back}
      words={
        <Words headline={props.ask} detail={props.detail} care={props.care?.(text())}>
          <Show
            when={props.lines === 'many'}
            fallback={
              <input
                class="typed-text"
                type="text"
                autocomplete="off"
                aria-label={props.ask}
                maxlength={props.most}
                value={text()}
                onInput={typed}
              />
            }
          >
            <textarea
              class="typed-text"
              aria-label={props.ask}
              maxlength={props.most}
              value={text()}
              onInput={typed}
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
      controls={
        <Show when={props.onBack}>
          <Control label={props.back} onPress={back} />
        </Show>
      }
    />
  );
}
