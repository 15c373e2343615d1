import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  attentionMachine,
  sounding,
  type AttentionContext,
} from '../../machines/attention/attention.ts';
import { bakeSetup } from '../../machines/bake/bake-setup.ts';
import { bakeMachine } from '../../machines/bake/bake.ts';
import { advance } from '../../machines/kitchen/advance.ts';
import { MACHINE_VERSION, MACHINES, type Machines } from '../../machines/kitchen/kitchen.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { samePlain } from '../../machines/kitchen/same-plain.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { takeBackTarget } from '../../machines/kitchen/take-back.ts';
import { entering } from '../../machines/meta.ts';
import { laneMachine } from '../../machines/oven/lane.ts';
import { ovenMachine } from '../../machines/oven/oven.ts';
import { ovenSetup } from '../../machines/oven/oven-setup.ts';
import { laneSetup } from '../../machines/oven/lane-setup.ts';
import { cutOf } from '../../src/core/log/cut-of.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import type { LogRecord } from '../../src/core/records/record.ts';

const here = new URL('golden/', import.meta.url);
const logs = readdirSync(here).filter((name) => /^walk-\d+\.json$/.test(name));
const rowsOf = (name: string): unknown[] =>
  JSON.parse(readFileSync(new URL(name, here), 'utf8')) as unknown[];
/** A log through its one reader, which lifts older rows to what is written today. */
const recordsOf = (rows: readonly unknown[]): LogRecord[] =>
  rows.map((row) => {
    const { record } = readRecord(row, MACHINE_VERSION);
    if (record === null) throw new Error('A row of a golden log is no record.');
    return record;
  });
const walk1 = recordsOf(rowsOf('walk-1.json'));
const walk4 = recordsOf(rowsOf('walk-4.json'));
const walk6 = recordsOf(rowsOf('walk-6.json'));
const walk5 = recordsOf(rowsOf('walk-5.json'));

describe.each(logs)('the golden log %s', (name) => {
  const rows = rowsOf(name);

  it('is read row by row, in the order of its numbers', () => {
    rows.forEach((row, i) => {
      const { record } = readRecord(row, MACHINE_VERSION);
      expect(record?.seq).toBe(i + 1);
      expect(record?.machineVersion).toBe(MACHINE_VERSION);
      if ((row as LogRecord).machineVersion === MACHINE_VERSION) expect(record).toEqual(row);
    });
  });

  it('replays without trouble to where it says it ended', () => {
    const records = recordsOf(rows);
    const { kitchen, trouble } = replay(records, MACHINES);
    expect(trouble).toBeNull();
    expect(samePlain(positionOf(kitchen), records.at(-1)!.position)).toBe(true);
    expect(kitchen.seq).toBe(records.length);
    expect(kitchen.bakes).toEqual({});
    expect(stageOf(kitchen.oven)).toBe('off');
  });
});

describe('walk-1', () => {
  const count = (is: (record: LogRecord) => boolean) => walk1.filter(is).length;

  it('holds every kind of fact but a jump, take-backs in both machines, and a wall set back', () => {
    const kinds = new Set(walk1.map(({ fact }) => fact.kind));
    expect([...kinds].toSorted()).toEqual(
      ['start', 'press', 'reading', 'correct', 'heard', 'snoozed', 'takeBack'].toSorted(),
    );
    expect(count(({ fact }) => fact.kind === 'takeBack')).toBe(5);
    expect(count(({ fact }) => fact.kind === 'snoozed')).toBe(3);
    expect(walk1.some(({ fact }, i) => i > 0 && fact.raw < walk1[i - 1]!.fact.raw)).toBe(true);
    expect(walk1.every(({ fact }, i) => i === 0 || fact.at >= walk1[i - 1]!.fact.at)).toBe(true);
  });

  it('stands where it is cut, at every length', () => {
    for (const n of [1, 20, 47, 60, 85, 100, walk1.length]) {
      const { kitchen, trouble } = replay(walk1.slice(0, n), MACHINES);
      expect(trouble).toBeNull();
      expect(samePlain(positionOf(kitchen), walk1[n - 1]!.position)).toBe(true);
    }
  });
});

/** The machines with one thing changed in their configuration, as a careless release might. */
type Config = { readonly states: Record<string, { states?: Record<string, object> } & object> };
const bakeWith = (part: string, change: (states: Record<string, object>) => object): Machines => {
  const config = bakeMachine.config as unknown as Config;
  const inner = config.states[part]!;
  const altered = {
    ...config,
    states: { ...config.states, [part]: { ...inner, states: change(inner.states ?? {}) } },
  };
  return { ...MACHINES, bake: bakeSetup.createMachine(altered as never) as never };
};
const ovenWith = (stage: string, change: object): Machines => {
  const config = ovenMachine.config as unknown as Config;
  const states = { ...config.states, [stage]: { ...config.states[stage], ...change } };
  return { ...MACHINES, oven: ovenSetup.createMachine({ ...config, states } as never) as never };
};
const laneWith = (stage: string, change: object): Machines => {
  const config = laneMachine.config as unknown as Config;
  const states = { ...config.states, [stage]: { ...config.states[stage], ...change } };
  return { ...MACHINES, lane: laneSetup.createMachine({ ...config, states } as never) as never };
};

