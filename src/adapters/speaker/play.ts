import type { OwnWords, Stop } from '../../../machines/ports.ts';
import { layClips, secondsOf, spokenBy } from '../../core/speech/clips.ts';
import { stretchFor, type Pace } from '../../core/speech/pace.ts';
import { tongue } from '../../core/speech/tongue.ts';
import { englishOfAll } from '../../core/speech/twins.ts';
import { stretch } from '../../core/speech/stretch.ts';
import { callsBus } from '../sound/calls-bus.ts';
import { loadClips } from './load-clips.ts';
import type { Clips } from './open-clips.ts';
import type { ReadAloud } from './read-aloud.ts';
import { readBetween, SOON, type Playing } from './read-between.ts';
import type { Recordings } from './recordings.ts';

/** Words that were stopped fade in this time, s. */
const FADE = 0.03;
/** Clips that do not come within this time are lost to these words, ms: late words would be false. */
const COME_WITHIN = 4_000;
/** The audio clock may stand still (a locked screen): words are over this long after their time, ms. */
const GRACE = 1_000;

const NO_OWN: OwnWords = { phrases: [], aloud: false };

export interface Player extends Pick<ReadAloud, 'reads'> {
  /** Plays words; `over` rejects where a clip of theirs cannot be had. */
  play(
    context: AudioContext,
    words: string,
    own?: OwnWords,
    pace?: Pace,
  ): { readonly over: Promise<void>; readonly stop: Stop };
}

/** A clip that takes so much longer, its pitch kept. */
function slowed(context: AudioContext, clip: AudioBuffer, by: number): AudioBuffer {
  if (by === 1) return clip;
  const sound = stretch(clip.getChannelData(0), clip.sampleRate, by);
  const made = context.createBuffer(1, sound.length, clip.sampleRate);
  made.copyToChannel(sound, 0);
  return made;
}

/**
 * Plays utterances as clips, laid one behind the other on the audio clock; what is to be read of them comes
 * behind. In another tongue than English a voice of the device's own reads all of it, where there is one.
 */
export function makePlayer(
  clips: Clips,
  later: (ms: number, then: () => void) => Stop,
  reader: ReadAloud,
  recordings: Recordings,
): Player {
  /** Rejects where it takes too long. */
  const inTime = <T>(coming: Promise<T>): Promise<T> => {
    let stopWaiting: Stop = () => {};
    const tooLong = new Promise<never>((_, reject) => {
      stopWaiting = later(COME_WITHIN, () => reject(new Error('The voice did not come in time.')));
    });
    return Promise.race([coming, tooLong]).finally(() => stopWaiting());
  };

  const ready = async (context: AudioContext, words: string, own: OwnWords, pace: Pace) => {
    const index = await clips.index();
    const laid = layClips(words, (id) => index.has(id), own.phrases);
    const ids = laid.clips.map(({ id }) => id);
    const loaded = await loadClips(context, ids, index, clips, recordings);
    const plain = (id: string): number => loaded[ids.indexOf(id)]?.seconds ?? 0;
    // Who spoke a clip anew chose how fast; for small hands it is slowed all the same.
    const asItIs = pace === 'grown' && loaded.some(({ anew }) => anew);
    const by = asItIs ? 1 : stretchFor(spokenBy(laid.clips, plain), pace);
    const seconds = (id: string): number => plain(id) * by;
    const sounds = laid.clips.map((_, i) => ({
      buffer: slowed(context, loaded[i]!.buffer, by),
      begins: secondsOf(laid.clips.slice(0, i), seconds),
    }));
    const long = secondsOf(laid.clips, seconds);
    return { sounds, long, unsaid: own.aloud ? laid.own : [] };
  };
  type Sounds = Awaited<ReturnType<typeof ready>>['sounds'];

  const sound = (context: AudioContext, sounds: Sounds, long: number): Playing => {
    const out = context.createGain();
    out.connect(context.destination);
    let cutAt = Number.POSITIVE_INFINITY;
    let end: (heard: boolean) => void = () => {};
    const over = new Promise<boolean>((resolve) => (end = resolve));
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
    const wait = (spoken.at - context.currentTime + long) * 1000 + GRACE;
    const stopWaiting = later(wait, () => stop());
    let stop = (): void => {
      stop = () => {};
      const heard = cutAt === Number.POSITIVE_INFINITY;
      stopWaiting();
      spoken.stop();
      cut(context.currentTime + FADE);
      for (const source of sources) source.stop(context.currentTime + 2 * FADE);
      end(heard);
    };
    sources.at(-1)!.onended = () => {
      stop();
      out.disconnect();
    };
    return { over, stop: () => stop() };
  };

  return {
    reads: reader.reads,
    play(context, words, own = NO_OWN, pace = 'grown') {
      let stopped = false;
      let stopNow: Stop = () => {};
      let giveUp: Stop = () => {};
      const ended = new Promise<void>((resolve) => (giveUp = resolve));
      const goesOn = (): boolean => !stopped && context.state === 'running';
      const all = async (): Promise<void> => {
        const other = tongue();
        if (other !== 'en' && (await inTime(reader.reads(other)))) {
          if (!goesOn()) return;
          const reading = readBetween(context, words, reader, later, pace, other);
          stopNow = reading.stop;
          await reading.over;
          return;
        }
        // The clips are English: they say what the caption would be in it.
        const english = other === 'en' ? words : englishOfAll(words);
        const { sounds, long, unsaid } = await inTime(ready(context, english, own, pace));
        const parts = [
          ...(sounds.length > 0 ? [() => sound(context, sounds, long)] : []),
          ...unsaid.map((text) => () => readBetween(context, text, reader, later, pace)),
        ];
        for (const begin of parts) {
          if (!goesOn()) return;
          const playing = begin();
          stopNow = playing.stop;
          if (!(await playing.over)) return;
        }
      };
      return {
        over: Promise.race([all(), ended]),
        stop() {
          stopped = true;
          stopNow();
          giveUp();
        },
      };
    },
  };
}
