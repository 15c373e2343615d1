import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { freeLanes } from '../../machines/kitchen/lanes.ts';
import type { PotName } from '../core/kitchen/pots.ts';
import { ONE_LANE, potOf } from '../core/records/lane.ts';
import { pots, potTitles } from '../core/speech/en/names.ts';

/** The lane the next load goes into: the first that is hot and empty, as they were told. */
export const nextLane = (kitchen: Kitchen): string | undefined =>
  freeLanes(kitchen, kitchen.oven.context.vessel)[0];

const nameIn = <T>(names: Readonly<Record<PotName, T>>, lane: string): T | undefined =>
  names[potOf(lane) as PotName];

/** A lane's pot as sentences name it; the oven's own acts name the one that is filled next. */
export const potSaid = (kitchen: Kitchen, who: string): string =>
  nameIn(pots, potOf(who) === null ? (nextLane(kitchen) ?? ONE_LANE) : who) ?? pots.pot;

/** A lane's name by itself, where there is more than one; null where the oven is all there is. */
export const potTitle = (lane: string): string | null =>
  lane === ONE_LANE ? null : (nameIn(potTitles, lane) ?? null);