const rings = (context: AttentionContext, id: string): boolean =>
  sounding(context).some((call) => call.id === id);

describe('walk-4', () => {
  const seqOf = (is: (record: LogRecord) => boolean): number => walk4.find(is)!.seq;
  const jump = seqOf(({ fact }) => fact.kind === 'jump');
  // A fold begins at the last jump: what was before it is folded here on its own.
  const parts = [walk4.slice(0, jump - 1), walk4];
  const changed = (machines: Machines) =>
    parts.map((part) => replay(part, machines).trouble?.seq).find((seq) => seq !== undefined);

  it('stands where it is cut, before the clock was set right and after it', () => {
    for (const n of [17, 18, 46, 51, 55, 59, jump - 1, jump, 75, 78, walk4.length]) {
      const { kitchen, trouble } = replay(walk4.slice(0, n), MACHINES);
      expect(trouble).toBeNull();
      expect(samePlain(positionOf(kitchen), walk4[n - 1]!.position)).toBe(true);
    }
  });

  it('tells when hands may no longer go on out of a wait', () => {
    const machines = bakeWith('bulk', (states) => ({
      ...states,
      proving: { ...states['proving'], on: { due: 'look', doughSeen: 'look' } },
    }));
    expect(changed(machines)).toBe(
      seqOf(({ fact }) => fact.kind === 'press' && fact.act === 'bulkReady'),
    );
  });

  it('tells when a call that was silenced may no longer be put off', () => {
    const attention = attentionMachine.provide({
      guards: {
        maySnooze: ({ context, event }) => event.type === 'snoozed' && rings(context, event.call),
      },
    });
    expect(changed({ ...MACHINES, attention })).toBe(seqOf(({ fact }) => fact.kind === 'snoozed'));
  });

  it('tells when an oven that was to go off is no longer called for anew', () => {
    const machines = ovenWith('turnOff', {
      on: { ovenOff: 'off', sync: [{ guard: 'someCome', target: 'preheating', actions: 'queue' }] },
    });
    expect(changed(machines)).toBe(
      seqOf(({ position }) => position.bakes['tin']?.stage === 'proof.soon'),
    );
  });

  it('stands again as it did before the clock, and no take-back crosses that', () => {
    const { kitchen, trouble } = replay(walk4.slice(0, jump), MACHINES);
    expect([trouble, takeBackTarget(kitchen)]).toEqual([null, null]);
    const before = walk4[jump - 2]!;
    const marks = (record: LogRecord) => record.position.bakes['haste']!.marks['look']!;
    expect(marks(walk4[jump - 1]!) - marks(before)).toBe(walk4[jump - 1]!.fact.at - before.fact.at);
  });
});

describe('walk-5', () => {
  const presses = walk5.flatMap(({ fact }) => (fact.kind === 'press' ? [fact] : []));
  const seqOf = (is: (record: LogRecord) => boolean): number => walk5.find(is)!.seq;
  const byAct = (act: string) => (record: LogRecord) =>
    record.fact.kind === 'press' && record.fact.act === act;

  it('bakes seven loaves of two breads in three pots, each once in one pot that was told', () => {
    const gone = walk5.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : []));
    const loads = presses.filter(({ id, act }) => act === 'loaded' && !gone.includes(id));
    expect(loads.flatMap(({ loaves }) => loaves).toSorted()).toEqual([
      'cherry.1',
      'cherry.2',
      'cherry.3',
      'cherry.4',
      'wheat.1',
      'wheat.2',
      'wheat.3',
    ]);
    expect(new Set(loads.map(({ lane }) => lane)).size).toBe(3);
    expect(loads.every(({ loaves }) => loaves?.length === 1)).toBe(true);
    const most = walk5.map(({ position }) => Object.keys(position.lanes).length);
    expect(Math.max(...most)).toBe(3);
  });

  it('holds a slow loaf, one on the rack, a pot out, loaves first and later, take-backs of each', () => {
    const acts = presses.map(({ act }) => act);
    for (const act of ['pokeNotYet', 'crustOnRack', 'potOut', 'loafFirst', 'loafLater']) {
      expect(acts).toContain(act);
    }
    const back = walk5.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : []));
    expect(presses.filter(({ id }) => back.includes(id)).map(({ act }) => act)).toEqual([
      'ovenOn',
      'loafFirst',
      'loaded',
      'lidOff',
      'unloaded',
    ]);
  });

  it('tells when a slow loaf is no longer left for later', () => {
    const oven = ovenMachine.provide({ actions: { setAside: () => undefined } });
    expect(replay(walk5, { ...MACHINES, oven }).trouble?.seq).toBe(seqOf(byAct('pokeNotYet')));
  });

  it('tells when a pot that is out goes on being filled', () => {
    const oven = ovenMachine.provide({ actions: { drop: () => undefined } });
    expect(replay(walk5, { ...MACHINES, oven }).trouble?.seq).toBe(seqOf(byAct('potOut')));
  });

  it('tells when a loaf on the bare rack is no longer known to be there', () => {
    const lane = laneMachine.provide({ actions: { outOfPot: () => undefined } });
    expect(replay(walk5, { ...MACHINES, lane }).trouble?.seq).toBe(seqOf(byAct('crustOnRack')));
  });
});

