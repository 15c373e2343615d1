import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Vessel } from '../../core/formula/formula.ts';
import type { BakeStage, OvenStage } from '../../core/records/stage.ts';
import { bakeWords } from '../../core/speech/en/bake-words.ts';
import { stoneWords } from '../../core/speech/en/oven-stone.ts';
import { tinWords } from '../../core/speech/en/oven-tin.ts';
import { ovenWords } from '../../core/speech/en/oven.ts';
import type { StageWords } from '../../core/speech/words.ts';

/** What the oven says otherwise for what it is made ready for. */
const VESSEL_WORDS: Readonly<Record<Vessel, Readonly<Partial<Record<OvenStage, StageWords>>>>> = {
  pot: {},
  stone: stoneWords,
  tin: tinWords,
};

/** The words of a stage: the bake's own, or the oven's for what it is made ready for. */
export const wordsOf = ({ oven }: Kitchen, who: string, stage: string): StageWords => {
  if (who !== 'oven') return bakeWords[stage as BakeStage];
  const own = VESSEL_WORDS[oven.context.vessel];
  return own[stage as OvenStage] ?? ovenWords[stage as OvenStage];
};
