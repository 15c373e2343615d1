import type { CrustSigns } from '../../src/core/oven/judge-crust.ts';
import type { Metres } from '../../src/core/oven/boiling.ts';
import { coreTarget } from '../../src/core/oven/core-target.ts';
import { TRAY } from '../../src/core/oven/tray.ts';
import type { Celsius, Instant } from '../../src/core/units.ts';
import { MINUTE } from '../../src/core/units.ts';
import type { BakeSnapshot, Kitchen, LaneSnapshot } from './kitchen.ts';
import { stageOf } from './stage-of.ts';
import { standingReadings } from './standing-readings.ts';

const ACTS = ['crustReady', 'crustNotYet', 'crustOnRack', 'crustOver'];

/** The newest standing press of these acts on lanes that fit; undefined where there is none. */
const lastPress = (
  { standing }: Kitchen,
  acts: readonly string[],
  fits: (who: string) => boolean,
) => {
  const found = standing.findLast(
    (fact) => fact.kind === 'press' && acts.includes(fact.act) && fits(fact.who),
  );
  return found?.kind === 'press' ? found : undefined;
};

/** Since when a loaf bakes open: its lid or steam gone, of a tin or a tray since it was loaded. */
const openSince = (kitchen: Kitchen, who: string, { context }: LaneSnapshot): Instant => {
  const { entered, vessel, loaves } = context;
  const uncovered = lastPress(kitchen, ['lidOff', 'steamOut'], (lane) => lane === who);
  const loaded = kitchen.standing.findLast(
    (fact) =>
      fact.kind === 'press' && fact.act === 'loaded' && fact.loaves?.includes(loaves[0] ?? ''),
  );
  const fromFirst = vessel === 'tin' || vessel === 'tray';
  const began = fromFirst ? loaded?.at : (uncovered?.was ?? uncovered?.at);
  // Without the press, after a leap of the clock, the present look is all there is.
  return Math.min(began ?? Infinity, entered['open'] ?? kitchen.now);
};

/**
 * Cores that were measured while this loaf was looked at: readings are of a bake, and of its loaves the
 * one that has waited longest for its look is before the baker, until it was answered. Of one that bakes
 * open: since it does.
 */
export const coresOf = (
  kitchen: Kitchen,
  who: string,
  lane: LaneSnapshot,
  bake: BakeSnapshot,
): readonly Celsius[] => {
  const { context } = lane;
  const { judge, open } = context.entered;
  const other = lastPress(kitchen, ACTS, (press) => press !== who)?.at ?? -Infinity;
  const isOpen = stageOf(lane) === 'open';
  const from = isOpen ? (open ?? kitchen.now) : Math.max(judge ?? kitchen.now, other);
  return standingReadings(kitchen, bake.context.id).flatMap(({ at, reading }) =>
    reading.what === 'coreTemperature' && at >= from ? [reading.celsius] : [],
  );
};

const among = <T extends string>(value: string | undefined, all: readonly T[]): T | null =>
  all.find((one) => one === value) ?? null;

/**
 * What is known of a loaf at the open oven: its answers, its cores and how long it has been open.
 * `height`: of the kitchen above the sea.
 */
export function atCrust(
  kitchen: Kitchen,
  who: string,
  lane: LaneSnapshot,
  bake: BakeSnapshot,
  height: Metres = 0,
): CrustSigns {
  const { answers } = lane.context;
  const { formula, process } = bake.context.recipe;
  const measured = coresOf(kitchen, who, lane, bake);
  const { least } = coreTarget(height);
  const told = { ready: [least], low: [least - 1] }[answers['core'] ?? ''] ?? [];
  return {
    colour: among(answers['colour'], ['pale', 'golden', 'dark']),
    base: among(answers['base'], ['hollow', 'dull', 'dark']),
    cores: measured.length > 0 ? measured : told,
    open: (kitchen.now - openSince(kitchen, who, lane)) / MINUTE,
    least: lane.context.vessel === 'tray' ? TRAY.least : process.open,
    filled: formula.fillings.length > 0,
    height,
  };
}
