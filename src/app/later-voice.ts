import { createSignal, type Accessor } from 'solid-js';
import type { Speaker, Stop } from '../../machines/ports.ts';
import { inEnglish, tongue } from '../core/speech/tongue.ts';
import type { Pace } from '../core/speech/pace.ts';
import type { House, Ways } from '../screens/house.ts';
import type { OwnParts } from './own-phrases.ts';
import type { Voice } from './voice.ts';

/** A voice that comes after the first paint, or with its first word. */
export function laterVoice(
  speaker: Speaker,
  later: (ms: number, then: () => void) => Stop,
  own: () => OwnParts & { readonly pace: Pace },
  ways: () => Pick<Ways, 'small'>,
): Pick<Voice, 'say' | 'hush'> & {
  /** As it stands: what is begun after that, it does not end. */
  now(): Pick<Voice, 'say' | 'done'>;
  /** What the screens ask of it. */
  readonly house: Pick<House, 'say' | 'caption' | 'reads'>;
  readonly lost: Accessor<boolean>;
  fetch(): Promise<unknown>;
} {
  const [caption, setCaption] = createSignal('');
  const [lost, setLost] = createSignal(false);
  speaker.onLost(() => setLost(true));
  let coming: Promise<Voice> | null = null;
  const voice = (): Promise<Voice> =>
    (coming ??= Promise.all([import('./voice.ts'), import('./own-phrases.ts')]).then(
      ([{ makeVoice }, { ownWords }]) => {
        // Its first touch wakes the tablet's own voice.
        if (own().readsOwn || tongue() !== 'en') void speaker.reads();
        // A child hears it at a child's pace, whatever the grown-ups like.
        const pace = () => (ways().small === 'off' ? own().pace : 'small');
        return makeVoice(speaker, later, setCaption, () => inEnglish(() => ownWords(own())), pace);
      },
    ));
  let begun = 0;
  const say = (words: string): void => {
    begun += 1;
    void voice().then((one) => one.say(words));
  };
  return {
    house: { say, caption, reads: (tongue) => speaker.reads(tongue) },
    /** Has it here before the first word. */
    fetch: voice,
    /** Whether words should have been heard and could not be. */
    lost,
    say,
    hush: () => void coming?.then((one) => one.hush()),
    now() {
      const mine = begun;
      return { say, done: () => void (begun === mine && coming?.then((one) => one.done())) };
    },
  };
}
