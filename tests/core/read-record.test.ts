import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { positionFault, readRecord } from '../../src/core/records/read-record.ts';
import { upgrade } from '../../src/core/records/upgrade.ts';
import { MACHINE_VERSION as TODAY } from '../../machines/kitchen/kitchen.ts';
import { makeRow } from '../fakes/records.ts';

const ROW = {
  seq: 1,
  machineVersion: 1,
  position: makeRow(1).position,
  fact: { kind: 'heard', id: 'x', device: 'd', at: 5, raw: 5, call: 'oven:lift:5' },
};

describe('reading one row of a log', () => {
  it('takes a whole record as it is', () => {
    const row = { ...ROW, machineVersion: TODAY };
    expect(readRecord(row, TODAY).record).toBe(row);
  });

  it('refuses a newer version by name, never half-read', () => {
    const read = readRecord({ ...ROW, machineVersion: 2 }, 1);
    expect(read).toEqual({
      record: null,
      reason: { path: 'machineVersion', expected: 'at most 1', got: '2' },
    });
  });

  it.each([
    ['seq', { ...ROW, seq: 0 }],
    ['position', { ...ROW, position: null }],
    ['fact', { ...ROW, fact: 3 }],
    ['fact.kind', { ...ROW, fact: { ...ROW.fact, kind: 'eaten' } }],
    ['fact.at', { ...ROW, fact: { ...ROW.fact, at: Number.NaN } }],
    ['fact.call', { ...ROW, fact: { ...ROW.fact, call: undefined } }],
  ])('names %s where it is wrong', (path, row) => {
    const read = readRecord(row, 1);
    expect(read.record).toBeNull();
    expect('reason' in read && read.reason.path).toBe(path);
  });

  it.each([[undefined], [null], [3], ['x'], [[]], [{ toString: 1, valueOf: 1 }]])(
    'lifts an old row with %j in it and never throws',
    (odd) => {
      const result = { who: odd, stage: odd, marks: odd };
      const facts = [
        { ...ROW.fact, results: odd },
        { ...ROW.fact, results: [odd, result] },
        { ...ROW.fact, call: odd },
        { ...ROW.fact, kind: 'jump', position: { oven: odd, bakes: odd } },
        { ...ROW.fact, kind: 'start', bake: 'a', loaves: [], from: 'x', recipe: { process: odd } },
        { ...ROW.fact, kind: 'press', who: 'oven', act: 'ovenHot', item: odd },
      ];
      const entered = { load: odd, lidded: odd, recover: odd, preheating: odd };
      const attention = { heard: [odd], snoozed: { a: odd } };
      const positions = [
        { oven: odd, bakes: { a: odd } },
        { oven: { stage: odd, entered, tasks: { a: odd } }, bakes: odd, attention },
        { oven: { stage: 'lidded', entered, load: odd }, bakes: { a: odd }, attention: odd },
      ];
      for (const fact of facts)
        for (const position of positions) {
          expect(upgrade({ ...ROW, position, fact }, 1)).toMatchObject({ machineVersion: TODAY });
          // What no bench could show is no record, by whatever it is told.
          const { record } = readRecord({ ...ROW, position, fact }, TODAY);
          expect(record === null || positionFault(record) !== null).toBe(true);
        }
    },
  );

  it('never throws, whatever comes', () => {
    fc.assert(fc.property(fc.anything(), (row) => void readRecord(row, 1)));
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(ROW)), fc.anything(), (key, value) => {
        const read = readRecord({ ...ROW, [key]: value }, 1);
        if (read.record === null) expect(read.reason.expected).not.toBe('');
      }),
    );
  });
});

