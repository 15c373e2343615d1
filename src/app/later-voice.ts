import { createSignal, type Accessor } from 'solid-js';
import type { Speaker, Stop } from '../../machines/ports.ts';
import type { Voice } from './voice.ts';

/** A voice that comes with its first word: nothing is said while the first screen is on its way. */
export function laterVoice(
  speaker: Speaker,
  later: (ms: number, then: () => void) => Stop,
): Voice & { readonly caption: Accessor<string> } {
  const [caption, setCaption] = createSignal('');
  let coming: Promise<Voice> | null = null;
  const voice = (): Promise<Voice> =>
    (coming ??= import('./voice.ts').then(({ makeVoice }) =>
      makeVoice(speaker, later, setCaption),
    ));
  return {
    caption,
    say: (words) => void voice().then((one) => one.say(words)),
    hush: () => void coming?.then((one) => one.hush()),
  };
}
