import type { Frames } from '../../core/ear/frames.ts';
import type { Cut } from '../../core/ear/listener.ts';
import type { Saying } from '../../core/ear/person.ts';

/** What was made of the beginning of a saying while it could still go on. */
export interface Begun {
  /** The first net's rows: where they are the same, so is what the second one makes of them. */
  readonly rows: Float32Array;
  readonly learned: Frames;
}

/** Makes numbers of a saying. */
export interface SayingEngine {
  /** What can be made before the pause is long enough; where it takes no time, there is none. */
  ahead?(sound: Float32Array, begun: Begun | null): Promise<Begun>;
  /** Rejects where its net cannot be run. Of what has `begun` only the rest is made, and it is the same. */
  saying(cut: Cut, begun?: Begun | null): Promise<Saying>;
}
