import type { Accessor } from 'solid-js';
import type { Circle } from '../core/circle/circle.ts';
import type { Change } from '../core/circle/row.ts';

/** Why a change of the circle was not written: the disk is full, or cannot be had. */
export type NotWritten = 'full' | 'closed';

/** Orders and those who have them, as the screens see them: on this tablet, in no log. */
export interface HouseCircle {
  readonly circle: Accessor<Circle>;
  /** One press: shown once it is on the disk; null: it is. What was not written is not shown. */
  write(change: Change): Promise<NotWritten | null>;
  /** A change that cannot be taken back, nor the one before it: nothing of what it takes out stays. */
  erase(change: Change): Promise<NotWritten | null>;
  /** Whether there is a change to take back: the last one, however long ago. */
  readonly canTakeBack: Accessor<boolean>;
  takeBack(): Promise<NotWritten | null>;
  /** An id that no other thing has. */
  freshId(): string;
}
