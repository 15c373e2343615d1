import type { Clock, Sound, SoundState, Stop } from '../../../machines/ports.ts';
import { makeClock } from '../clock.ts';
import type { AudioClock, watchAudio } from './audio-clock.ts';
import type { prepare as makeReady, Ring, ring as makeRing } from './ring.ts';

/** What sounds: loaded when it is armed, never before, as it is no part of the first load. */
export interface Audio {
  readonly context: AudioContext;
  readonly ring: typeof makeRing;
  readonly prepare: typeof makeReady;
  readonly watch: typeof watchAudio;
}

export interface SoundParts {
  /** Opens the audio, or null where this browser has none. */
  readonly open: () => Promise<Audio | null>;
  /** The wall clock, in a rehearsal too. */
  readonly clock: Clock;
}

/** A resume that the browser does not allow never settles: arming answers after this time, ms. */
const ARM_WITHIN = 1_000;

/** Taps and keys, in which a suspended context may be resumed, and returns to the page. */
const CHANCES = ['pointerup', 'click', 'keydown', 'visibilitychange', 'pageshow'];

async function openHowler(): Promise<Audio | null> {
  const [{ Howler }, { ring, prepare }, { watchAudio }] = await Promise.all([
    import('howler'),
    import('./ring.ts'),
    import('./audio-clock.ts'),
  ]);
  // Its own unlocking may close the context and open another one under ours; we resume by hand.
  Howler.autoUnlock = false;
  Howler.autoSuspend = false;
  Howler.volume(1); // opens the context
  const context = Howler.ctx as AudioContext | null;
  return context && { context, ring, prepare, watch: watchAudio };
}

/**
 * Calls as sound. Until it is armed inside a tap nothing sounds, and `state` says so; a call that
 * rings meanwhile begins when it is, as loud as it has become. A context that the system takes away
 * (lock screen, telephone), or whose clock stands (an output that is gone), makes it `lost` until a tap,
 * the return to the page or the output brings it back. `unavailable`: this browser has no Web Audio. One
 * call at a time: the caller stops the old.
 */
export function makeSound(
  parts: Partial<SoundParts> = {},
): Sound & { readonly close: Stop; context(): AudioContext | null } {
  const open = parts.open ?? openHowler;
  const clock = parts.clock ?? makeClock();
  const listeners = new Set<(state: SoundState) => void>();
  /** Calls asked for and not silenced; `ring` once there is audio to lay it on. */
  const calls = new Set<{ ring: Ring | null; readonly begin: (audio: Audio) => Ring }>();
  const hasAudio = typeof AudioContext !== 'undefined' || 'webkitAudioContext' in globalThis;
  let state: SoundState = hasAudio || parts.open ? 'locked' : 'unavailable';
  let opening: Promise<Audio | null> | null = null;
  let audio: Audio | null = null;
  let output: AudioClock | null = null;
  let wasArmed = false;

  const become = (next: SoundState) => {
    if (next === state) return;
    state = next;
    for (const then of listeners) then(state);
  };

  /** Brings calls and state in line with the context as it is now. */
  const sync = () => {
    if (audio === null) return;
    const runs = audio.context.state === 'running' && output?.stands() !== true;
    for (const call of calls) {
      if (runs) (call.ring ??= call.begin(audio)).lay();
      else call.ring?.drop();
    }
    wasArmed ||= runs;
    become(runs ? 'armed' : wasArmed ? 'lost' : 'locked');
    output?.watch(calls.size > 0);
  };
  const resume = () => {
    if (audio === null) return;
    if (audio.context.state !== 'running') audio.context.resume().catch(() => {});
    else if (output?.stands()) output.push();
    sync();
  };

  const opened = async (): Promise<void> => {
    opening ??= open();
    const found = await opening;
    if (audio !== null) return;
    if (found === null) return become('unavailable');
    audio = found;
    output = found.watch(found.context, clock, sync);
    audio.context.addEventListener('statechange', sync);
    const { audioSession } = navigator as { audioSession?: { type: string } };
    if (audioSession) audioSession.type = 'playback'; // else an iPad's mute switch silences calls
    for (const chance of CHANCES) window.addEventListener(chance, resume, true);
  };

  return {
    state: () => state,
    /** Where it sounds, for others that sound with it; null until it was armed once. */
    context: () => audio?.context ?? null,
    onState(then) {
      listeners.add(then);
      return () => void listeners.delete(then);
    },
    async arm() {
      if (state === 'unavailable') return state;
      try {
        await opened();
      } catch {
        opening = null; // not loaded: the next tap tries again, and the screen goes on saying so
      }
      if (audio === null) return state;
      let stopWaiting: Stop = () => {};
      const longEnough = new Promise<void>((resolve) => {
        stopWaiting = clock.wake(clock.now() + ARM_WITHIN, resolve);
      });
      if (output?.stands()) output.push();
      await Promise.race([audio.context.resume().catch(() => {}), longEnough]);
      stopWaiting();
      sync();
      audio.prepare(audio.context);
      return state;
    },
    ring(kind, inMs) {
      const since = clock.now() + inMs;
      const begin = ({ context, ring }: Audio) => ring({ context, clock }, kind, since);
      const call = { ring: null as Ring | null, begin };
      calls.add(call);
      sync();
      return () => {
        if (!calls.delete(call)) return;
        call.ring?.stop();
        output?.watch(calls.size > 0);
      };
    },
    close() {
      for (const call of calls) call.ring?.stop();
      calls.clear();
      listeners.clear();
      for (const chance of CHANCES) window.removeEventListener(chance, resume, true);
      audio?.context.removeEventListener('statechange', sync);
      output?.stop();
    },
  };
}
