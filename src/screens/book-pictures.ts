import type { Accessor } from 'solid-js';
import type { NoPicture } from '../../machines/ports.ts';

/** Pictures of the Book's formulas, of each at most one. Nothing of them leaves this tablet but in its saved file. */
export interface BookPictures {
  /** Where each that there is can be shown from, by its formula's id. */
  readonly shown: Accessor<Readonly<Record<string, string>>>;
  /** Whether the last press about a formula's picture can be taken back; it can for good. */
  canTakeBack(formula: string): boolean;
  /** Made small and written; null once it is, else why not, and nothing has changed. */
  take(formula: string, file: Blob): Promise<NoPicture | null>;
  /** Takes it away. */
  drop(formula: string): Promise<NoPicture | null>;
  takeBack(formula: string): Promise<NoPicture | null>;
}
