import type { BakeStage, OvenStage } from '../core/records/stage.ts';
import { isLane } from '../core/records/lane.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { taskOf } from '../../machines/tasks.ts';
import { bakeNames, ovenNames, ovenNamesIn, places } from '../core/speech/words/names.ts';
import { fill } from '../core/speech/fill.ts';
import { subjectOf } from './call-subject.ts';
import { heatsIn, type Heats } from './heats-in.ts';
import { potTitle } from './pot-of.ts';

const ovenName = (stage: OvenStage, heats: Heats): string => {
  const others: Readonly<Partial<Record<OvenStage, string>>> =
    heats === 'pot' ? {} : ovenNamesIn[heats];
  return others[stage] ?? ovenNames[stage];
};

/** A step's short name, or what a task of its wait is about; the oven's by what heats (heats-in.ts). */
export const nameOf = (who: string, stage: string, heats: Heats = 'pot'): string =>
  taskOf(stage) !== null
    ? (subjectOf(stage) ?? '')
    : who === 'oven' || isLane(who)
      ? ovenName(stage as OvenStage, heats)
      : bakeNames[stage as BakeStage];

/** The same as the kitchen stands now. */
export const nameIn = (kitchen: Kitchen, who: string, stage: string): string =>
  nameOf(who, stage, heatsIn(kitchen, who));

/** The same with the pot it is at, where pots are told apart. */
export const placedName = (who: string, stage: string, heats: Heats = 'pot'): string => {
  const pot = isLane(who) ? potTitle(who) : null;
  const name = nameOf(who, stage, heats);
  return pot === null ? name : fill(places.at, { pot, name });
};
