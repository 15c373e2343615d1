import type { BakeStage, OvenStage } from '../core/records/stage.ts';
import { isLane } from '../core/records/lane.ts';
import { taskOf } from '../../machines/tasks.ts';
import { bakeNames, ovenNames, places } from '../core/speech/en/names.ts';
import { fill } from '../core/speech/fill.ts';
import { subjectOf } from './call-subject.ts';
import { potTitle } from './pot-of.ts';

/** A step's short name, or what a task of its wait is about. */
export const nameOf = (who: string, stage: string): string =>
  taskOf(stage) !== null
    ? (subjectOf(stage) ?? '')
    : who === 'oven' || isLane(who)
      ? ovenNames[stage as OvenStage]
      : bakeNames[stage as BakeStage];

/** The same with the pot it is at, where pots are told apart. */
export const placedName = (who: string, stage: string): string => {
  const pot = isLane(who) ? potTitle(who) : null;
  const name = nameOf(who, stage);
  return pot === null ? name : fill(places.at, { pot, name });
};
