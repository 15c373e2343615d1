import type { Instant } from '../units.ts';

/**
 * What a baker says of one bake beside its facts. It may hold names: it is in no log, and may be erased for
 * good.
 */
export interface About {
  /** Keys of the catalogue's tags, or the baker's own words. */
  readonly tags: readonly string[];
  /** Out of the list until it is shown again; nothing is deleted. */
  readonly hidden: boolean;
  /** '': none. */
  readonly note: string;
  /** Ids of neighbours of the circle; who was erased there is nobody here. */
  readonly ate: readonly string[];
  /** Eaten at home too. */
  readonly home: boolean;
  /** When it was last changed. */
  readonly at: Instant;
}

export const NOTHING_SAID: Omit<About, 'at'> = {
  tags: [],
  hidden: false,
  note: '',
  ate: [],
  home: false,
};

/** A photo or a spoken note of a bake, as it is kept. `id` has no other beside it. */
export interface Keepsake {
  readonly id: string;
  /** Of the bake's start fact. */
  readonly start: string;
  readonly kind: 'photo' | 'voice';
  readonly at: Instant;
  /** 'image/jpeg', or what the browser records in. */
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}