describe('walk-6', () => {
  it('tells when a loaf that went over no longer bakes flat', () => {
    const oven = ovenMachine.provide({ actions: { flatten: () => undefined } });
    const at = walk6.find(({ fact }) => fact.kind === 'press' && fact.act === 'pokeFlat');
    expect(replay(walk6, { ...MACHINES, oven }).trouble?.seq).toBe(at!.seq);
  });

  it('has one loaf in the tray and three in pots', () => {
    const back = walk6.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : []));
    const lanes = walk6.flatMap(({ fact }) =>
      fact.kind === 'press' && fact.act === 'loaded' && !back.includes(fact.id) ? [fact.lane] : [],
    );
    expect(lanes.filter((lane) => lane === 'lane.tray')).toHaveLength(1);
    expect(lanes).toHaveLength(4);
  });
});

/** Where the log first has a fact or a position that speaks of `what`. */
const firstWith = (what: string): number =>
  walk1.find((record) => JSON.stringify(record).includes(what))!.seq;

describe('a log tells when the machines have changed under it', () => {
  it('by an inserted stage', () => {
    const machines = bakeWith('mix', (states) => ({
      ...states,
      first: { ...states['first'], on: { mixed: 'scrape' } },
      scrape: { entry: entering('mix.scrape'), on: { rested: 'rest' } },
    }));
    const { trouble } = replay(walk1, machines);
    expect(trouble?.seq).toBe(firstWith('"act":"mixed"'));
    expect(trouble?.last).toEqual(walk1.at(-1)!.position);
  });

  it('by a stage that has another name', () => {
    const machines = bakeWith('shape', ({ preshape, ...states }) => ({
      ...states,
      round: preshape,
      divide: { ...states['divide'], on: { divided: 'round' } },
    }));
    expect(replay(walk1, machines).trouble?.seq).toBe(firstWith('"act":"divided"'));
  });

  it('by a call that is no longer made: what was hushed does not ring', () => {
    const machines = laneWith('lift', { meta: { hazard: 'hot' } });
    expect(replay(walk1, machines).trouble?.seq).toBe(firstWith('"call":"lane.pot:lift'));
  });

  it('by a look that has become hot: what was put off may not be', () => {
    const machines = bakeWith('levain', (states) => ({
      ...states,
      look: { ...states['look'], meta: { call: 'hot', list: 'levainSigns' } },
    }));
    expect(replay(walk1, machines).trouble?.seq).toBe(firstWith('"kind":"snoozed"'));
  });

  it('by a wait for another mark: the wait never ends', () => {
    const machines = laneWith('lidded', {
      meta: { waits: 'colour' },
      on: { lidOff: 'open' },
    });
    // The load still looks the same; the due that led to the lid call is missing after it.
    expect(replay(walk1, machines).trouble?.seq).toBe(
      walk1.find(({ position }) => position.lanes['lane.pot']?.stage === 'lift')!.seq,
    );
  });

  it('by an act with another name', () => {
    const machines = laneWith('unload', {
      on: { takenOut: { target: 'recover', actions: 'empty' } },
    });
    expect(replay(walk1, machines).trouble?.seq).toBe(firstWith('"act":"unloaded"'));
  });

  it('by a hush that no longer wakes at a take-back', () => {
    const attention = attentionMachine.provide({ actions: { unhear: () => undefined } });
    expect(replay(walk1, { ...MACHINES, attention }).trouble).not.toBeNull();
  });

  it('and keeps what it had folded up to there', () => {
    const machines = laneWith('lift', { meta: { hazard: 'hot' } });
    const { kitchen, trouble } = replay(walk1, machines);
    expect(kitchen.seq).toBe(trouble!.seq - 1);
    expect(samePlain(positionOf(kitchen), walk1[trouble!.seq - 2]!.position)).toBe(true);
  });
});

