import { readFileSync } from 'node:fs';
import { MACHINE_VERSION } from '../../../machines/kitchen/kitchen.ts';
import { formulaFault } from '../../../src/core/records/formula-fault.ts';
import { readHead } from '../../../src/core/records/log-file.ts';
import { cutFault } from '../../../src/core/records/read-cut.ts';
import { planFault } from '../../../src/core/records/read-plan.ts';
import { readReading } from '../../../src/core/records/read-reading.ts';
import { readRecord } from '../../../src/core/records/read-record.ts';
import { starterFault } from '../../../src/core/records/read-starter.ts';
import { rawFormula } from '../../core/formula/shipped.ts';
import { laidDay } from '../../fakes/laid-day.ts';
import { makeRow } from '../../fakes/records.ts';
import { cutDeed } from '../../machines/golden/cut.ts';
import { either, fault, ofData, ofText, only, orNothing, type Reader } from '../reader.ts';

export const walk = (n: number): readonly unknown[] =>
  JSON.parse(readFileSync(`tests/machines/golden/walk-${n}.json`, 'utf8')) as unknown[];

const PLAN = JSON.parse(JSON.stringify(laidDay())) as unknown;
const CUT = cutDeed('f1', { crumb: 'gummy', base: 'tight', spread: 'unsure' });
const STARTER = [
  { did: 'fed', flour: 2, celsius: 22 },
  { did: 'put', where: 'fridge' },
  { did: 'kept', grams: 20 },
  { did: 'named', name: 'Quince' },
  { did: 'rose', percent: 80 },
  { did: 'topped', top: 'domed' },
  { did: 'later', until: 1_935_000_000_000 },
];
const READINGS = [
  { what: 'doughTemperature', celsius: 24.5 },
  { what: 'rise', percent: 60, of: 'dough', in: 'jar' },
  { what: 'edge', edge: 'domed', bubbles: 'many' },
  { what: 'growth', grown: 'little', rim: 'level' },
  { what: 'weight', grams: 912, of: 'piece', odd: true },
  { what: 'crust', colour: 'golden' },
];
const SAYS = [...new Set(READINGS.flatMap((one) => Object.keys(one)))];
const row = (deed: object): unknown => {
  const { seq, position, fact } = makeRow(1);
  const { id, device, at, raw } = fact;
  return { seq, position, machineVersion: MACHINE_VERSION, fact: { id, device, at, raw, ...deed } };
};
/** A row of each kind, those of every old version among them. */
export const ROWS: readonly unknown[] = [
  ...[1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((n) => walk(n).filter((_, i) => i % 29 === 0)),
  row({ kind: 'plan', plan: PLAN }),
  row({ kind: 'planOff', plan: 'day-1' }),
  row({ kind: 'formula', formula: rawFormula('seed-oat') }),
  row({ kind: 'formulaOff', formula: 'seed-oat' }),
  row(CUT),
  ...STARTER.map((deed) => row({ kind: 'starter', ...deed })),
  ...READINGS.map((reading) => row({ kind: 'reading', by: 'hand', bake: 'bake-1', reading })),
  row({ kind: 'correct', target: 'row-1', reading: READINGS[0] }),
  row({ kind: 'snoozed', call: 'a:b', until: 1_935_000_000_000 }),
  row({ kind: 'timer', timer: 't', name: 'nuts', until: 1_935_000_000_000, call: 'hot' }),
  row({ kind: 'timerOff', timer: 't' }),
  row({ kind: 'jump', position: makeRow(1).position }),
];

/** Readers of the log's rows and their parts. */
export const RECORD_READERS: readonly Reader[] = [
  {
    of: 'core/records/read-record.ts readRecord',
    make: ofData(...ROWS),
    read: (value: unknown) => {
      const { record, reason } = { reason: null, ...readRecord(value, MACHINE_VERSION) };
      // Fields that no deed has stay in its fact, and a position is looked at where something stands by it.
      const { seq, fact } = record ?? {};
      return either([seq, fact?.kind, fact?.at, fact?.raw], reason);
    },
    share: 4,
  },
  {
    of: 'core/records/read-reading.ts readReading',
    make: ofData(...READINGS),
    read: (value: unknown) => {
      const { reading, reason } = readReading(value, 'reading');
      return reading === null ? fault(() => reason)(value) : { taken: only(reading, SAYS) };
    },
    again: true,
  },
  {
    of: 'core/records/read-cut.ts cutFault',
    make: ofData(CUT),
    read: fault((value: object) => cutFault(Object(value) as object)),
  },
  { of: 'core/records/read-plan.ts planFault', make: ofData(PLAN), read: fault(planFault) },
  {
    of: 'core/records/read-starter.ts starterFault',
    make: ofData(...STARTER),
    read: fault((value: object) => starterFault(Object(value) as Record<string, unknown>)),
  },
  {
    of: 'core/records/formula-fault.ts formulaFault',
    make: ofData(rawFormula('olive-seed')),
    read: fault(formulaFault),
    share: 0.5,
  },
  {
    of: 'core/records/log-file.ts readHead',
    make: ofText(`{"kitchenFile":4,"lines":12,"sum":"${'0a'.repeat(32)}"}`),
    read: (text: string) => orNothing(readHead(text)),
    share: 0.5,
  },
];
