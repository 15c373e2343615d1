import type { CallKind, Clock, Stop } from '../../../machines/ports.ts';
import { toneOf, type Tone } from '../../core/speech/burst.ts';
import { callWave } from '../../core/speech/call-wave.ts';
import type { Instant } from '../../core/units.ts';
import { callsBus } from './calls-bus.ts';

/** Tones are laid on the audio clock this far ahead, s: a hidden page may run only once a minute. */
const AHEAD = 150;
const TOP_UP_MS = 20_000;
/** The two clocks are held against each other this long before a tone, ms: a busy tablet's audio lags. */
const CHECK_MS = 400;
/** Clocks this far apart are set right, s. */
const APART = 0.02;
/** A tone this late is missed, s. */
const LATE = 0.05;
/** A tone this near is with the audio thread already, and left alone, s. */
const SOON = 0.1;
/** A stopped call fades in this time, s: no click, and silent well within 200 ms. */
const FADE = 0.03;
const FADED_MS = 150;

const buffers = new WeakMap<BaseAudioContext, Map<CallKind, AudioBuffer>>();

function bufferOf(context: BaseAudioContext, kind: CallKind): AudioBuffer {
  const made = buffers.get(context) ?? new Map<CallKind, AudioBuffer>();
  buffers.set(context, made);
  const known = made.get(kind);
  if (known) return known;
  const samples = callWave(kind, context.sampleRate);
  const buffer = context.createBuffer(1, samples.length, context.sampleRate);
  buffer.copyToChannel(samples, 0);
  made.set(kind, buffer);
  return buffer;
}

/** Makes the tones of all calls, which takes a slow tablet a while: when it is armed, not when it rings. */
export function prepare(context: BaseAudioContext): void {
  for (const kind of ['look', 'act', 'hot'] as const) bufferOf(context, kind);
}

export interface RingParts {
  readonly context: AudioContext;
  /** The wall clock. */
  readonly clock: Clock;
}

/** One call's burst on the audio clock. */
export interface Ring {
  /**
   * Holds what is laid against the wall clock and lays what comes next. Called when the context runs
   * (again) and whenever the page may have slept; a tone missed meanwhile sounds at once.
   */
  lay(): void;
  /** The context stands still: forgets what is laid, or it would sound late and twice. */
  drop(): void;
  /** Fades out and never sounds again. */
  readonly stop: Stop;
}

/** Makes the burst of a call due at wall instant `since`; nothing is laid before `lay`. */
export function ring({ context, clock }: RingParts, kind: CallKind, since: Instant): Ring {
  const bus = callsBus(context);
  let out: GainNode | null = null;
  /** Seconds after it was due that the burst began, and how many of its tones have begun. */
  let from = 0;
  let begun = 0;
  /** Tones on the audio clock that have not begun. */
  let laid: {
    readonly at: number;
    readonly when: number;
    readonly source: AudioBufferSourceNode;
    readonly unlay: Stop;
  }[] = [];
  /** The audio time at which the call was due, as the laid tones have it, s. */
  let due = 0;
  let stopped = false;
  let stopWake: Stop = () => {};

  const start = ({ at, db }: Tone) => {
    if (out === null) {
      out = context.createGain();
      out.connect(bus.input);
    }
    const level = context.createGain();
    level.gain.value = 10 ** (db / 20);
    level.connect(out);
    const source = context.createBufferSource();
    source.buffer = bufferOf(context, kind);
    source.connect(level);
    source.onended = () => level.disconnect();
    const when = Math.max(due + at, context.currentTime);
    source.start(when);
    const until = when + (source.buffer?.duration ?? 0);
    const unlay = bus.tone({ from: when, until, first: begun + laid.length === 0 });
    laid.push({ at, when, source, unlay });
  };
  const countBegun = (until: number) => {
    while (laid[0] !== undefined && laid[0].when <= until) {
      laid.shift();
      begun += 1;
    }
  };
  const cut = () => {
    for (const { source, unlay } of laid) {
      source.stop();
      source.disconnect();
      unlay();
    }
    laid = [];
  };

  const lay = () => {
    stopWake();
    if (stopped || context.state !== 'running') return;
    const elapsed = (clock.now() - since) / 1000;
    const dueNow = context.currentTime - elapsed;
    countBegun(context.currentTime + SOON);
    // The audio clock stood still in a sleep, lagged under load, or the hour was set.
    if (Math.abs(dueNow - due) > APART) cut();
    const next = toneOf(kind, begun, from);
    if (next !== null && next.at < elapsed - LATE) {
      cut();
      from = elapsed;
      begun = 0;
    }
    if (laid.length === 0) due = dueNow;
    let tone = toneOf(kind, begun + laid.length, from);
    while (tone !== null && tone.at <= elapsed + AHEAD) {
      start(tone);
      tone = toneOf(kind, begun + laid.length, from);
    }
    if (tone === null && laid.length === 0) return;
    const checks = laid.map(({ at }) => since + at * 1000 - CHECK_MS);
    const check = checks.find((instant) => instant > clock.now()) ?? Number.POSITIVE_INFINITY;
    stopWake = clock.wake(Math.min(check, clock.now() + TOP_UP_MS), lay);
  };

  const drop = () => {
    stopWake();
    countBegun(context.currentTime);
    cut();
    out?.disconnect();
    out = null;
  };

  return {
    lay,
    drop,
    stop() {
      if (stopped) return;
      stopped = true;
      if (out === null || context.state !== 'running') return drop();
      stopWake();
      countBegun(context.currentTime); // what sounds now must fade, not break off with a click
      cut();
      out.gain.setValueAtTime(1, context.currentTime);
      out.gain.linearRampToValueAtTime(0, context.currentTime + FADE);
      clock.wake(clock.now() + FADED_MS, drop);
    },
  };
}
