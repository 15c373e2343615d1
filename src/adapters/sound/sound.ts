import type { CallKind, Sound, SoundState, Stop } from '../../../machines/ports.ts';
import type { ring as Ring } from './ring.ts';

interface Ringing {
  readonly kind: CallKind;
  readonly since: number;
  stop: Stop | null;
}

export interface SoundParts {
  /** Loads the audio library when sound is armed, never before: it is not part of the first load. */
  readonly open: () => Promise<{ readonly context: AudioContext; readonly ring: typeof Ring }>;
  readonly now: () => number;
  readonly later: (ms: number, then: () => void) => Stop;
  readonly page: Pick<Window, 'addEventListener'>;
}

const openHowler: SoundParts['open'] = async () => {
  const [{ Howler }, { ring }] = await Promise.all([import('howler'), import('./ring.ts')]);
  Howler.autoSuspend = false;
  Howler.volume(1);
  return { context: Howler.ctx, ring };
};

const later = (ms: number, then: () => void): Stop => {
  const timer = setTimeout(then, ms);
  return () => clearTimeout(timer);
};

/**
 * Calls as sound. Until it is armed inside a tap nothing sounds, and `state` says so; a call that
 * rings meanwhile begins when it is. A context the system suspends (lock, phone call) is resumed on
 * the next tap and when the page is shown.
 */
export function makeSound(parts: Partial<SoundParts> = {}): Sound {
  const open = parts.open ?? openHowler;
  const now = parts.now ?? (() => performance.now());
  const after = parts.later ?? later;
  const page = parts.page ?? window;
  let context: AudioContext | null = null;
  let ring: typeof Ring;
  let state: SoundState =
    typeof AudioContext === 'undefined' && !parts.open ? 'unavailable' : 'locked';
  let wanted: Ringing | null = null;
  const listeners = new Set<(s: SoundState) => void>();

  const sync = (): void => {
    if (context === null) return;
    const next: SoundState = context.state === 'running' ? 'armed' : 'locked';
    // After a suspension what was laid on the audio clock would come late: it is laid anew.
    if (next === 'armed' && wanted && (wanted.stop === null || state !== 'armed')) {
      wanted.stop?.();
      wanted.stop = ring({ context, now, later: after }, wanted.kind, wanted.since);
    }
    if (next === state) return;
    state = next;
    for (const then of listeners) then(state);
  };
  const resume = (): void => {
    if (context && context.state !== 'running') void context.resume().then(sync, () => undefined);
  };
  for (const event of ['visibilitychange', 'pageshow', 'pointerup', 'keyup']) {
    page.addEventListener(event, resume, true);
  }

  return {
    state: () => state,
    onState(then) {
      listeners.add(then);
      return () => listeners.delete(then);
    },
    async arm() {
      if (state === 'unavailable') return state;
      try {
        if (context === null) {
          ({ context, ring } = await open());
          context.onstatechange = sync;
          const session = (navigator as { audioSession?: { type: string } }).audioSession;
          if (session) session.type = 'playback';
        }
        await context.resume();
      } catch {
        // A browser that refuses stays locked; the screen goes on saying so.
      }
      sync();
      return state;
    },
    ring(kind, inMs) {
      const mine: Ringing = { kind, since: now() + inMs, stop: null };
      wanted = mine;
      sync();
      return () => {
        mine.stop?.();
        mine.stop = null;
        if (wanted === mine) wanted = null;
      };
    },
  };
}
