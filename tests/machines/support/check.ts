import { expect } from 'vitest';
import { BAKE_STAGES, OVEN_STAGES } from '../../../src/core/records/stage.ts';
import type { Hand } from './hand.ts';
import type { Mirror } from './mirror.ts';
import { pendingCalls, type ModelPlace } from './model.ts';

const placesIn = ({ kitchen }: Hand) =>
  [['oven', kitchen.oven] as const, ...Object.entries(kitchen.bakes)] as const;

/** What must hold in any kitchen, whatever was done: found without the model. */
export const checkKitchen = (hand: Hand): void => {
  const { fold, kitchen } = hand;
  const { waiting, load, out } = kitchen.oven.context;
  const dues: number[] = [];
  for (const [who, machine] of placesIn(hand)) {
    const stage = fold.stageOf(machine);
    const known: readonly string[] = who === 'oven' ? OVEN_STAGES : BAKE_STAGES.slice(0, -2);
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
  const oven = fold.stageOf(kitchen.oven);
  const hot = ['lidded', 'lift', 'steaming', 'vent', 'open', 'judge', 'unload'].includes(oven);
  expect([oven, load.length > 0], 'a load is in exactly while the pot is').toEqual([oven, hot]);
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
    placesIn(hand).map(([who, machine]) => {
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
  const { waiting, load, out } = kitchen.oven.context;
  expect({ waiting, load, out }).toEqual({
    waiting: model.waiting,
    load: model.load,
    out: model.out,
  });
  expect(fold.callsOf(kitchen).map(({ id }) => id)).toEqual(
    pendingCalls(model).map(({ id }) => id),
  );
  expect(kitchen.attention.context.heard.toSorted(), 'silenced are those hushed, no other').toEqual(
    Object.keys(model.quiet).toSorted(),
  );
  expect(fold.wanted(kitchen).ringing?.id ?? null, 'what rings').toBe(ringing);
};
