import type { Stop } from '../../../machines/ports.ts';
import type { Pace } from '../../core/speech/pace.ts';
import type { Tongue } from '../../core/speech/tongue.ts';
import { secondsToSay } from '../../core/speech/utterances.ts';

/** What of the browser's own speech is used; tests put a fake in. */
export type Synth = Pick<SpeechSynthesis, 'getVoices' | 'speak' | 'cancel'> &
  Pick<EventTarget, 'addEventListener' | 'removeEventListener'>;

/** Reads any words with a voice of the device's own. */
export interface ReadAloud {
  /** Whether there is a voice that asks no network, of a tongue or any; waits a while for the list of voices. */
  reads(tongue?: Tongue): Promise<boolean>;
  /** How long it may take at most, ms. */
  within(text: string, pace?: Pace): number;
  /** Over when it was read, or once it has not begun or not ended in time. */
  read(
    text: string,
    pace?: Pace,
    tongue?: Tongue,
  ): { readonly over: Promise<void>; readonly stop: Stop };
}

export interface ReadAloudParts {
  readonly synth: Synth | undefined;
  readonly utter: (text: string) => SpeechSynthesisUtterance;
  /** Real milliseconds. */
  readonly later: (ms: number, then: () => void) => Stop;
  /** The tablet's languages, the best first. */
  readonly languages: readonly string[];
  /** Calls back at the next touch, inside it. */
  readonly atTouch: (then: () => void) => void;
  /** Calls back as soon as the page is hidden: a call that begins there could not cut words short in time. */
  readonly whenHidden: (then: () => void) => Stop;
}

/** The list of voices may come late, or say that it changed and still be empty, ms. Judgement. */
const VOICES_WITHIN = 2_000;
/** speak() may do nothing at all, ms. Judgement: a voice of the device begins in a tenth of it. */
const BEGINS_WITHIN = 2_000;
/** A slow voice takes twice the usual time; and some more, ms. Judgement. */
const TIMES = 2;
const MORE = 1_500;
/**
 * Of the rate of a voice by itself, 180 to 200 words a minute from memory (none was measured): 150 to 170
 * for grown-ups, and 115 to 130 for small hands, as their clips are.
 */
const RATES: Readonly<Record<Pace, number>> = { grown: 0.85, small: 0.65 };

/** 'en_GB' and 'en-GB' are one language. */
const language = (tag: string): string => tag.toLowerCase().split(/[-_]/)[0] ?? '';

/** A bread may be called anything, and some voices take what stands in angle brackets for marks of SSML. */
const unmarked = (text: string): string => text.replace(/[<>]/g, ' ');

const sameTag = (a: string, b: string): boolean =>
  a.replace('_', '-').toLowerCase() === b.replace('_', '-').toLowerCase();

export function makeReadAloud(parts: ReadAloudParts): ReadAloud {
  const { synth, utter, later } = parts;
  const local = (tongue?: Tongue): SpeechSynthesisVoice | undefined => {
    const voices = (synth?.getVoices() ?? []).filter(({ localService }) => localService);
    // A tongue’s words are read by a voice of it or by none; of several, by that of the tablet’s own country.
    const own = parts.languages.filter((tag) => language(tag) === tongue);
    const exact = own.flatMap((tag) => voices.filter(({ lang }) => sameTag(lang, tag)));
    if (exact[0]) return exact[0];
    for (const wanted of tongue === undefined ? parts.languages : [tongue]) {
      const speak = voices.filter(({ lang }) => language(lang) === language(wanted));
      const found = speak.find((voice) => voice.default) ?? speak[0];
      if (found) return found;
    }
    if (tongue !== undefined) return undefined;
    return voices.find((voice) => voice.default) ?? voices[0];
  };
  /** Waited for once: where there is none, no words wait for it again. */
  let waited = false;
  const listed = (): Promise<void> =>
    new Promise((resolve) => {
      if (waited) return resolve();
      if (!synth || synth.getVoices().length > 0) return resolve();
      const done = (): void => {
        stopWaiting();
        synth.removeEventListener('voiceschanged', changed);
        waited = true;
        resolve();
      };
      const changed = (): void => void (synth.getVoices().length > 0 && done());
      const stopWaiting = later(VOICES_WITHIN, done);
      synth.addEventListener('voiceschanged', changed);
    });

  /** Some tablets ignore speak() until it was called in a touch once: one that nobody hears. */
  const prime = (): void => {
    const voice = local();
    if (!voice) return parts.atTouch(prime);
    const nothing = utter(' ');
    nothing.voice = voice;
    nothing.volume = 0;
    synth?.speak(nothing);
  };
  if (synth) parts.atTouch(prime);

  const within = (text: string, pace: Pace): number =>
    secondsToSay(text, pace) * 1000 * TIMES + MORE;
  return {
    within: (text, pace = 'grown') => BEGINS_WITHIN + within(text, pace),
    reads: (tongue) => listed().then(() => local(tongue) !== undefined),
    read(text, pace = 'grown', tongue) {
      const voice = local(tongue);
      if (!synth || !voice) return { over: Promise.resolve(), stop: () => {} };
      let end: Stop = () => {};
      const over = new Promise<void>((resolve) => (end = resolve));
      // Held here until it is over: one that nobody holds may be lost with its events.
      const words = utter(unmarked(text));
      words.voice = voice;
      words.lang = voice.lang;
      words.rate = RATES[pace];
      let done = false;
      let stopWatch: Stop = () => {};
      let stopHiding: Stop = () => {};
      const finish = (): void => {
        done = true;
        stopWatch();
        stopHiding();
        end();
      };
      const cancel = (): void => {
        if (done) return;
        finish();
        synth.cancel();
      };
      words.onstart = () => {
        if (done) return synth.cancel(); // it was given up, and begins all the same
        stopWatch();
        stopWatch = later(within(text, pace), cancel);
      };
      words.onend = finish;
      words.onerror = finish;
      stopWatch = later(BEGINS_WITHIN, cancel);
      stopHiding = parts.whenHidden(cancel);
      if (!done) synth.speak(words);
      return { over, stop: cancel };
    },
  };
}
