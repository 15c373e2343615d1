import type { Stop } from '../../machines/ports.ts';
import { MEDIA_DOES } from '../core/kitchen/pedal-keys.ts';

type Key = keyof typeof MEDIA_DOES;

/** What a browser calls these keys where it takes them for itself, by the names it sends them under. */
const ACTIONS: readonly (readonly [MediaSessionAction, Key])[] = [
  ['play', 'MediaPlayPause'],
  ['pause', 'MediaPlayPause'],
  ['nexttrack', 'MediaTrackNext'],
  ['previoustrack', 'MediaTrackPrevious'],
];

/** A browser gives these keys to what plays longer than five seconds (from memory); calls alone are too short. */
const SECONDS = 6;
const RATE = 8_000;

/** A file of nothing to hear: PCM, one channel, 8 bits a sample (RIFF/WAVE). */
function silentFile(): Blob {
  const length = SECONDS * RATE;
  const head = new DataView(new ArrayBuffer(44));
  const text = (at: number, letters: string): void =>
    [...letters].forEach((letter, i) => head.setUint8(at + i, letter.charCodeAt(0)));
  text(0, 'RIFF');
  head.setUint32(4, 36 + length, true);
  text(8, 'WAVEfmt ');
  head.setUint32(16, 16, true);
  head.setUint16(20, 1, true);
  head.setUint16(22, 1, true);
  head.setUint32(24, RATE, true);
  head.setUint32(28, RATE, true);
  head.setUint16(32, 1, true);
  head.setUint16(34, 8, true);
  text(36, 'data');
  head.setUint32(40, length, true);
  return new Blob([head, new Uint8Array(length).fill(128)], { type: 'audio/wav' });
}

function openSilence(): HTMLAudioElement {
  const audio = new Audio(URL.createObjectURL(silentFile()));
  audio.loop = true;
  return audio;
}

export interface MediaKeysParts {
  readonly session: MediaSession | undefined;
  readonly open: () => Pick<HTMLAudioElement, 'play' | 'pause'>;
}

/** Keys of headphones and speakers, which a browser keeps for whatever plays. */
export interface MediaKeys {
  /** While this lasts they come here; elsewhere they do nothing. */
  listen(then: (key: Key) => void): Stop;
}

/** A browser that has no such keys, or not all of them, is silent about those. */
export function makeMediaKeys({
  session = navigator.mediaSession as MediaSession | undefined,
  open = openSilence,
}: Partial<MediaKeysParts> = {}): MediaKeys {
  let silence: ReturnType<typeof open> | null = null;
  const handle = (action: MediaSessionAction, then: (() => void) | null): void => {
    try {
      session?.setActionHandler(action, then);
    } catch {
      // Unknown to this browser.
    }
  };
  return {
    listen(then) {
      if (session === undefined) return () => {};
      for (const [action, key] of ACTIONS) handle(action, () => then(key));
      silence ??= open();
      void silence.play().catch(() => {});
      session.playbackState = 'playing';
      return () => {
        for (const [action] of ACTIONS) handle(action, null);
        silence?.pause();
        session.playbackState = 'none';
      };
    },
  };
}
