import type { Remedy } from '../log/remedies.ts';
import { coreTarget } from '../oven/core-target.ts';
import type { Metres } from '../oven/boiling.ts';
import type { Units } from '../units.ts';
import { fill } from './fill.ts';
import { showHeat, showHeats } from './heats.ts';

/** A remedy's words with the heats of this kitchen in them. */
export interface ToldRemedy {
  readonly sign: string;
  readonly now: string | null;
  readonly next: string | null;
  readonly care: string | null;
}

/**
 * What to do about a sign, in the baker's unit; a core by how high the kitchen lies.
 *
 * @example
 * tellRemedy(remedyFor('handOver', 'soft'), { heat: 'C', weight: 'g' }, 0).next // → 'Bag it at 35 °C or less, in paper.'
 */
export function tellRemedy({ words }: Remedy, units: Units, height: Metres): ToldRemedy {
  const heats = { ...showHeats(units), crumbHeat: showHeat(coreTarget(height).least, units) };
  const told = (text: string | null | undefined): string | null =>
    text ? fill(text, heats) : null;
  return {
    sign: told(words.sign)!,
    now: told(words.now),
    next: told(words.next),
    care: told(words.care),
  };
}
