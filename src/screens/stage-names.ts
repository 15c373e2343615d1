import type { BakeStage, OvenStage } from '../core/records/stage.ts';
import { isLane } from '../core/records/lane.ts';
import { taskOf } from '../../machines/tasks.ts';
import { bakeNames, ovenNames } from '../core/speech/en/names.ts';
import { subjectOf } from './call-subject.ts';

/** A step's short name, or what a task of its wait is about. */
export const nameOf = (who: string, stage: string): string =>
  taskOf(stage) !== null
    ? (subjectOf(stage) ?? '')
    : who === 'oven' || isLane(who)
      ? ovenNames[stage as OvenStage]
      : bakeNames[stage as BakeStage];
