import { burst, loudnessAt } from '../../core/speech/burst.ts';
import { callWave } from '../../core/speech/call-wave.ts';
import type { CallKind, Stop } from '../../../machines/ports.ts';

/** Tones are laid on the audio clock this far ahead, s; topped up well before they run out. */
const AHEAD = 60;
const TOP_UP_MS = 15_000;
/** A stopped call fades in this time, s: no click, and silent well within 200 ms. */
const FADE = 0.03;

const buffers = new WeakMap<BaseAudioContext, Map<CallKind, AudioBuffer>>();

const bufferOf = (context: BaseAudioContext, kind: CallKind): AudioBuffer => {
  const made = buffers.get(context) ?? new Map<CallKind, AudioBuffer>();
  buffers.set(context, made);
  const known = made.get(kind);
  if (known) return known;
  const samples = callWave(kind, context.sampleRate);
  const buffer = context.createBuffer(1, samples.length, context.sampleRate);
  buffer.copyToChannel(samples, 0);
  made.set(kind, buffer);
  return buffer;
};

export interface RingParts {
  readonly context: AudioContext;
  /** Real milliseconds that do not run back. */
  readonly now: () => number;
  readonly later: (ms: number, then: () => void) => Stop;
}

/**
 * Lays one call's burst on the audio clock. The call began at `since` on `now`'s clock; what of it
 * lies in the past is skipped, but a call already under way sounds at once.
 */
export function ring({ context, now, later }: RingParts, kind: CallKind, since: number): Stop {
  const out = context.createGain();
  out.connect(context.destination);
  const sources = new Set<AudioBufferSourceNode>();
  const tones = burst(kind);
  let laid = -Infinity;
  let stopLater: Stop = () => {};

  const lay = (inSeconds: number, db: number): void => {
    const level = context.createGain();
    level.gain.value = 10 ** (db / 20);
    level.connect(out);
    const source = context.createBufferSource();
    source.buffer = bufferOf(context, kind);
    source.connect(level);
    source.onended = () => {
      sources.delete(source);
      level.disconnect();
    };
    source.start(context.currentTime + Math.max(0, inSeconds));
    sources.add(source);
  };
  const topUp = (): void => {
    const elapsed = (now() - since) / 1000;
    if (laid === -Infinity && elapsed > 0.2) lay(0, loudnessAt(kind, elapsed));
    const from = Math.max(laid, elapsed > 0.2 ? elapsed + 1 : -Infinity);
    for (const { at, db } of tones) {
      if (at > from && at <= elapsed + AHEAD) lay(at - elapsed, db);
    }
    laid = Math.max(laid, elapsed + AHEAD);
    stopLater = later(TOP_UP_MS, topUp);
  };
  topUp();

  return () => {
    stopLater();
    const at = context.currentTime;
    out.gain.setValueAtTime(out.gain.value, at);
    out.gain.linearRampToValueAtTime(0, at + FADE);
    for (const source of sources) source.stop(at + FADE * 2);
    later(FADE * 4000, () => out.disconnect());
  };
}
