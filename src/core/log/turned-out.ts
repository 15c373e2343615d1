import type { CutRead } from '../records/cut-read.ts';
import type { Fact } from '../records/fact.ts';
import { notes } from '../speech/words/note.ts';
import type { LoafCause } from './loaf-names.ts';

/**
 * How a bake turned out, in the order it is asked for. `done`: it was put away and nothing was said of it
 * that has a mark; `early`: cleared away before its end, or the kitchen was put to a place without it.
 */
export const TURNED_OUT = [
  'good',
  'under',
  'over',
  'dark',
  'pale',
  'done',
  'early',
  'open',
] as const;
export type TurnedOut = (typeof TURNED_OUT)[number];

/** What is known of a bake that tells how it turned out. */
export interface Turning {
  /** The press that put it away or ended it; null: none did. */
  readonly end: Extract<Fact, { kind: 'press' }> | null;
  /** It went over and was baked flat. */
  readonly tray: boolean;
}

/** Causes that have a mark of their own. */
const CAUSED: Partial<Readonly<Record<LoafCause, TurnedOut>>> = {
  under: 'under',
  short: 'under',
  over: 'over',
  ovenHot: 'dark',
  ovenLow: 'pale',
};

/** What a cut loaf showed, where that has a mark; none where it is hard to say what was the cause. */
export const cutShown = ({ says, causes }: CutRead): TurnedOut | undefined => {
  if (says === 'well') return 'good';
  const first = says === 'causes' ? causes[0] : undefined;
  return first && first.sure !== 'hard' ? CAUSED[first.cause] : undefined;
};

/**
 * The baker's own word goes first, then what the cut loaf showed.
 *
 * @example
 * turnedOut({ end: null, tray: false }, undefined, true) // → 'open'
 */
export function turnedOut(
  { end, tray }: Turning,
  cut: CutRead | undefined,
  isOpen: boolean,
): TurnedOut {
  if (end === null) return isOpen ? 'open' : 'early';
  if (end.act === 'ended') return 'early';
  const noted = notes.find(({ value }) => value === end.text)?.value;
  return noted ?? (cut && cutShown(cut)) ?? (tray ? 'over' : 'done');
}
