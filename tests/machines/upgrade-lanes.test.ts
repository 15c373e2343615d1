import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MACHINE_VERSION, MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { ONE_LANE } from '../../src/core/records/lane.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { LANE_STAGES } from '../../src/core/records/stage.ts';
import { fact7, position7 } from '../../src/core/records/upgrade-lanes.ts';
import { Hand } from './support/hand.ts';
import { bakeOn, lanesPressed } from './support/lanes-onward.ts';

/** A row of before pots were told apart: its load was the oven's own. */
interface OldRow {
  readonly seq: number;
  readonly position: {
    readonly oven: {
      readonly stage: string;
      readonly load: readonly string[];
      readonly marks: object;
    };
    readonly attention: { readonly heard: readonly string[] };
  };
}

const logOf = (n: number) => {
  const file = new URL(`golden/walk-${n}.json`, import.meta.url);
  const rows = JSON.parse(readFileSync(file, 'utf8')) as OldRow[];
  const records = rows.map((row) => readRecord(row, MACHINE_VERSION).record!);
  return { name: `walk-${n}`, rows, records };
};
const logs = [1, 2, 3, 4].map(logOf);
const inLane = ({ position }: OldRow): boolean =>
  (LANE_STAGES as readonly string[]).includes(position.oven.stage);

/** Everything cut in the middle of a load: what the tablet held as the new program came. */
const cuts = logs.flatMap(({ name, rows, records }) =>
  rows.flatMap((row, i) =>
    inLane(row)
      ? [
          {
            name: `${name} ${row.seq} ${row.position.oven.stage}`,
            row,
            rows: records.slice(0, i + 1),
          },
        ]
      : [],
  ),
);

const handAt = (records: LogRecord[]): Hand => {
  const { kitchen, trouble } = replay(records, MACHINES);
  expect(trouble).toBeNull();
  const hand = new Hand({ now: records.at(-1)!.fact.at });
  hand.kitchen = kitchen;
  hand.records = [...records];
  return hand;
};

