import type { Deed, Fact, Result } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import { advance } from '../../../machines/kitchen/advance.ts';
import { judgeFact } from '../../../machines/kitchen/judge-fact.ts';
import {
  emptyKitchen,
  MACHINE_VERSION,
  MACHINES,
  type Kitchen,
  type Machines,
} from '../../../machines/kitchen/kitchen.ts';
import { positionOf } from '../../../machines/kitchen/position.ts';
import type { WaitModel } from '../../../machines/kitchen/results.ts';
import type { Say } from '../../../machines/kitchen/step.ts';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';
import { RECIPE } from './recipe.ts';

/** Minutes of each wait's first mark: plain numbers, so that a test can reckon in its head. */
export const WAITS: Readonly<Record<string, { mark: string; minutes: number }>> = {
  'levain.ripening': { mark: 'look', minutes: 300 },
  'mix.rest': { mark: 'end', minutes: 30 },
  'bulk.between': { mark: 'touch', minutes: 30 },
  'bulk.proving': { mark: 'look', minutes: 180 },
  'shape.benchRest': { mark: 'end', minutes: 20 },
  'proof.counter': { mark: 'end', minutes: 20 },
  'proof.retard': { mark: 'look', minutes: 720 },
  preheating: { mark: 'hot', minutes: 45 },
  standing: { mark: 'poke', minutes: 20 },
  lidded: { mark: 'lid', minutes: 18 },
  open: { mark: 'colour', minutes: 20 },
  recover: { mark: 'hot', minutes: 10 },
  'cool.cooling': { mark: 'end', minutes: 120 },
};

export const plainWait: WaitModel = ({ stage, now, readings }) => {
  const wait = WAITS[stage];
  if (!wait) throw new Error(`No wait at ${stage}.`);
  const warm = readings['doughTemperature']?.reading;
  const celsius = warm && 'celsius' in warm ? warm.celsius : 24;
  const shift = stage === 'bulk.proving' ? (24 - celsius) * 10 : 0;
  return { marks: { [wait.mark]: now + (wait.minutes + shift) * MINUTE }, model: 'plain' };
};

/** A baker for tests: one log, one kitchen, a clock the test turns. */
export class Hand {
  now: Instant;
  kitchen: Kitchen;
  records: LogRecord[] = [];
  says: Say[] = [];
  modelRuns = 0;

  constructor(
    now: Instant = 1_000 * MINUTE,
    readonly machines: Machines = MACHINES,
  ) {
    this.now = now;
    this.kitchen = emptyKitchen(machines);
  }

  /** Turns the clock; what falls due falls due. */
  turn(minutes: number): this {
    this.now += minutes * MINUTE;
    const stepped = advance(this.kitchen, this.machines, this.now);
    this.kitchen = stepped.kitchen;
    this.says.push(...stepped.says);
    return this;
  }

  /** Does something; false where it was refused and nothing was written. */
  do(deed: Deed, results?: readonly Result[]): boolean {
    const bare: Fact = {
      ...deed,
      id: `f${this.records.length + 1}`,
      device: 'test',
      at: this.now,
      raw: this.now,
      ...(results ? { results } : {}),
    };
    const judged = judgeFact(this.kitchen, this.machines, bare, (input) => {
      this.modelRuns += 1;
      return plainWait(input);
    });
    if (judged === null) return false;
    this.kitchen = judged.stepped.kitchen;
    this.says.push(...judged.stepped.says);
    this.records.push({
      seq: this.kitchen.seq,
      fact: judged.fact,
      machineVersion: MACHINE_VERSION,
      position: positionOf(this.kitchen),
    });
    return true;
  }

  start(bake = 'a', from = 'read.plan', loaves = [`${bake}1`, `${bake}2`]): boolean {
    return this.do({ kind: 'start', bake, loaves, from, recipe: RECIPE, kitchen: 24 });
  }

  press(who: string, act: string, extra: object = {}): boolean {
    return this.do({ kind: 'press', who, act, ...extra } as Deed);
  }

  answer(who: string, items: Readonly<Record<string, string>>): boolean {
    return Object.entries(items).every(([item, value]) =>
      this.press(who, 'answer', { item, value }),
    );
  }

  takeBack(): boolean {
    const target = takeBackTarget(this.kitchen);
    return target !== null && this.do({ kind: 'takeBack', target: target.id });
  }
}
