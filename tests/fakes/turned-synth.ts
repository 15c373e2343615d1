import type { Synth } from '../../src/adapters/speaker/read-aloud.ts';

export interface Uttered {
  readonly text: string;
  ended: 'no' | 'over' | 'cancelled' | 'failed';
  readonly words: SpeechSynthesisUtterance;
}

/** A device's own speech: it does what the test lets it do, which may be nothing. */
export interface TurnedSynth extends Synth {
  voices: { name: string; lang: string; localService: boolean; default: boolean }[];
  readonly uttered: Uttered[];
  readonly cancels: number;
  /** The list of voices is said to have changed. */
  listed(): void;
  start(): void;
  end(): void;
  fail(): void;
}

export const voiceNamed = (name: string, lang = 'en-GB', localService = true, usual = false) => ({
  name,
  lang,
  localService,
  default: usual,
});

export const utter = (text: string): SpeechSynthesisUtterance =>
  ({ text, volume: 1, rate: 1 }) as SpeechSynthesisUtterance;

export function makeTurnedSynth(): TurnedSynth {
  const uttered: Uttered[] = [];
  const events = new EventTarget();
  const now = (): Uttered | undefined => uttered.find(({ ended }) => ended === 'no');
  let cancels = 0;
  const event = (name: 'onstart' | 'onend' | 'onerror', one: Uttered | undefined): void => {
    if (one) (one.words[name] as ((e: unknown) => void) | null | undefined)?.(new Event(name));
  };
  const close = (ended: 'over' | 'failed', name: 'onend' | 'onerror'): void => {
    const one = now();
    if (one) one.ended = ended;
    event(name, one);
  };
  return {
    voices: [voiceNamed('Here')],
    uttered,
    get cancels() {
      return cancels;
    },
    getVoices() {
      return this.voices.map((voice) => ({ ...voice, voiceURI: voice.name }));
    },
    speak: (words) => void uttered.push({ text: words.text, words, ended: 'no' }),
    cancel() {
      cancels += 1;
      for (const one of uttered) {
        if (one.ended !== 'no') continue;
        one.ended = 'cancelled';
        event('onerror', one);
      }
    },
    addEventListener: events.addEventListener.bind(events),
    removeEventListener: events.removeEventListener.bind(events),
    listed: () => void events.dispatchEvent(new Event('voiceschanged')),
    start: () => event('onstart', now()),
    end: () => close('over', 'onend'),
    fail: () => close('failed', 'onerror'),
  };
}
