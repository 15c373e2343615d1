import { createSignal, onMount, type Component } from 'solid-js';
import { LetterPad } from '../../../src/parts/LetterPad.tsx';
import { Sheet } from '../../../src/parts/Sheet.tsx';

const nothing = (): void => {};
/** Longer than a key wants to be on the screen before it may be pressed, ms. */
const BEAT = 2_000;

const keys = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>('.letters button')];

interface Shown {
  readonly lines?: 'one' | 'many';
  readonly most?: number;
  /** Keys that were pressed before, by what stands on them. */
  readonly pressed?: readonly string[];
}

/** The keys for words over a page, with what was written so far. */
const pad =
  (text: string, { lines = 'many', most = 2000, pressed = [] }: Shown = {}): Component =>
  () => {
    const [written, setWritten] = createSignal(text);
    let at = BEAT;
    const pressAll = (): void => {
      for (const face of pressed) {
        at += BEAT;
        // As a screen reader presses: a finger wants a place on the glass.
        keys()
          .find((one) => one.textContent === face)!
          .click();
      }
    };
    // Once it stands: what is pressed while it is made turns no page.
    onMount(() => queueMicrotask(pressAll));
    return (
      <Sheet title="What is it called?" headless>
        <LetterPad
          ask="What is it called?"
          text={written()}
          onText={setWritten}
          onDone={nothing}
          onTablet={nothing}
          now={() => at}
          {...{ lines, most }}
        />
      </Sheet>
    );
  };

/** Keys for words: nothing written, in the middle of it, full, both pages of signs, and a word to put back. */
export const letterScenes: Record<string, Component> = {
  'letters: a name': pad('', { lines: 'one', most: 40 }),
  'letters: a name that is full': pad('Mill', { lines: 'one', most: 4 }),
  'letters: a note': pad('It sang. Less water'),
  'letters: signs': pad('It sang', { pressed: ['123 é'] }),
  'letters: a small letter': pad('It sang. ', { pressed: ['123 é', 'Aa'] }),
  'letters: more signs': pad('It sang', { pressed: ['123 é', 'More'] }),
  'letters: a word to put back': pad('It sang loudly', { pressed: ['Erase word'] }),
};
