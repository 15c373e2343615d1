import type { Settings, Speaker, Stop } from '../../../machines/ports.ts';
import type { Player } from './play.ts';

export interface SpeakerParts {
  /** Where calls sound, so that none sounds under words; null until sound was armed. */
  readonly context: () => AudioContext | null;
  /** Real milliseconds. */
  readonly later: (ms: number, then: () => void) => Stop;
  /** Where clips that were spoken anew are kept. */
  readonly settings: Settings;
  /** What plays clips: it comes with the first words that can be heard. */
  readonly load?: () => Promise<Player>;
}

const loadPlayer =
  (later: SpeakerParts['later'], settings: Settings) => async (): Promise<Player> => {
    const [{ makePlayer }, { openClips }, { browserReads }, { recordingsIn }] = await Promise.all([
      import('./play.ts'),
      import('./open-clips.ts'),
      import('./browser-reads.ts'),
      import('./recordings.ts'),
    ]);
    return makePlayer(openClips(), later, browserReads(later), recordingsIn(settings));
  };

/**
 * A voice of spoken clips. Where sound is not armed nothing is heard and the words are over at once;
 * they are captioned by whoever asks. Clips that cannot be had are told as a loss, never thrown.
 */
export function makeSpeaker({
  context,
  later,
  settings,
  load = loadPlayer(later, settings),
}: SpeakerParts): Speaker {
  const listeners = new Set<() => void>();
  let player: Promise<Player> | null = null;
  return {
    onLost(then) {
      listeners.add(then);
      return () => void listeners.delete(then);
    },
    async reads(tongue) {
      try {
        player ??= load();
        return await (await player).reads(tongue);
      } catch {
        player = null;
        return false;
      }
    },
    say(words, own, pace) {
      const audio = context();
      if (audio === null || audio.state !== 'running')
        return { over: Promise.resolve(), stop: () => {} };
      let stopped = false;
      let stopClips: Stop = () => {};
      const speak = async (): Promise<void> => {
        try {
          player ??= load();
          const loaded = await player;
          if (stopped) return;
          const playing = loaded.play(audio, words, own, pace);
          stopClips = playing.stop;
          await playing.over;
        } catch {
          player = null; // the next words try again
          for (const then of listeners) then();
        }
      };
      return {
        over: speak(),
        stop() {
          stopped = true;
          stopClips();
        },
      };
    },
  };
}
