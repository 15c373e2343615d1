import type { Accessor } from 'solid-js';
import type { EarAsk, EarTold } from '../../machines/ear-port.ts';
import type { Stop, Take } from '../../machines/ports.ts';
import type { EarTone } from '../core/ear/ear-wave.ts';
import type { EarEngine, EarPerson, Saying } from '../core/ear/person.ts';
import type { NotWritten } from './house-circle.ts';

/** Whose voices are known here, and what hears them. */
export interface HouseEar {
  readonly people: Accessor<readonly EarPerson[]>;
  /** Null: it is on the disk. A person of this id who was there before is replaced. */
  keep(person: EarPerson): Promise<NotWritten | null>;
  forget(id: string): Promise<NotWritten | null>;
  /** Every voice, and that an ear is wanted. */
  forgetAll(): Promise<NotWritten | null>;
  /** What the learned engine weighs before it is here, bytes. */
  readonly weighs: number;
  /** Has the engine here. False: it cannot be had now. */
  fetch(engine: EarEngine): Promise<boolean>;
  /** One saying of one phrase, as it is and as it sounds in a louder kitchen. Call it inside a press. */
  take(engine: EarEngine, onSpeaks: (speaks: boolean) => void): Take<readonly Saying[]>;
  /** Listens until it is stopped or told that it is over; the microphone is let go at once. */
  listen(ask: EarAsk, tell: (told: EarTold) => void): Stop;
  /** Short and soft: it opens, or it is shut. Resolves when it is over: only then may it listen. */
  tone(which: EarTone): Promise<void>;
}
