import { createSignal, Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/en/bench.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import { CirclePage } from './CirclePage.tsx';

/** Words typed in, where somebody wants to: a name in one line, an address in several. */
export function TextFace(props: {
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
  readonly onTake: (text: string) => void;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [text, setText] = createSignal(props.begun);
  const keep = (of: { readonly currentTarget: { readonly value: string } }): void =>
    void setText(of.currentTarget.value);
  return (
    <CirclePage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={props.ask} detail={props.detail} care={props.care?.(text())}>
          <Show
            when={props.lines === 'many'}
            fallback={
              <input
                class="circle-text circle-top"
                type="text"
                autocomplete="off"
                aria-label={props.ask}
                maxlength={props.most}
                value={text()}
                onInput={keep}
              />
            }
          >
            <textarea
              class="circle-text circle-top"
              aria-label={props.ask}
              maxlength={props.most}
              value={text()}
              onInput={keep}
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
      controls={<Control label={props.back} onPress={() => props.onBack()} />}
    />
  );
}
