import { coolLoaf } from '../../core/speech/words/kitchen.ts';
import { isPlausibleLoss } from '../../core/oven/bake-loss-learned.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import type { Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';

/** What a cool loaf lost in the oven, once one was weighed here; null where its weight is no loaf's of these. */
export function loafLost({ bake }: Focus, stage: string, units: Units): string | null {
  const { readings, entered, recipe } = bake.context;
  const weighed = readings['weight.loaf'];
  if (stage !== 'cool.handOver' || weighed === undefined || !('grams' in weighed.reading))
    return null;
  if (weighed.at < (entered['cool.cooling'] ?? 0)) return null;
  const lost = recipe.piece - weighed.reading.grams;
  if (!isPlausibleLoss(lost / recipe.piece)) return null;
  const percent = Math.round((lost / recipe.piece) * 100);
  return fill(coolLoaf.lost, { ...shown({ grams: Math.round(lost) }, units), percent });
}
