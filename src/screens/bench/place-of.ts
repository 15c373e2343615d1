import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { isLane } from '../../core/records/lane.ts';
import { partNames, places } from '../../core/speech/words/names.ts';
import { several } from '../../core/speech/words/several.ts';
import { fill } from '../../core/speech/fill.ts';
import type { Instant } from '../../core/units.ts';
import { bakeName } from '../bake-name.ts';
import { bakeOf, type Focus } from '../focus.ts';
import { nameOf } from '../stage-names.ts';
import { ovenPlace } from './oven-place.ts';

/**
 * Where an act stands, as a template: 'Bulk · Dough rises', 'Oven · load 1 of 2'. `brief`: behind a bake's
 * name there is no room for a part that the name of the stage tells as well.
 */
export const placeOf = (
  kitchen: Kitchen,
  focus: Focus,
  stage: string,
  hour: (at: Instant) => string,
  brief: boolean,
): string => {
  const { who, bake } = focus;
  const busy = who === 'oven' || isLane(who) ? bakeOf(kitchen, who) : null;
  if (busy !== null && busy !== bake.context.id)
    return fill(several.ovenOther, { bake: bakeName(kitchen, busy, hour) });
  if (who === 'oven' || isLane(who)) return ovenPlace(kitchen, focus);
  if (stage === 'bulk.between' || stage === 'bulk.fold') return places.touch;
  if (brief && stage.startsWith('proof.')) return nameOf(who, stage);
  const part = partNames[stage.split('.')[0] as keyof typeof partNames];
  return fill(places.stage, { part, name: nameOf(who, stage) });
};
