import { expect } from 'vitest';
import { BAKE_STAGES, OVEN_STAGES } from '../../../src/core/records/stage.ts';
import { isLane } from '../../../src/core/records/lane.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { loavesIn } from '../../../machines/kitchen/lanes.ts';
import type { Hand } from './hand.ts';
import type { Mirror } from './mirror.ts';
import { pendingCalls, type ModelPlace } from './model.ts';

const placesIn = ({ kitchen }: Hand) =>
  [
    ['oven', kitchen.oven] as const,
    ...Object.entries(kitchen.lanes),
    ...Object.entries(kitchen.bakes),
  ] as const;

/** The model has one pot: what is in the oven and the oven are one place to it. */
const onePot = ({ fold, kitchen }: Hand) => {
  const lane = Object.values(kitchen.lanes)[0];
  const busy = fold.stageOf(kitchen.oven) === 'baking' && lane !== undefined;
  return [['oven', busy ? lane : kitchen.oven] as const, ...Object.entries(kitchen.bakes)] as const;
};
const asOven = (call: string): string => call.replace(/^lane\.(pot|tray):/, 'oven:');

/** What must hold in any kitchen, whatever was done: found without the model. */
export const checkKitchen = (hand: Hand): void => {
  const { fold, kitchen } = hand;
  const { waiting, out } = kitchen.oven.context;
  const load = loavesIn(kitchen);
  const dues: number[] = [];
  for (const [who, machine] of placesIn(hand)) {
    const stage = fold.stageOf(machine);
    const hot = who === 'oven' || isLane(who);
    const known: readonly string[] = hot ? OVEN_STAGES : BAKE_STAGES.slice(0, -2);
    if (!known.includes(stage)) throw new Error(`${who} stands at ${stage}, which is no stage.`);
    const deadline = fold.deadlineOf(machine);
    if (fold.metaOf(machine).waits !== undefined && deadline === null) {
      throw new Error(`${who} waits at ${stage} without an end.`);
    }
    if (deadline !== null && deadline <= kitchen.now) {
      throw new Error(`The end of ${who} ${stage} is past and has not fallen due.`);
    }
    if (deadline !== null) dues.push(deadline);
  }
  for (const { until } of Object.values(kitchen.attention.context.snoozed)) {
    if (until !== null) dues.push(until);
  }
  const { remind } = kitchen.starter.marks;
  if (remind !== undefined && remind > kitchen.now) dues.push(remind);
  const since = kitchen.oven.context.entered['turnOff'];
  if (fold.stageOf(kitchen.oven) === 'turnOff' && since !== undefined) {
    const next = [...Array(12).keys()].map((n) => since + (n + 1) * 10 * MINUTE);
    dues.push(...next.filter((at) => at > kitchen.now).slice(0, 1));
  }
  const { alarmAt, ringing } = fold.wanted(kitchen);
  expect(alarmAt, 'the alarm is at the first deadline').toBe(
    dues.length > 0 ? Math.min(...dues) : null,
  );
  const calls = fold.callsOf(kitchen);
  expect(kitchen.attention.context.calls, 'attention knows the calls that stand').toEqual(calls);
  if (ringing) expect(calls.map(({ id }) => id)).toContain(ringing.id);

  const inOven = [...waiting, ...load, ...out];
  expect(new Set(inOven).size, 'no loaf in two places').toBe(inOven.length);
  for (const [id, bake] of Object.entries(kitchen.bakes)) {
    const stage = fold.stageOf(bake);
    for (const loaf of bake.context.loaves) {
      const at = [waiting, load, out].filter((list) => list.includes(loaf)).length;
      if (stage === 'oven.queued') expect([id, loaf, at]).toEqual([id, loaf, 1]);
      else if (at > (stage.startsWith('cool.') && out.includes(loaf) ? 1 : 0)) {
        throw new Error(`${loaf} is at the oven, its bake at ${stage}.`);
      }
    }
  }
  for (const lane of Object.values(kitchen.lanes)) {
    const stage = fold.stageOf(lane);
    const full = lane.context.loaves.length > 0;
    expect([stage, full], 'a load is in exactly while the pot is').toEqual([
      stage,
      stage !== 'recover',
    ]);
  }
  const oven = fold.stageOf(kitchen.oven);
  if (Object.keys(kitchen.lanes).length > 0) expect(oven).not.toMatch(/^(off|turnOn|turnOff)$/);
  if (oven === 'off') expect(waiting).toEqual([]);
};

const placed = ({ stage, since, byDue, answers, deadline }: ModelPlace) => ({
  stage,
  since,
  byDue,
  answers,
  deadline,
});

/** The kitchen stands where the model says it should. */
export const checkMirror = (hand: Hand, { model, ringing }: Mirror): void => {
  const { fold, kitchen } = hand;
  const found = Object.fromEntries(
    onePot(hand).map(([who, machine]) => {
      const { entered, byDue, answers } = machine.context;
      const stage = fold.stageOf(machine);
      // An oven that never was turned on has entered nothing yet.
      const since = entered[stage] ?? 0;
      return [who, { stage, since, byDue, answers, deadline: fold.deadlineOf(machine) }];
    }),
  );
  const should = Object.fromEntries([
    ['oven', placed(model.oven)],
    ...Object.entries(model.bakes).map(([who, place]) => [who, placed(place)] as const),
  ]);
  expect(found, 'each machine at its stage, with its entry and its deadline').toEqual(should);
  expect(kitchen.now).toBe(model.now);
  expect(Object.keys(kitchen.bakes), 'in the order of starts').toEqual(Object.keys(model.bakes));
  const { waiting, out } = kitchen.oven.context;
  const load = loavesIn(kitchen);
  expect({ waiting, load, out }).toEqual({
    waiting: model.waiting,
    load: model.load,
    out: model.out,
  });
  expect(fold.callsOf(kitchen).map(({ id }) => asOven(id))).toEqual(
    pendingCalls(model).map(({ id }) => id),
  );
  expect(
    kitchen.attention.context.heard.map(asOven).toSorted(),
    'silenced are those hushed, no other',
  ).toEqual(Object.keys(model.quiet).toSorted());
  const rings = fold.wanted(kitchen).ringing;
  expect(rings && asOven(rings.id), 'what rings').toBe(ringing);
};
