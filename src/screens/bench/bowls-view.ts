import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { warnOf } from '../../core/kitchen/warn-of.ts';
import { bowlClocks, recipeBowls } from '../../core/kitchen/split-bowls.ts';
import { tellClocks } from '../../core/speech/in-bowls.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import type { Instant, Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';

/** Where hands go from bowl to bowl, or will when a wait is over. */
const BOWL_BY_BOWL: readonly string[] = [
  'mix.first',
  'mix.rest',
  'mix.work',
  'bulk.between',
  'bulk.fold',
  'bulk.spread',
  'bulk.proving',
  'shape.divide',
];

/**
 * What a dough in several bowls has told at an act: how much later the other bowls are and, of a wait, when
 * they are due. At the read-through, how it is shared. Null: one bowl, or no matter here.
 */
export function bowlsLine(
  { bake, machine }: Focus,
  stage: string,
  equipment: Equipment,
  hour: (at: Instant) => string,
  units: Units,
): { readonly shown: string; readonly said: string } | null {
  const { recipe, loaves } = bake.context;
  if (stage === 'read.plan') {
    const told = warnOf(stage, recipe, loaves.length, equipment)
      .filter(({ key }) => key.startsWith('bowls'))
      .map((one) => tellNotice(one, units))
      .join(' ');
    return told === '' ? null : { shown: '', said: told };
  }
  if (!BOWL_BY_BOWL.includes(stage)) return null;
  const bowls = recipeBowls(recipe, equipment);
  const due = deadlineOf(machine);
  const clocks = due === null ? null : bowlClocks(due, bowls);
  return tellClocks(bowls.length, clocks && ((bowl) => hour(clocks[bowl]!)));
}
