import type { BakeStage, OvenStage } from '../core/records/stage.ts';
import { bakeNames, ovenNames } from '../core/speech/en/names.ts';

/** A step's short name. */
export const nameOf = (who: string, stage: string): string =>
  who === 'oven' ? ovenNames[stage as OvenStage] : bakeNames[stage as BakeStage];
