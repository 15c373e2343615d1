import { createSignal, For, onCleanup, onMount, Show, type JSX } from 'solid-js';
import { Control } from './Control.tsx';
import type { Half } from './half.ts';
import { KEY_SAID } from './key-said.ts';
import { Pressable } from './Pressable.tsx';
import { numberOf, typeKey, type PadKey } from './typed.ts';
import { unbroken } from './unbroken.ts';
import './NumberPad.css';

export interface NumberPadWords {
  /** The sign between whole and part: "." or ",". */
  readonly point: string;
  readonly clear: string;
  /** Under the number, what is plausible: "15 to 40 °C". */
  readonly hint?: string | undefined;
  /** In place of the hint when the number lies outside min and max. */
  readonly outside?: string | undefined;
  /** In place of the hint while what stands there was keyed before and left. */
  readonly again?: string | undefined;
  /** A key of its own to finish with; leave it out where the slab does. */
  readonly done?: string | undefined;
}

export interface NumberPadProps {
  /** What is asked, for ears: "Dough temperature". */
  readonly label: string;
  /** Behind the number: "°C", "g", "%". */
  readonly unit: string;
  readonly words: NumberPadWords;
  /** Plausible range in `unit`, both ends included. A number outside is told, not refused. */
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** The highest number that can be: a third digit past it sets the point (typed.ts). */
  readonly possible?: number | undefined;
  /** What was typed here before another page came to the front; never what is expected. */
  readonly begun?: number | null | undefined;
  /** Its digits may be said, one by one. */
  readonly said?: boolean | undefined;
  /** Keeps what is half typed, and gives it back when the same question is asked again. */
  readonly half?: Half | undefined;
  /** Each change: the keys so far. */
  readonly onText?: ((text: string) => void) | undefined;
  /** Each change: the number, or null while nothing readable is typed. */
  readonly onTyped?: ((value: number | null) => void) | undefined;
  /** The done key; only pressed with a number typed. */
  readonly onDone?: ((value: number) => void) | undefined;
  /** Milliseconds; the room's clock unless given. */
  readonly now?: (() => number) | undefined;
}

const KEYS: readonly PadKey[] = ['1', '2', '3', 'clear', '4', '5', '6', '.', '7', '8', '9', '0'];

/** A keypad for one reading, blank at first: what is expected is never filled in. */
export function NumberPad(props: NumberPadProps): JSX.Element {
  /* eslint-disable solid/reactivity -- it begins with it and goes its own way */
  const left = (props.begun ?? null) === null ? (props.half?.read() ?? '') : '';
  const [typed, setTyped] = createSignal(left || String(props.begun ?? ''));
  /* eslint-enable solid/reactivity */
  const value = (): number | null => numberOf(typed());
  const outside = (): boolean => {
    const number = value();
    if (number === null) return false;
    return number < (props.min ?? -Infinity) || number > (props.max ?? Infinity);
  };
  const tell = (): void => {
    props.onText?.(typed());
    props.onTyped?.(value());
  };
  const press = (key: PadKey): void => {
    setTyped((text) => typeKey(text, key, props.possible));
    props.half?.keep(typed());
    tell();
  };
  if (left !== '') onMount(tell);
  const hint = (): string => {
    const first = outside() ? props.words.outside : undefined;
    const again = left !== '' && typed() === left ? props.words.again : undefined;
    return first ?? again ?? props.words.hint ?? '';
  };
  const finish = (): void => {
    const number = value();
    if (number !== null) props.onDone?.(number);
  };
  const onKeyDown = (e: KeyboardEvent): void => {
    const key = e.key === ',' ? '.' : e.key === 'Backspace' || e.key === 'Delete' ? 'clear' : e.key;
    const known = KEYS.find((k) => k === key);
    if (known && !e.repeat && !e.ctrlKey && !e.metaKey && !e.altKey) press(known);
  };
  let pad!: HTMLDivElement;
  // Digits need no focus: a keyboard's hand stays on the slab that takes the number.
  const onWindow = (e: KeyboardEvent): void => {
    const dialog = document.querySelector('[aria-modal="true"]');
    // A pad put aside (its bench waits behind another page) takes no digits.
    if (pad.closest('[hidden]')) return;
    if (!dialog || dialog.contains(pad)) onKeyDown(e);
  };
  window.addEventListener('keydown', onWindow);
  onCleanup(() => window.removeEventListener('keydown', onWindow));
  const face = (key: PadKey): string =>
    key === '.' ? props.words.point : key === 'clear' ? props.words.clear : key;

  return (
    <div class="pad" role="group" aria-label={props.label} ref={pad}>
      <div class="pad-top">
        <output class="pad-value" aria-label={props.label} data-blank={typed() ? undefined : ''}>
          <span class="pad-typed">{typed().replace('.', props.words.point)}</span>{' '}
          <span class="pad-unit">{props.unit}</span>
        </output>
        <p class="pad-hint" role="status">
          {unbroken(hint())}
        </p>
      </div>
      <div class="pad-keys">
        <For each={KEYS}>
          {(key) => (
            <Pressable
              class={key === 'clear' ? 'key key-clear' : 'key'}
              quick
              does={props.said ? KEY_SAID[key] : undefined}
              onPress={() => press(key)}
              now={props.now}
            >
              {face(key)}
            </Pressable>
          )}
        </For>
      </div>
      <Show when={props.words.done}>
        {(done) => (
          <Control label={done()} disabled={value() === null} onPress={finish} now={props.now} />
        )}
      </Show>
    </div>
  );
}
