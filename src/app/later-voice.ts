import { createSignal, type Accessor } from 'solid-js';
import type { Speaker, Stop } from '../../machines/ports.ts';
import type { Voice } from './voice.ts';

/** A voice that comes after the first paint, or with its first word. */
export function laterVoice(
  speaker: Speaker,
  later: (ms: number, then: () => void) => Stop,
): Voice & {
  readonly caption: Accessor<string>;
  readonly lost: Accessor<boolean>;
  fetch(): Promise<unknown>;
} {
  const [caption, setCaption] = createSignal('');
  const [lost, setLost] = createSignal(false);
  speaker.onLost(() => setLost(true));
  let coming: Promise<Voice> | null = null;
  const voice = (): Promise<Voice> =>
    (coming ??= import('./voice.ts').then(({ makeVoice }) =>
      makeVoice(speaker, later, setCaption),
    ));
  return {
    caption,
    /** Has it here before the first word. */
    fetch: voice,
    /** Whether words should have been heard and could not be. */
    lost,
    say: (words) => void voice().then((one) => one.say(words)),
    hush: () => void coming?.then((one) => one.hush()),
  };
}
