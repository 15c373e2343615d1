import type { Stop } from '../../../machines/ports.ts';
import { layClips, secondsOf } from '../../core/speech/clips.ts';
import { callsBus } from '../sound/calls-bus.ts';
import type { Clips } from './open-clips.ts';

/** Words begin this long after they are ready, s: time to hand them to the audio thread. */
const SOON = 0.05;
/** Words that were stopped fade in this time, s. */
const FADE = 0.03;
/** Clips that do not come within this time are lost to these words, ms: late words would be false. */
const COME_WITHIN = 4_000;
/** The audio clock may stand still (a locked screen): words are over this long after their time, ms. */
const GRACE = 1_000;

export interface Player {
  /** Plays words; `over` rejects where a clip of theirs cannot be had. */
  play(context: AudioContext, words: string): { readonly over: Promise<void>; readonly stop: Stop };
}

/** Plays utterances as clips, laid one behind the other on the audio clock. */
export function makePlayer(clips: Clips, later: (ms: number, then: () => void) => Stop): Player {
  /** Rejects where it takes too long. */
  const inTime = <T>(coming: Promise<T>): Promise<T> => {
    let stopWaiting: Stop = () => {};
    const tooLong = new Promise<never>((_, reject) => {
      stopWaiting = later(COME_WITHIN, () => reject(new Error('The voice did not come in time.')));
    });
    return Promise.race([coming, tooLong]).finally(() => stopWaiting());
  };

  const ready = async (context: AudioContext, words: string) => {
    const index = await clips.index();
    const { clips: laid } = layClips(words, (id) => index.has(id));
    const buffers = await Promise.all(
      laid.map(async ({ id }) => context.decodeAudioData(await clips.clip(id))),
    );
    const seconds = (id: string): number => index.get(id)?.seconds ?? 0;
    let at = 0;
    const sounds = laid.map((clip, i) => {
      const begins = at;
      at += seconds(clip.id) + clip.pause;
      return { buffer: buffers[i]!, begins };
    });
    return { sounds, long: secondsOf(laid, seconds) };
  };

  return {
    play(context, words) {
      let stopped = false;
      let silence: Stop = () => {};
      let end: Stop = () => {};
      const ended = new Promise<void>((resolve) => (end = resolve));

      const begin = async (): Promise<void> => {
        const { sounds, long } = await inTime(ready(context, words));
        if (stopped || sounds.length === 0 || context.state !== 'running') return end();
        const out = context.createGain();
        out.connect(context.destination);
        let cutAt = Number.POSITIVE_INFINITY;
        const cut = (at: number): void => {
          if (at >= cutAt) return;
          cutAt = at;
          out.gain.cancelScheduledValues(0);
          out.gain.setValueAtTime(1, Math.max(context.currentTime, at - FADE));
          out.gain.linearRampToValueAtTime(0, Math.max(context.currentTime + FADE, at));
        };
        const spoken = callsBus(context).speak(context.currentTime + SOON, long, cut);
        const sources = sounds.map(({ buffer, begins }) => {
          const source = context.createBufferSource();
          source.buffer = buffer;
          source.connect(out);
          source.start(spoken.at + begins);
          return source;
        });
        const last = sources.at(-1)!;
        const wait = (spoken.at - context.currentTime + long) * 1000 + GRACE;
        const stopWaiting = later(wait, () => silence());
        silence = () => {
          silence = () => {};
          stopWaiting();
          spoken.stop();
          cut(context.currentTime + FADE);
          for (const source of sources) source.stop(context.currentTime + 2 * FADE);
          end();
        };
        last.onended = () => {
          silence();
          out.disconnect();
        };
      };

      return {
        over: Promise.race([begin().then(() => ended), ended]),
        stop() {
          stopped = true;
          silence();
          end();
        },
      };
    },
  };
}
