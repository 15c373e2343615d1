import type { Cut } from '../../core/ear/listener.ts';
import type { Saying } from '../../core/ear/person.ts';

/** Makes numbers of a saying. */
export interface SayingEngine {
  /** Rejects where its net cannot be run. */
  saying(cut: Cut): Promise<Saying>;
}
