import type { Accessor } from 'solid-js';
import type { NoPicture, SpokenNotes, VoiceNote } from '../../machines/ports.ts';
import type { About, Keepsake } from '../core/log/about.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { NotWritten } from './house-circle.ts';

/** What the Log has beside this kitchen's own records. By the id of a bake's start fact. */
export interface HouseLog {
  /** Logs of other tablets that were brought in, each a log by itself: to be read, never gone on with. */
  readonly others: Accessor<readonly (readonly LogRecord[])[]>;
  readonly abouts: Accessor<Readonly<Record<string, About>>>;
  /** Null: it is on the disk. What was not written is not shown. */
  say(start: string, change: Partial<Omit<About, 'at'>>): Promise<NotWritten | null>;
  /** Photos and spoken notes of a bake, the oldest first. Rejects where they cannot be had. */
  keepsakes(start: string): Promise<readonly Keepsake[]>;
  takePhoto(start: string, file: Blob): Promise<NoPicture | null>;
  /** The microphone and what plays a note. Rejects where it cannot be had. */
  voices(): Promise<SpokenNotes>;
  takeVoice(start: string, recorded: VoiceNote): Promise<NotWritten | null>;
  /** For good: no later file brings it back. */
  erase(start: string, id: string): Promise<NotWritten | null>;
  /** All that names anybody, is heard or seen: note, who ate it, photos and voices of this bake. */
  eraseAll(start: string): Promise<NotWritten | null>;
}
