import type { NumberSlot, SignSlot, Slot } from '../../../core/records/reading-slot.ts';

/** A standing reading that is to be mended: its fact, what it says, and when it was taken. */
export interface Mended {
  readonly target: string;
  readonly says: string;
  readonly time: string;
}

/** A number being keyed in. `asked`: it is odd or cannot be, and was said to be so. */
export interface NumberPage {
  readonly at: 'number';
  readonly slot: NumberSlot;
  readonly typed: number | null;
  readonly asked: boolean;
  /** What other spots of the same thing read, this time. */
  readonly spots: readonly number[];
  /** A rise read off a sample of the dough in a jar. */
  readonly jar?: true;
  readonly mends: Mended | null;
}

/** A sign being chosen by picture. `edge`: the first half of edge and bubbles. */
export interface PicturePage {
  readonly at: 'pictures';
  readonly slot: SignSlot | 'rise.dough' | 'rise.levain';
  readonly edge: 'flat' | 'domed' | 'fallen' | null;
  /** A rise read off a sample of the dough in a jar. */
  readonly jar?: true;
  readonly mends: Mended | null;
}

/**
 * Where the baker is among the readings; or at the drawing of the sheet, the chart of the rise, what
 * the water rests on, the hour of the levain, the tasks to come, or the pots; null on the bench is nowhere.
 */
export type ReadingPage =
  | { readonly at: 'new' }
  | { readonly at: 'kinds' }
  | { readonly at: 'sheet' }
  | { readonly at: 'why' }
  | { readonly at: 'feedHour' }
  | { readonly at: 'ahead' }
  | { readonly at: 'past' }
  | { readonly at: 'rise' }
  | { readonly at: 'pots' }
  | NumberPage
  | PicturePage;

export const numberPage = (slot: NumberSlot, mends: Mended | null = null): NumberPage => ({
  at: 'number',
  slot,
  typed: null,
  asked: false,
  spots: [],
  mends,
});

export const picturePage = (
  slot: PicturePage['slot'],
  mends: Mended | null = null,
): PicturePage => ({ at: 'pictures', slot, edge: null, mends });

/** Where a reading of a slot is mended: its keypad, or its pictures. */
export const mendingPage = (slot: Slot, mends: Mended): ReadingPage =>
  slot === 'edge' || slot === 'growth' || slot === 'poke' || slot === 'crust'
    ? picturePage(slot, mends)
    : numberPage(slot, mends);
