import type { Played, SpokenNotes, Stop } from '../../../machines/ports.ts';
import { KEEPSAKE_LIMITS } from '../../core/log/keepsake-limits.ts';
import { trimSilence } from '../../core/speech/recording.ts';
import { browserRecorder } from './browser-recorder.ts';
import { listen, type RecorderParts } from './recorder.ts';

/** Enough for one voice in a kitchen, bits a second: a minute is some 360 kB. Judgement. */
const BITS = 48_000;

/** What plays a file; a browser's own player has all of these. */
export type NotePlayer = Pick<HTMLAudioElement, 'play' | 'pause' | 'removeAttribute'>;

export interface NoteParts {
  readonly player: (address: string, onEnded: Stop, onLost: Stop) => NotePlayer;
  readonly address: (voice: Blob) => string;
  readonly drop: (address: string) => void;
}

const browserPlayer: NoteParts = {
  player: (address, onEnded, onLost) =>
    Object.assign(new Audio(address), { onended: onEnded, onerror: onLost }),
  address: (voice) => URL.createObjectURL(voice),
  drop: (address) => URL.revokeObjectURL(address),
};

/** This tablet's microphone, and what it plays notes with. */
export function openSpokenNotes(
  later: RecorderParts['later'],
  recorder: RecorderParts = browserRecorder(later),
  { player, address, drop }: NoteParts = browserPlayer,
): SpokenNotes {
  return {
    record: (onHeard) =>
      listen(
        recorder,
        {
          most: KEEPSAKE_LIMITS.voiceSeconds * 1000,
          bits: BITS,
          // It is kept as it was recorded, but only where it can be read again and somebody spoke.
          async made(file) {
            if (trimSilence(await recorder.decode(file)) === null) return 'silent';
            return { type: file.type, bytes: new Uint8Array(await file.arrayBuffer()) };
          },
        },
        onHeard,
      ),
    play(voice) {
      const from = address(new Blob([voice.bytes], { type: voice.type }));
      let isOver = false;
      let end: (how: Played) => void = () => {};
      const over = new Promise<Played>((resolve) => (end = resolve));
      const close = (how: Played): void => {
        if (isOver) return;
        isOver = true;
        its.pause();
        // It lets go of the file, so that an erased voice is nowhere.
        its.removeAttribute('src');
        drop(from);
        end(how);
      };
      const its = player(
        from,
        () => close('heard'),
        () => close('lost'),
      );
      its.play().catch(() => close('lost'));
      return { over, stop: () => close('stopped') };
    },
  };
}