describe('a row of version 1', () => {
  const process = { rest: 30, retard: 840, lidded: 18 };
  const start = {
    ...ROW.fact,
    kind: 'start',
    bake: 'a',
    loaves: ['a1'],
    from: 'read.plan',
    recipe: { piece: 900, process, formula: { id: 'x', process } },
  };
  const lift = (row: object) => upgrade(row, 1) as unknown as typeof ROW & { fact: typeof start };

  it('was of a round, retarded loaf in a pot', () => {
    const { fact } = lift({ ...ROW, fact: start });
    const full = { ...process, shaping: 'round', warm: 0, vessel: 'pot' };
    expect(fact.recipe).toEqual({
      piece: 900,
      process: full,
      formula: { id: 'x', process: full },
      fillingAtOnce: true,
    });
  });

  it('names the wait of its results by where the row stood', () => {
    const results = [
      { who: 'a', stage: 'mix.rest', marks: { end: 9 }, model: 'm' },
      { who: 'oven', stage: 'lidded', marks: { lid: 9 }, model: 'm' },
      { who: 'b', stage: 'mix.rest', marks: { end: 9 }, model: 'm' },
      { who: 'a', stage: 'mix.rest', since: 2, marks: { end: 9 }, model: 'm' },
    ];
    const position = {
      now: 5,
      bakes: { a: { entered: { 'mix.rest': 4 } } },
      oven: { entered: { lidded: 3 } },
    };
    const { fact } = lift({ ...ROW, position, fact: { ...start, results } });
    const sinces = (fact as unknown as { results: { since: number }[] }).results;
    expect(sinces.map(({ since }) => since)).toEqual([4, 3, 5, 2]);
  });

  it('leaves a row of today as it is', () => {
    const row = { ...ROW, machineVersion: TODAY, fact: start };
    expect(upgrade(row, TODAY)).toBe(row);
  });
});

describe('a row of version 10', () => {
  const lift = (fact: object): object => upgrade({ ...ROW, machineVersion: 10, fact }, 10);

  it('began a bake whose filling is in with one press', () => {
    const start = { ...ROW.fact, kind: 'start', recipe: { piece: 900 } };
    const recipe = { piece: 900, fillingAtOnce: true };
    expect(lift(start)).toMatchObject({ machineVersion: TODAY, fact: { ...start, recipe } });
  });

  it('gave any loaf another turn', () => {
    for (const act of ['loafFirst', 'loafLater']) {
      const fact = { ...ROW.fact, kind: 'press', who: 'oven', act, item: 'a1' };
      expect(lift(fact)).toMatchObject({ fact: { ...fact, freely: true } });
    }
    const other = { ...ROW.fact, kind: 'press', who: 'oven', act: 'scored' };
    expect(lift(other)).toEqual({ ...ROW, machineVersion: TODAY, fact: other });
  });
});

describe('a deed of the starter', () => {
  const fed = { ...ROW.fact, kind: 'starter', did: 'fed', flour: 2, celsius: 22 };
  const read = (fact: object) => readRecord({ ...ROW, machineVersion: TODAY, fact }, TODAY);

  it('is read as it is', () => {
    for (const more of [{}, { did: 'renewed' }, { did: 'put', where: 'fridge' }])
      expect(read({ ...fed, ...more }).record?.fact).toEqual({ ...fed, ...more });
  });

  it.each<[string, object]>([
    ['fact.did', { did: 'eaten' }],
    ['fact.flour', { flour: -1 }],
    ['fact.celsius', { celsius: '22' }],
    ['fact.where', { did: 'put', where: 'cellar' }],
    ['fact.percent', { did: 'rose', percent: Number.NaN }],
    ['fact.top', { did: 'topped' }],
    ['fact.until', { did: 'later', until: Infinity }],
  ])('is refused by name where its %s is wrong', (path, wrong) => {
    const found = read({ ...fed, ...wrong });
    expect('reason' in found && found.reason.path).toBe(path);
  });

  it('was unknown to rows of version 3, of a jump too', () => {
    const jump = { ...ROW.fact, kind: 'jump', position: { now: 4 } };
    const lifted = upgrade({ ...ROW, machineVersion: 3, fact: jump }, 3);
    const starter = { signs: [], marks: {} };
    expect(lifted).toMatchObject({ position: { starter }, fact: { position: { starter } } });
  });
});
