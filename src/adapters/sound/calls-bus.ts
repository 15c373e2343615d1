import type { Stop } from '../../../machines/ports.ts';

/** Calls fade under speech and come back in this time, s: no click. */
const FADE = 0.03;
/** Between a tone and the words that follow it, s. */
const APART = 0.12;
/** Once speech was cut short calls come back after this time, s: what a touch silenced is silent by then. */
const BACK = 0.25;

/** Words on the audio clock, s; `cut` ends them early. */
interface Speech {
  readonly from: number;
  until: number;
  readonly cut: (at: number) => void;
}

interface Tone {
  readonly from: number;
  readonly until: number;
  /** It begins a call, which nothing may drown. */
  readonly first: boolean;
}

/** All calls of one context go through here, so that none sounds under speech. */
export interface CallsBus {
  /** What calls are connected to. */
  readonly input: AudioNode;
  /** A tone was laid on the audio clock; undone where it is cut. A call's first tone ends speech. */
  tone(tone: Tone): Stop;
  /**
   * Words of so many seconds, at `from` or behind the tone that sounds then. The later tones of a call
   * are silent under them; a new call cuts them short.
   */
  speak(from: number, long: number, cut: (at: number) => void): { at: number; stop: Stop };
}

const made = new WeakMap<BaseAudioContext, CallsBus>();

/** The one bus of a context. */
export function callsBus(context: BaseAudioContext): CallsBus {
  const known = made.get(context);
  if (known) return known;
  const input = context.createGain();
  input.connect(context.destination);
  const tones = new Set<Tone>();
  let speech: Speech | null = null;
  let muted = { from: 0, until: 0 };

  /** Silent from `from` to `until`; it comes back by itself, whatever happens to the words. */
  const mute = (from: number, until: number): void => {
    const now = context.currentTime;
    const back = Math.max(now, until);
    const { gain } = input;
    gain.cancelScheduledValues(now);
    if (now >= muted.from && now < muted.until) gain.setValueAtTime(0, now);
    else {
      gain.setValueAtTime(1, Math.max(now, from - FADE));
      gain.linearRampToValueAtTime(0, Math.max(now, from));
    }
    gain.setValueAtTime(0, back);
    gain.linearRampToValueAtTime(1, back + FADE);
    muted = { from, until: back };
  };
  const endAt = (one: Speech, at: number): void => {
    if (speech !== one || at >= one.until) return;
    one.cut(at);
    one.until = at;
    mute(one.from, at - FADE);
  };

  const bus: CallsBus = {
    input,
    tone(tone) {
      const now = context.currentTime;
      for (const old of tones) if (old.until < now) tones.delete(old);
      tones.add(tone);
      if (tone.first && speech && tone.from > speech.from) endAt(speech, Math.max(now, tone.from));
      return () => void tones.delete(tone);
    },
    speak(from, long, cut) {
      let at = from;
      const inOrder = [...tones].sort((a, b) => a.from - b.from);
      for (const tone of inOrder)
        if (tone.from < at + APART && tone.until + APART > at) at = tone.until + APART;
      const mine: Speech = { from: at, until: at + long, cut };
      speech = mine;
      // A tone that begins under the words stays silent to its own end: half of one is no call.
      const under = inOrder.filter((tone) => tone.from < mine.until && tone.until > at);
      mute(at, Math.max(mine.until, ...under.map(({ until }) => until)));
      const next = inOrder.find((tone) => tone.first && tone.from > at);
      if (next) endAt(mine, next.from);
      return {
        at,
        stop() {
          if (speech !== mine) return;
          speech = null;
          const now = context.currentTime;
          if (now < mine.until) mute(now, now + BACK);
        },
      };
    },
  };
  made.set(context, bus);
  return bus;
}
