import { createSignal, For, Index, onMount, Show, type JSX } from 'solid-js';
import { letterNames, letterPad as words } from '../core/speech/words/letter-pad.ts';
import { Control } from './Control.tsx';
import {
  BELOW,
  faceOf,
  isCapital,
  PAGES,
  pageAfter,
  writeKey,
  type LetterKey,
  type LetterPage,
  type Writing,
} from './letter-keys.ts';
import { letterName } from './letter-name.ts';
import { Pressable } from './Pressable.tsx';
import { unbroken } from './unbroken.ts';
import './LetterPad.css';

export interface LetterPadProps {
  /** What is asked: "What to remember?" */
  readonly ask: string;
  readonly text: string;
  readonly lines: 'one' | 'many';
  /** Letters at most. */
  readonly most: number;
  /** Each change: all of the text. */
  readonly onText: (text: string) => void;
  readonly onDone: () => void;
  /** The keyboard that the device brings is wanted. */
  readonly onTablet: () => void;
  /** Milliseconds; the room's clock unless given. */
  readonly now?: (() => number) | undefined;
}

type Field = HTMLInputElement | HTMLTextAreaElement;

/**
 * Keys for words, as large as those for numbers. The text stands in a real field over them: a keyboard that
 * is plugged in writes into it, a tap sets where the next letter goes, and the device's own keys stay away.
 */
export function LetterPad(props: LetterPadProps): JSX.Element {
  let field!: Field;
  const [page, setPage] = createSignal<LetterPage>('letters');
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [at, setAt] = createSignal<Writing>(atEnd(props.text));
  const [turned, setTurned] = createSignal(false);
  /** What stood before each word that was erased since anything else was written: the way back. */
  const [gone, setGone] = createSignal<readonly Writing[]>([]);

  const here = (): Writing => {
    const { value, selectionStart, selectionEnd } = field;
    const from = selectionStart ?? value.length;
    return { text: value, from, to: selectionEnd ?? from };
  };
  const stand = (next: Writing): void => {
    if (next.text !== field.value) props.onText(next.text);
    field.value = next.text;
    field.setSelectionRange(next.from, next.to);
    // Where it is written is in sight: the last lines, or the end of the line.
    if (next.from === next.text.length) {
      field.scrollTop = field.scrollHeight;
      field.scrollLeft = field.scrollWidth;
    }
    setAt(next);
  };
  const capital = (): boolean => isCapital(at(), turned());
  const press = (key: LetterKey): void => {
    const before = here();
    const sign = faceOf(key, isCapital(before, turned()));
    const next = writeKey(before, sign, props.most);
    if (key === 'capital') setTurned(!turned());
    if (next.text !== before.text) {
      setTurned(false);
      setGone(key === 'eraseWord' ? [...gone(), before] : []);
    }
    setPage(pageAfter(page(), key));
    stand(next);
  };
  const putBack = (): void => {
    const last = gone().at(-1);
    if (!last) return;
    setGone(gone().slice(0, -1));
    stand(last);
  };
  const typed = (): void => {
    setGone([]);
    setTurned(false);
    props.onText(field.value);
    setAt(here());
  };
  const moved = (): void => {
    setAt(here());
  };
  onMount(() => {
    field.focus({ preventScroll: true });
    stand(atEnd(field.value));
  });

  const about = {
    class: 'typed-text letters-text',
    // The device's keyboard stays away; one that is plugged in writes all the same.
    inputmode: 'none',
    ref: (el: Field) => (field = el),
    onInput: typed,
    onSelect: moved,
    onKeyUp: moved,
    onPointerUp: moved,
  } as const;
  const face = (key: LetterKey): string => {
    if (key === 'page') return page() === 'letters' ? words.signs : words.letters;
    if (key === 'more') return page() === 'signs' ? words.more : words.less;
    if (key === 'line' || key === 'capital' || key.length > 1) return words[key as 'line'];
    return faceOf(key, capital());
  };
  const nameOf = (key: LetterKey): string | undefined => {
    if (key === 'page') return page() === 'letters' ? letterNames.signs : letterNames.letters;
    if (key === 'more') return page() === 'signs' ? letterNames.more : letterNames.less;
    return letterName(key);
  };
  const chosenOf = (key: LetterKey) => (key === 'capital' ? capital() : undefined);
  const isOff = (key: LetterKey): boolean => key === 'line' && props.lines === 'one';
  const keyOf = (key: () => LetterKey): JSX.Element => (
    <Pressable
      class={classOf(key())}
      quick
      // A key that stands for another sign now is a new one.
      fresh={page()}
      name={nameOf(key())}
      chosen={chosenOf(key())}
      disabled={isOff(key())}
      onPress={() => press(key())}
      now={props.now}
    >
      {face(key())}
    </Pressable>
  );

  return (
    <div class="letters" data-lines={props.lines}>
      <div class="letters-top">
        <p class="letters-ask">{unbroken(props.ask)}</p>
        <Show
          when={props.lines === 'many'}
          fallback={
            <input
              type="text"
              autocomplete="off"
              aria-label={props.ask}
              maxlength={props.most}
              value={props.text}
              {...about}
            />
          }
        >
          <textarea aria-label={props.ask} maxlength={props.most} value={props.text} {...about} />
        </Show>
      </div>
      <div class="letters-keys" role="group" aria-label={words.label}>
        <Index each={PAGES[page()]}>{keyOf}</Index>
        <For each={BELOW}>{(key) => keyOf(() => key)}</For>
      </div>
      <Pressable
        class="key key-word letters-put"
        quick
        disabled={gone().length === 0}
        onPress={putBack}
        now={props.now}
      >
        {words.putBack}
      </Pressable>
      <div class="letters-tablet">
        <Control label={words.tablet} onPress={() => props.onTablet()} now={props.now} />
      </div>
      <div class="letters-done">
        <Control label={words.done} strong onPress={() => props.onDone()} now={props.now} />
      </div>
    </div>
  );
}

const classOf = (key: LetterKey): string => (key.length > 1 ? `key key-word key-${key}` : 'key');
const atEnd = (text: string): Writing => ({ text, from: text.length, to: text.length });