describe('walk-7', () => {
  const walk7 = recordsOf(rowsOf('walk-7.json'));
  const jump = walk7.findIndex(({ fact }) => fact.kind === 'jump') + 1;
  const standsAt = (n: number): readonly unknown[] => {
    const { kitchen, trouble } = replay(walk7.slice(0, n), MACHINES);
    const { plan } = kitchen;
    return [trouble, plan?.sequence ?? null, plan?.ask.bakes[0]!.bake ?? null];
  };

  it('knows its plan and the begun bake wherever it is cut, across the jump too', () => {
    expect([1, 2, 3, 4, 5, 6].map(standsAt)).toEqual([
      [null, 1, null],
      [null, null, null],
      [null, 1, null],
      [null, 1, 'cherry'],
      [null, 1, null],
      [null, 1, 'cherry'],
    ]);
    expect([jump, jump + 1].map(standsAt)).toEqual(Array(2).fill([null, 1, 'cherry']));
    const plans = walk7.filter(({ fact }) => fact.kind === 'plan').map(({ seq }) => seq);
    expect(plans.slice(2).map(standsAt)).toEqual([
      [null, 2, 'cherry'],
      [null, 3, 'cherry'],
    ]);
    expect(standsAt(plans.at(-1)! + 1)).toEqual([null, 2, 'cherry']);
    expect(standsAt(walk7.length)).toEqual([null, null, null]);
  });

  it('calls the cold loaf at the minute its plan has the oven on', () => {
    const { fact } = walk7.findLast(({ fact: { kind } }) => kind === 'takeBack')!;
    const { kitchen } = replay(
      walk7.filter(({ fact: { at } }) => at <= fact.at),
      MACHINES,
    );
    const oven = kitchen.plan!.touches.find(({ name }) => name === 'oven on')!;
    expect(kitchen.bakes['cherry']!.context.marks['look']).toBe(oven.at);
  });
});

describe('walk-8', () => {
  const walk8 = recordsOf(rowsOf('walk-8.json'));
  const back = walk8.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : []));
  const presses = walk8.flatMap(({ fact }) =>
    fact.kind === 'press' && !back.includes(fact.id) ? [fact] : [],
  );

  it('has each filling of three breads ticked once, and none of it in one press', () => {
    const ticks = presses.filter(({ item }) => item?.startsWith('filling:'));
    expect(ticks.map(({ who, item }) => [who, item])).toEqual([
      ['seed', 'filling:pumpkin'],
      ['seed', 'filling:sesame'],
      ['seed', 'filling:oats'],
      ['rye', 'filling:hazelnut'],
      ['rye', 'filling:cherry'],
      ['tin', 'filling:cherry'],
      ['tin', 'filling:hazelnut'],
    ]);
    expect(back).toHaveLength(4);
    expect(presses.map(({ act }) => act)).not.toContain('scattered');
  });

  it('tells when fillings are no longer ticked', () => {
    const machines = bakeWith('bulk', (states) => ({
      ...states,
      scatter: { ...states['scatter'], on: { scattered: 'roll' } },
    }));
    const first = walk8.find(({ fact }) => 'item' in fact && fact.item?.startsWith('filling:'));
    expect(replay(walk8, machines).trouble?.seq).toBe(first!.seq);
  });

  it('and walk-1 when an older bake’s filling is no longer in with one press', () => {
    const machines = bakeWith('bulk', (states) => ({
      ...states,
      scatter: { ...states['scatter'], on: {} },
    }));
    expect(replay(walk1, machines).trouble?.seq).toBe(firstWith('"act":"scattered"'));
  });
});

describe('walk-9', () => {
  const walk9 = recordsOf(rowsOf('walk-9.json'));
  const cuts = walk9.filter(({ fact }) => fact.kind === 'cut');

  it('has a loaf read three times, first with something to change', () => {
    expect(cuts.map(({ fact }) => fact.kind === 'cut' && fact.read.says)).toEqual([
      'causes',
      'well',
      'well',
    ]);
    expect(cutOf(walk9, walk9[0]!.fact.id)).toBe(cuts[2]!.fact);
  });

  it('stands at each where it stood before, and no take-back withdraws one', () => {
    for (const { seq, position } of cuts) {
      const { now, ...places } = position;
      const before = replay(walk9.slice(0, seq - 1), MACHINES).kitchen;
      const { now: _, ...stood } = positionOf(advance(before, MACHINES, now).kitchen);
      expect(samePlain(stood, places)).toBe(true);
    }
    const back = walk9.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : []));
    expect(back).toHaveLength(1);
    expect(cuts.map(({ fact }) => fact.id)).not.toContain(back[0]);
  });
});
