import { expect } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import type { Position } from '../../../src/core/records/position.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Hand } from './hand.ts';
import { callsOf, LID_MINUTES, nextEnd, type Pots } from './pots-model.ts';

const SECOND = 1_000;

/** What must hold whatever was done, found without the model. */
export const checkPots = ({ fold, kitchen }: Hand): void => {
  const { lanes, oven, bakes } = kitchen;
  const { waiting, out, lanes: told } = oven.context;
  const places = Object.values(lanes);
  const loaves = [...waiting, ...out, ...places.flatMap(({ context }) => context.loaves)];
  expect(new Set(loaves).size, 'no loaf in two places').toBe(loaves.length);
  const kinds = new Set(
    places.map(({ context }) => context.vessel).filter((kind) => kind !== 'tray'),
  );
  expect(kinds.size, 'one kind of load at a time').toBeLessThanOrEqual(1);
  const pots = places.filter(({ context }) => context.vessel !== 'tray');
  if (!kinds.has('pot')) expect(pots.length).toBeLessThanOrEqual(1);
  for (const { context } of places) {
    const one = context.vessel === 'tray' || (context.vessel === 'pot' && told !== undefined);
    const most = one ? 1 : Infinity;
    expect(context.loaves.length, 'a pot holds one loaf').toBeLessThanOrEqual(most);
  }
  for (const bake of Object.values(bakes)) {
    if (fold.stageOf(bake) !== 'oven.queued') continue;
    for (const loaf of bake.context.loaves) expect(loaves, 'none is lost').toContain(loaf);
  }
};

/** Compared as text first: most are the same, and the long way is only for what is not. */
const expectSame = (found: unknown, wanted: unknown, what: string): void => {
  if (JSON.stringify(found) !== JSON.stringify(wanted)) expect(found, what).toEqual(wanted);
};

const placed = (stage: string, ends: number | null, byTime: boolean, answers: object) => ({
  stage,
  ends,
  byTime,
  answers,
});

/** The machines stand where the model says they should. */
export const checkSame = ({ fold, kitchen }: Pick<Hand, 'fold' | 'kitchen'>, model: Pots): void => {
  const found = Object.entries({ oven: kitchen.oven, ...kitchen.lanes, ...kitchen.bakes });
  const wanted = Object.entries({ oven: model.oven, ...model.lanes, ...model.bakes });
  expectSame(
    found.map(([who, one]) => [
      who,
      placed(fold.stageOf(one), fold.deadlineOf(one), one.context.byDue, one.context.answers),
    ]),
    wanted.map(([who, { stage, ends, byTime, answers }]) => [
      who,
      placed(stage, ends, byTime, answers),
    ]),
    'each at its stage, with its end',
  );
  const { waiting, out, lanes, turns, vessel, madeReady, soon } = kitchen.oven.context;
  expectSame(
    { waiting, out, lanes, turns, vessel, ready: madeReady === true, soon },
    {
      waiting: model.queue,
      out: model.out,
      lanes: model.pots ?? undefined,
      turns: Object.keys(model.said).length > 0 ? model.said : undefined,
      vessel: model.vessel,
      ready: model.ready,
      soon: model.soon,
    },
    'the oven knows who comes, and its pots',
  );
  expectSame(
    Object.values(kitchen.lanes).map(({ context: { loaves, vessel: kind, onRack } }) => [
      loaves,
      kind,
      onRack === true,
    ]),
    Object.values(model.lanes).map((pot) => [pot.loaves, pot.vessel, pot.onRack]),
    'each pot has its loaf',
  );
  const calls = fold.callsOf(kitchen).map(({ id }) => id);
  expectSame(calls.toSorted(), callsOf(model).toSorted(), 'what calls');
  expectSame(kitchen.attention.context.heard.toSorted(), model.hushed.toSorted(), 'what is hushed');
  expect(fold.wanted(kitchen).alarmAt, 'the alarm is at the first end').toBe(nextEnd(model));
};

/** A kitchen set up again from its plain position alone is the same one. */
export const checkPosition = ({ fold, kitchen, machines }: Hand, model: Pots): void => {
  const position = JSON.parse(JSON.stringify(fold.positionOf(kitchen))) as Position;
  checkSame({ fold, kitchen: fold.kitchenAt(position, kitchen.starts, machines) }, model);
};

const liddedAt = ({ lanes }: Kitchen, who: string): string =>
  `${who} ${lanes[who]!.context.loaves.join()} ${lanes[who]!.context.entered['lidded']}`;

/** What a command did to the lids. `withdrew`: it took something back; `read`: the log anew. */
export interface LidStep {
  readonly before: Kitchen;
  readonly rung: Map<string, number>;
  readonly withdrew: boolean;
  readonly read: boolean;
}

/**
 * Each time under a lid has one call, at its minute by the clock: none before, one from then until the
 * lid is off, rung once by time; a take-back that closes the lid again brings it again.
 */
export const checkLids = (hand: Hand, { before, rung, withdrew, read }: LidStep): void => {
  const { fold, kitchen, says } = hand;
  const lifts = says.filter(({ who, stage }) => stage === 'lift' && who in kitchen.lanes);
  const stageIn = (all: Kitchen, who: string): string | null =>
    all.lanes[who] ? fold.stageOf(all.lanes[who]) : null;
  for (const who of Object.keys(kitchen.lanes)) {
    const stage = stageIn(kitchen, who);
    const calls = fold.callsOf(kitchen).filter((call) => call.who === who && call.stage === 'lift');
    const due = kitchen.lanes[who]!.context.entered['lidded']! + LID_MINUTES * MINUTE;
    const said = lifts.filter((say) => say.who === who).length;
    if (stage === 'lidded') {
      const end = fold.deadlineOf(kitchen.lanes[who]!);
      expect(
        Math.abs((end ?? Infinity) - due),
        'a lid is called at its minute',
      ).toBeLessThanOrEqual(SECOND);
      expect([kitchen.now < due, calls, said], 'and not before').toEqual([true, [], 0]);
    } else if (stage === 'lift') {
      expect(calls.map(({ since }) => Math.abs(since - due) <= SECOND)).toEqual([true]);
      expect(kitchen.now).toBeGreaterThanOrEqual(due);
      const key = liddedAt(kitchen, who);
      const was = stageIn(before, who) === 'lift' && liddedAt(before, who) === key;
      if (withdrew) {
        if (!was) expect(said, 'taken back, it is called again').toBe(1);
      } else if (read) {
        if (!was) expect(said).toBe(1);
      } else {
        expect(said, 'rung once, as it fell due').toBe(was ? 0 : 1);
      }
      if (!withdrew && !read) {
        rung.set(key, (rung.get(key) ?? 0) + said);
        expect(rung.get(key), 'never twice').toBeLessThanOrEqual(1);
      }
    } else expect(calls).toEqual([]);
  }
};
