import type { Deed } from '../../core/records/fact.ts';
import type { BakeStage } from '../../core/records/stage.ts';
import type { VerdictOn } from '../../core/speech/words/verdicts.ts';
import type { Focus } from '../focus.ts';
import { VERDICT_ACTS } from './acts.ts';

/**
 * Waits that end in a look, and what is looked at. No wait at a hot oven is among them: its looks carry
 * cautions that nobody may go past.
 */
const ENDS_IN_LOOK: Readonly<Partial<Record<BakeStage, VerdictOn>>> = {
  'levain.ripening': 'levain',
  'bulk.proving': 'bulk',
  'proof.retard': 'loaf',
  'proof.warm': 'warm',
  'proof.soon': 'warm',
};

/** In the fridge what spoils is looked at before anyone goes on. No recipe of today has it there. */
const spoils = ({ bake }: Focus): boolean =>
  bake.context.recipe.formula.fillings.some(({ keeps }) => keeps === 'perishable');

/**
 * Hands beat the model: the deed that goes on out of a wait at once, the one that its look would take.
 * Null where nobody may.
 */
export function earlyPress(focus: Focus, stage: string): Deed | null {
  const on = ENDS_IN_LOOK[stage as BakeStage];
  if (on === undefined || (stage === 'proof.retard' && spoils(focus))) return null;
  return { kind: 'press', who: focus.who, act: VERDICT_ACTS[on].ready };
}
