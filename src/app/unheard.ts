import {
  createEffect,
  createMemo,
  createRoot,
  createSignal,
  untrack,
  type Accessor,
} from 'solid-js';
import type { Call } from '../../machines/attention/attention.ts';
import type { SoundState } from '../../machines/ports.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Instant } from '../core/units.ts';
import type { Hearing } from './quiet.ts';
import type { World } from './world.ts';

/** The second finger of a hand, and a foot that bounces, are one touch with the first, ms. Judgement. */
const ONE_TOUCH_MS = 600;

export interface UnheardParts {
  readonly world: Pick<World, 'sound' | 'clock' | 'later'>;
  readonly sound: Accessor<SoundState>;
  /** The call that is on show; null too on a page that rings for nothing. */
  readonly ringing: Accessor<Call | null>;
  /** Kitchen time, read each second. */
  readonly now: Accessor<Instant>;
  readonly hearing: Pick<Hearing, 'quiet'>;
  readonly equipment: Accessor<Equipment>;
  /** Says what rings. */
  readonly speak: () => void;
}

export interface Unheard {
  /** What rings waits for a touch to be heard. */
  waits(): boolean;
  /** A touch while something rings: true where it brought the sound, and is no answer to the call. */
  touch(): boolean;
}

/**
 * A page that was opened anew may sound only where the browser has learned to let it, else from a touch
 * on. It asks as soon as something rings. The touch that brings the sound does not hush the call: nobody
 * has heard it. Only the first such touch of a page: where it brings none, no later one will.
 */
export function makeUnheard(parts: UnheardParts): Unheard {
  const { world, hearing } = parts;
  const [touchedAt, setTouchedAt] = createSignal<number | null>(null);
  /** Something is to be heard, and not only seen. */
  const rings = (): boolean => {
    const call = parts.ringing();
    // By the clock: the kitchen's own time stands still from one due to the next, and quiet hours end in between.
    return call !== null && hearing.quiet(call, parts.now()) === null;
  };
  const waits = (): boolean =>
    touchedAt() === null &&
    parts.sound() === 'locked' &&
    parts.equipment().sound?.heard !== 'sightOnly' &&
    rings();
  createRoot(() => {
    // Once, and not anew with each second.
    const asks = createMemo(waits);
    createEffect(() => {
      if (asks()) untrack(() => void world.sound.arm());
    });
  });
  return {
    waits,
    touch() {
      const [at, last] = [world.clock.steady(), touchedAt()];
      if (last !== null) return at - last < ONE_TOUCH_MS;
      if (!waits()) return false;
      setTouchedAt(at);
      void world.sound.arm().then((state) => {
        if (state === 'armed' && rings()) parts.speak();
      });
      return true;
    },
  };
}
