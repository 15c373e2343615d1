import type { Clock, Stop } from '../../../machines/ports.ts';

/** The audio clock is looked at so often while something is to sound, ms. */
const EVERY_MS = 2_000;
/** It stands once it has not moved for so many looks: a busy tablet may be late with one. */
const STILL = 3;
/** After it was pushed it is looked at this soon, ms. */
const SOON_MS = 300;

/** Whether the sound that a context makes goes anywhere. */
export interface AudioClock {
  /** It says that it runs and its time stands still: its output was unplugged, or sleeps. */
  stands(): boolean;
  /** Looks at it from now on, as long as `wanted`; without that it is looked at no more. */
  watch(wanted: boolean): void;
  /** Opens its output anew; must be called inside a tap. */
  push(): void;
  readonly stop: Stop;
}

/**
 * Watches the audio clock of a context that says it runs. A page learns of a lost output in no other way
 * everywhere: without leave it is told neither which outputs there are nor that one fell silent. What
 * plays on into nothing, such as a speaker at no volume, nobody here can know. `changed` is called as it
 * comes to stand and as it goes on.
 */
export function watchAudio(context: AudioContext, clock: Clock, changed: () => void): AudioClock {
  let last: { readonly wall: number; readonly audio: number } | null = null;
  let still = 0;
  let stands = false;
  let isWatched = false;
  let stopWake: Stop = () => {};

  const become = (next: boolean): void => {
    if (next === stands) return;
    stands = next;
    changed();
  };
  const look = (): void => {
    const now = { wall: clock.now(), audio: context.currentTime };
    const past = last === null ? Number.POSITIVE_INFINITY : now.wall - last.wall;
    const moved = last === null || now.audio !== last.audio;
    // Longer than it should: the page itself slept, and the audio clock with it.
    const tells = past > 0 && past <= 2 * EVERY_MS && context.state === 'running';
    still = moved || !tells ? 0 : still + 1;
    last = now;
    stopWake();
    if (isWatched || stands) stopWake = clock.wake(now.wall + EVERY_MS, look);
    if (still >= STILL) become(true);
    else if (moved) become(false);
  };
  return {
    stands: () => stands,
    watch(wanted) {
      if (wanted === isWatched) return;
      isWatched = wanted;
      last = null;
      still = 0;
      stopWake();
      if (wanted || stands) look();
    },
    push() {
      void context
        .suspend()
        .then(() => context.resume())
        .catch(() => {});
      last = { wall: clock.now(), audio: context.currentTime };
      stopWake();
      stopWake = clock.wake(clock.now() + SOON_MS, look);
    },
    stop: () => stopWake(),
  };
}
