import { expect } from 'vitest';
import { MACHINES } from '../../../machines/kitchen/kitchen.ts';
import { replay } from '../../../machines/kitchen/replay.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { Fact } from '../../../src/core/records/fact.ts';
import { isLane } from '../../../src/core/records/lane.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import type { App } from './open-app.ts';

export const logOf = async (app: App): Promise<LogRecord[]> =>
  (await app.storeRows()) as LogRecord[];

/** Facts that were not taken back. */
export const standing = (records: readonly LogRecord[]): Fact[] => {
  const facts = records.map(({ fact }) => fact);
  const gone = facts.flatMap((fact) => (fact.kind === 'takeBack' ? [fact.target] : []));
  return facts.filter(({ id }) => !gone.includes(id));
};

/** What is done to a pot is done at the oven. */
const isAt = (who: string, machine: string): boolean =>
  machine === who || (who === 'oven' && isLane(machine));

/** The standing acts of one machine in their order; answers in a row are counted: '7 answers'. */
export const actsOf = (records: readonly LogRecord[], who: string): string[] =>
  standing(records).reduce<string[]>((acts, fact) => {
    if (fact.kind === 'reading' && fact.bake === who) return [...acts, fact.reading.what];
    if (fact.kind !== 'press' || !isAt(who, fact.who)) return acts;
    // Tasks that a wait carries are no step of the way.
    if (fact.act === 'taskDone') return acts;
    if (fact.act !== 'answer') return [...acts, fact.act];
    const [, before] = /^(\d+) answers$/.exec(acts.at(-1) ?? '') ?? [];
    const row = `${Number(before ?? 0) + 1} answers`;
    return before === undefined ? [...acts, row] : [...acts.slice(0, -1), row];
  }, []);

/** What rang and was hushed, once a call: the stages of these machines, in the order they called. */
export const rangOf = (records: readonly LogRecord[], ...who: readonly string[]): string[] => {
  const heard = records.flatMap(({ fact }) => (fact.kind === 'heard' ? [fact.call] : []));
  return [...new Set(heard)].flatMap((call) => {
    const [machine = '', stage = ''] = call.split(':');
    // Tasks that a wait carries call in between; they are no step of the way.
    return who.some((one) => isAt(one, machine)) && !stage.startsWith('lead.') ? [stage] : [];
  });
};

/**
 * The log is whole: every number once, every id its own, every stored position what these machines
 * come to. At its end nothing bakes and the oven is off.
 */
export const expectWhole = (records: readonly LogRecord[]): void => {
  expect(records.map(({ seq }) => seq)).toEqual(records.map((_, i) => i + 1));
  expect(new Set(records.map(({ fact }) => fact.id)).size).toBe(records.length);
  const { kitchen, trouble } = replay(records, MACHINES);
  expect(trouble).toBeNull();
  expect(Object.keys(kitchen.bakes)).toEqual([]);
  expect(stageOf(kitchen.oven)).toBe('off');
};
