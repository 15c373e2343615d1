import { createSignal, type Accessor } from 'solid-js';
import type { Speaker, Stop } from '../../machines/ports.ts';

/** A caption stays this long at least, and half a second a word beyond two. */
const LEAST_MS = 2000;
const WORD_MS = 430;

export interface Voice {
  /** Says it and captions it; what is being said is cut short. */
  say(words: string): void;
  hush(): void;
  readonly caption: Accessor<string>;
}

/** One voice at a time; its words are captioned whether it can be heard or not. */
export function makeVoice(speaker: Speaker, later: (ms: number, then: () => void) => Stop): Voice {
  const [caption, setCaption] = createSignal('');
  let stopSpeech: Stop = () => {};
  let stopFade: Stop = () => {};
  const hush = (): void => stopSpeech();
  return {
    caption,
    hush,
    say(words) {
      hush();
      stopFade();
      setCaption(words);
      const speech = speaker.say(words);
      stopSpeech = speech.stop;
      const ms = Math.max(LEAST_MS, words.split(/\s+/).length * WORD_MS);
      stopFade = later(ms, () => void speech.over.then(() => setCaption('')));
    },
  };
}
