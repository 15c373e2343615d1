import type { Reading } from '../../../core/records/fact.ts';
import { readingOf } from '../../../core/records/reading-number.ts';
import type { NumberSlot } from '../../../core/records/reading-slot.ts';
import { reading as words } from '../../../core/speech/words/readings.ts';
import { fill } from '../../../core/speech/fill.ts';
import { keysFor } from '../../../core/speech/reading-text.ts';
import type { Units } from '../../../core/units.ts';

/** A number in the baker's own unit, and what it is said to be of. */
export interface Typed {
  readonly slot: NumberSlot;
  readonly typed: number | null;
}

const isWithin = (typed: number, { least, most }: { least: number; most: number }): boolean =>
  typed >= least && typed <= most;

/** How plausible what is typed is; null while nothing is. */
export const judged = (
  { slot, typed }: Typed,
  units: Units,
): 'usual' | 'odd' | 'impossible' | null => {
  if (typed === null) return null;
  if (isWithin(typed, keysFor(slot, 'usual', units))) return 'usual';
  return isWithin(typed, keysFor(slot, 'possible', units)) ? 'odd' : 'impossible';
};

/** A number that is usual in the other scale was most likely read off such a probe. */
const otherScale = ({ slot, typed }: Typed, { heat, ...units }: Units): string | null => {
  const other = keysFor(slot, 'usual', { ...units, heat: heat === 'C' ? 'F' : 'C' });
  const mine = keysFor(slot, 'usual', { ...units, heat });
  return typed !== null && other.unit !== mine.unit && isWithin(typed, other) ? other.unit : null;
};

/** Why it is not taken at once, in words; null where it may be. */
export const doubtOf = (number: Typed, units: Units): string | null => {
  const how = judged(number, units);
  const { slot, typed } = number;
  if (typed === null || how === null || how === 'usual') return null;
  const usual = keysFor(slot, 'usual', units);
  const unit = otherScale(number, units);
  if (unit !== null) return fill(words.otherScale, { unit });
  return how === 'odd'
    ? fill(words.odd, { range: usual.range })
    : fill(words.impossible, { range: keysFor(slot, 'possible', units).range });
};

/**
 * The reading that a number stands for; null where there is none, where it cannot be, and where it
 * is odd and was not yet asked about again.
 */
export const readingFrom = (number: Typed, asked: boolean, units: Units): Reading | null => {
  const how = judged(number, units);
  const { slot, typed } = number;
  if (typed === null || how === null || how === 'impossible' || (how === 'odd' && !asked)) {
    return null;
  }
  return {
    ...readingOf(slot, keysFor(slot, 'usual', units).record(typed)),
    ...(how === 'odd' ? { odd: true } : {}),
  };
};