describe('a log of before pots were told apart', () => {
  it('stands in the middle of every stage of a load', () => {
    expect(LANE_STAGES.filter((stage) => !cuts.some((cut) => cut.name.endsWith(stage)))).toEqual(
      [],
    );
  });

  it.each(cuts)(
    'has its load in one lane, the same loaves, marks and calls: $name',
    ({ row, rows }) => {
      const { oven, lanes, attention } = rows.at(-1)!.position;
      expect([oven.stage, Object.keys(lanes), oven.marks]).toEqual(['baking', [ONE_LANE], {}]);
      const { stage, load, marks } = row.position.oven;
      expect(lanes[ONE_LANE]).toMatchObject({
        stage,
        marks,
        loaves: stage === 'recover' ? [] : load,
      });
      const call = new RegExp(`^oven:(?=(${LANE_STAGES.join('|')}):)`);
      expect(attention.heard).toEqual(
        row.position.attention.heard.map((id) => id.replace(call, `${ONE_LANE}:`)),
      );
    },
  );

  it.each(cuts)('bakes on to the end from where it was: $name', ({ row, rows }) => {
    const hand = handAt(rows);
    const wait = hand.deadline(ONE_LANE);
    const { stage } = row.position.oven;
    if (stage === 'lidded') {
      hand.turnTo(wait!);
      expect(hand.fold.callsOf(hand.kitchen)).toContainEqual(
        expect.objectContaining({ who: ONE_LANE, stage: 'lift', kind: 'hot', since: wait }),
      );
    }
    bakeOn(hand);
    expect(hand.kitchen.lanes).toEqual({});
    if (stage !== 'recover') expect(lanesPressed(hand, rows.length)).toContain(ONE_LANE);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('lets its last press be taken back, as if the lane had always been', () => {
    const first = LANE_STAGES.map((stage) => cuts.find((cut) => cut.name.endsWith(stage))!);
    for (const { row, rows } of first) {
      const hand = handAt(rows);
      const latest = hand.fold.takeBackTarget(hand.kitchen);
      if (latest?.kind !== 'press' || latest.act === 'loaded') continue;
      expect([row.seq, hand.takeBack(), hand.replayed().trouble]).toEqual([row.seq, true, null]);
    }
  });
});

describe('an old row', () => {
  const old = {
    stage: 'open',
    load: ['a1'],
    marks: { colour: 90, 'lead.parchment': 50 },
    entered: { preheating: 1, recover: 5, lidded: 10, load: 20, open: 30 },
    byDue: false,
    answers: {},
    tasks: { parchment: { called: 50, done: null }, fetch: { called: 8, done: 9 } },
    vessel: 'tin',
    waiting: [],
    soon: false,
    out: [],
  };
  const attention = {
    heard: ['oven:lead.parchment:50', 'oven:turnOn:3', 'a:bulk.look:2'],
    snoozed: { 'oven:judge:40': { until: 60, times: 1 } },
  };

  it('parts a load from its oven: what was called is the lane’s, what was done stays known', () => {
    const { oven, lanes, attention: calls } = position7({ oven: old, attention });
    expect(lanes).toEqual({
      [ONE_LANE]: {
        stage: 'open',
        marks: old.marks,
        byDue: false,
        answers: {},
        tasks: old.tasks,
        entered: { open: 30 },
        vessel: 'tin',
        loaves: ['a1'],
      },
    });
    expect(oven).toMatchObject({
      stage: 'baking',
      marks: {},
      entered: { preheating: 1, load: 20 },
      tasks: { fetch: { called: null, done: 9 } },
    });
    expect(calls).toEqual({
      heard: [`${ONE_LANE}:lead.parchment:50`, 'oven:turnOn:3', 'a:bulk.look:2'],
      snoozed: { [`${ONE_LANE}:judge:40`]: { until: 60, times: 1 } },
    });
  });

  it('leaves an oven alone that has nothing in it, and a row of today', () => {
    const { oven, lanes } = position7({ oven: { ...old, stage: 'preheating', load: [] } });
    expect([lanes, oven]).toMatchObject([{}, { stage: 'preheating', marks: old.marks }]);
    const today = { oven: { stage: 'baking' }, lanes: {} };
    expect(position7(today)).toBe(today);
  });

  it('gives to the lane what hands did to the load, and leaves the oven its own', () => {
    const who = (act: string, oven: object, more = {}): unknown =>
      fact7({ kind: 'press', who: 'oven', act, ...more }, { ...old, ...oven })['who'];
    expect(who('lidOff', {})).toBe(ONE_LANE);
    expect(who('unloaded', { stage: 'turnOff' })).toBe(ONE_LANE);
    expect(who('answer', {}, { item: 'base' })).toBe(ONE_LANE);
    expect(who('answer', { stage: 'before' }, { item: 'mitts' })).toBe('oven');
    expect(who('taskDone', {}, { item: 'parchment' })).toBe(ONE_LANE);
    expect(who('taskDone', { stage: 'preheating' }, { item: 'parchment' })).toBe('oven');
    expect(who('ovenHot', { stage: 'poke' })).toBe(ONE_LANE);
    expect(who('ovenHot', { stage: 'poke', entered: { preheating: 7 } })).toBe('oven');
    expect(who('ovenOff', { stage: 'off' })).toBe('oven');
    const results = [
      { who: 'oven', stage: 'open', since: 30 },
      { who: 'oven', stage: 'preheating', since: 1 },
    ];
    expect(fact7({ kind: 'press', who: 'oven', act: 'lidOff', results }, old)).toMatchObject({
      results: [{ who: ONE_LANE }, { who: 'oven' }],
    });
    expect(fact7({ kind: 'heard', call: 'oven:lift:28' }, old)['call']).toBe(`${ONE_LANE}:lift:28`);
  });
});
