import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { freeLanes } from '../../machines/kitchen/lanes.ts';
import { lanesFor } from '../../machines/kitchen/room.ts';
import type { PotName } from '../core/kitchen/pots.ts';
import { ONE_LANE, potOf } from '../core/records/lane.ts';
import { pots, potTitles } from '../core/speech/words/names.ts';

/** The lane the next load goes into: hot and empty, the smallest that has room for it. */
export const nextLane = (kitchen: Kitchen): string | undefined => {
  const { vessel, waiting } = kitchen.oven.context;
  return lanesFor(kitchen, waiting[0] ?? '', vessel)[0] ?? freeLanes(kitchen, vessel)[0];
};

const nameIn = <T>(names: Readonly<Record<PotName, T>>, lane: string): T | undefined =>
  names[potOf(lane) as PotName];

/** A lane's pot as sentences name it; the oven's own acts name the one that is filled next. */
export const potSaid = (kitchen: Kitchen, who: string): string =>
  nameIn(pots, potOf(who) === null ? (nextLane(kitchen) ?? ONE_LANE) : who) ?? pots.pot;

/** A lane's name by itself, where there is more than one; null where the oven is all there is. */
export const potTitle = (lane: string): string | null =>
  lane === ONE_LANE ? null : (nameIn(potTitles, lane) ?? null);
