import { lanesFor } from '../../../machines/kitchen/room.ts';
import { isLane } from '../../../src/core/records/lane.ts';
import type { Hand } from './hand.ts';
import { stepOn } from './onward.ts';

/** More than any kitchen here needs to its end. */
const MOST_STEPS = 900;

const LANE_ACT: Readonly<Record<string, string>> = {
  lift: 'lidOff',
  vent: 'steamOut',
  judge: 'crustReady',
  unload: 'unloaded',
};

/** One usual act in a kitchen of many pots: at a pot, at the oven, or at a bake; false where all wait. */
const actOnce = (hand: Hand): boolean => {
  const { fold, kitchen } = hand;
  for (const [who, lane] of Object.entries(kitchen.lanes)) {
    const act = LANE_ACT[fold.stageOf(lane)];
    if (act !== undefined) return hand.do({ kind: 'press', who, act } as Parameters<Hand['do']>[0]);
  }
  const oven = fold.stageOf(kitchen.oven);
  if (oven === 'load') {
    const { waiting, vessel } = kitchen.oven.context;
    const [lane] = lanesFor(kitchen, waiting[0] ?? '', vessel);
    return hand.press('oven', 'loaded', { loaves: waiting.slice(0, 1), lane });
  }
  if (oven === 'tray') {
    return hand.press('oven', 'loaded', { loaves: kitchen.oven.context.waiting.slice(0, 1) });
  }
  const rests = ['off', 'holding', 'baking'].includes(oven);
  if (!rests && fold.deadlineOf(kitchen.oven) === null) return stepOn(hand, 'oven');
  const bake = Object.entries(kitchen.bakes).find(
    ([, one]) => fold.stageOf(one) !== 'oven.queued' && fold.deadlineOf(one) === null,
  );
  return bake !== undefined && stepOn(hand, bake[0]);
};

/**
 * Bakes on the usual way until nothing bakes and the oven is off.
 * @throws where it does not go on.
 */
export const bakeOn = (hand: Hand): void => {
  for (let n = 0; n < MOST_STEPS; n += 1) {
    const { kitchen, fold } = hand;
    if (Object.keys(kitchen.bakes).length === 0 && fold.stageOf(kitchen.oven) === 'off') return;
    if (actOnce(hand)) continue;
    const next = fold.wanted(kitchen).alarmAt;
    if (next === null) break;
    hand.turnTo(Math.max(hand.now, next));
  }
  throw new Error(`It does not go on: the oven is at ${hand.fold.stageOf(hand.kitchen.oven)}.`);
};

/** Who was pressed at, lanes only, since a log had so many rows. */
export const lanesPressed = ({ records }: Hand, since: number): string[] =>
  records
    .slice(since)
    .flatMap(({ fact }) => (fact.kind === 'press' && isLane(fact.who) ? [fact.who] : []));
