import type { EarTone } from '../src/core/ear/ear-wave.ts';
import type { Heard } from '../src/core/ear/heard.ts';
import type { EarEngine, EarPerson, Saying } from '../src/core/ear/person.ts';
import type { EarPhrase } from '../src/core/ear/phrases.ts';
import type { Stop, Take } from './ports.ts';

/** Who is listened to, and for what. Everybody here may answer; whoever spoke last is first. */
export interface EarAsk {
  readonly engine: EarEngine;
  readonly people: readonly EarPerson[];
  readonly active: readonly EarPhrase[];
}

/**
 * What the ear tells. `speaks`: somebody begins, or has ended. `room`: how loud it is without them, dB of full.
 * `over`: it is shut, and its microphone let go; `gone`: that was taken away while it listened.
 */
export type EarTold =
  | { readonly kind: 'open' }
  | { readonly kind: 'speaks'; readonly speaks: boolean }
  | { readonly kind: 'room'; readonly db: number }
  | { readonly kind: 'said'; readonly heard: Heard }
  | { readonly kind: 'over'; readonly why: 'denied' | 'none' | 'gone' | 'failed' };

/** The microphone, understood on the tablet alone: nothing of it is sent, and no sound is kept. */
export interface Ear {
  /** Has the engine here. False: it cannot be had now. */
  fetch(engine: EarEngine): Promise<boolean>;
  /** Until it is stopped or is over; the microphone is let go at once. */
  listen(ask: EarAsk, tell: (told: EarTold) => void): Stop;
  /** One saying, as it is and as it sounds in a louder kitchen. */
  take(engine: EarEngine, onSpeaks: (speaks: boolean) => void): Take<readonly Saying[]>;
  /** Short and soft: it opens, or it is shut. Resolves when it is over, or at once where nothing sounds. */
  tone(which: EarTone): Promise<void>;
}

/** Known voices on this device by their ids, as found: unread, unchecked. */
export interface VoiceRows {
  /** Rejects with `closed`. */
  load(): Promise<ReadonlyMap<unknown, unknown>>;
  /** All of these in one durable transaction; null: no row any more. Rejects with a StoreError: none is written. */
  write(rows: ReadonlyMap<string, unknown>): Promise<void>;
}
