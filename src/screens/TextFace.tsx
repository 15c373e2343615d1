import { createSignal, Show, type Component, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { letterPad } from '../core/speech/words/letter-pad.ts';
import { Control } from '../parts/Control.tsx';
import { LetterPad } from '../parts/LetterPad.tsx';
import { usePressRoom } from '../parts/room.ts';
import { Sheet } from '../parts/Sheet.tsx';
import { Slab } from '../parts/Slab.tsx';
import { Words } from '../parts/Words.tsx';
import type { SidePageProps } from './SidePage.tsx';
import './TextFace.css';

/**
 * Words typed in, where somebody wants to: a name in one line, notes in several. Where nothing stands there yet
 * it opens on keys for floury hands; they lie over the page, for beside its slab there is no room for as many.
 * A keyboard that is plugged in writes with them and without; the device's own keys come when they are asked for.
 */
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
  /** Whether what is typed is an answer; left out: whatever is not blank is. */
  readonly answers?: (text: string) => boolean;
  /** An answer without words, by one press: no keys lie over it before it was passed by. */
  readonly wordless?: {
    readonly label: string;
    readonly chosen: boolean;
    readonly onPress: () => void;
  };
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
  const write = (next: string): void => {
    setText(next);
    props.onText?.(next);
  };
  const room = usePressRoom();
  // Who came here by a keyboard has one.
  // eslint-disable-next-line solid/reactivity
  const [isBig, setBig] = createSignal(
    props.begun === '' && props.wordless === undefined && !room.keyed(),
  );
  const [isTablets, setTablets] = createSignal(false);
  let field!: HTMLInputElement | HTMLTextAreaElement;
  const toBig = (): void => {
    setTablets(false);
    setBig(true);
  };
  const toTablets = (): void => {
    setTablets(true);
    setBig(false);
    // Now, and not after the paint: the device brings its keys for a hand's press alone.
    field.focus();
  };
  const about = {
    class: 'typed-text',
    ref: (el: HTMLInputElement | HTMLTextAreaElement) => (field = el),
    onInput: (e: { readonly currentTarget: { readonly value: string } }) =>
      write(e.currentTarget.value),
    // A field is no press of ours: where it is tapped the browser sets the letter's place first.
    onClick: () => !isTablets() && setBig(true),
  };
  const isWanting = (): boolean => {
    if (text().trim() === '') return !props.blank;
    return props.answers?.(text()) === false;
  };
  const back = (): void => (props.onBack ? props.onBack() : props.onTake(text()));
  // eslint-disable-next-line solid/reactivity -- a page is one
  const Page = props.page;
  return (
    <>
      <Page
        back={props.back}
        onBack={back}
        words={
          <Words headline={props.ask} detail={props.detail} care={props.care?.(text())}>
            <Show when={!isBig()}>
              <Show
                when={props.lines === 'many'}
                fallback={
                  <input
                    type="text"
                    autocomplete="off"
                    inputmode={isTablets() ? 'text' : 'none'}
                    aria-label={props.ask}
                    maxlength={props.most}
                    value={text()}
                    {...about}
                  />
                }
              >
                <textarea
                  inputmode={isTablets() ? 'text' : 'none'}
                  aria-label={props.ask}
                  maxlength={props.most}
                  value={text()}
                  {...about}
                />
              </Show>
            </Show>
          </Words>
        }
        slab={
          <Slab
            label={bench.thatsIt}
            then={props.back}
            fresh={props.ask}
            disabled={isWanting()}
            onPress={() => props.onTake(text().trim())}
          />
        }
        controls={
          <>
            <Show when={props.onBack}>
              <Control label={props.back} onPress={back} />
            </Show>
            <Show when={props.wordless}>
              {(answer) => (
                <Control
                  label={answer().label}
                  chosen={answer().chosen}
                  onPress={() => answer().onPress()}
                />
              )}
            </Show>
            <Control label={letterPad.big} onPress={toBig} />
          </>
        }
      />
      <Show when={isBig()}>
        <Sheet title={props.ask} headless>
          <LetterPad
            ask={props.ask}
            text={text()}
            lines={props.lines}
            most={props.most}
            onText={write}
            onDone={() => setBig(false)}
            onTablet={toTablets}
          />
        </Sheet>
      </Show>
    </>
  );
}
