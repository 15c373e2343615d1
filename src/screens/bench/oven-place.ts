import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { isLane } from '../../core/records/lane.ts';
import { places } from '../../core/speech/words/names.ts';
import { fill } from '../../core/speech/fill.ts';
import type { Focus } from '../focus.ts';
import { potTitle } from '../pot-of.ts';
import { hasPots } from './loaf-of.ts';

/** Where the baker stands at the oven: the pot and its loaf, or the load. Its counts are still to be filled in. */
export function ovenPlace(kitchen: Kitchen, focus: Focus): string {
  if (!hasPots(kitchen, focus)) return places.oven;
  const lane = kitchen.lanes[focus.who];
  const title = isLane(focus.who) ? potTitle(focus.who) : null;
  if (title === null) return places.loaf;
  const empty = lane?.context.loaves.length === 0;
  return fill(empty ? places.empty : places.pot, { pot: title, load: '{load}', loads: '{loads}' });
}
