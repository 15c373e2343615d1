import type { Deed, Fact, Reading } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import type { StarterDeed } from '../../../src/core/records/starter.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import type { Kitchen, Machines } from '../../../machines/kitchen/kitchen.ts';
import type { WaitModel } from '../../../machines/kitchen/results.ts';
import type { StarterModel } from '../../../machines/kitchen/starter-result.ts';
import type { Say } from '../../../machines/kitchen/step.ts';
import type { Replayed } from '../../../machines/kitchen/replay.ts';
import { FOLD, type Fold } from './fold.ts';
import { openedShort } from './opens-alike.ts';
import { RECIPE } from './recipe.ts';
import { plainStarter, plainWait } from './waits.ts';

export { plainStarter, plainWait, WAITS } from './waits.ts';

/** How kitchen time is read: the offset grows where the wall would put it before the fold's own now. */
export type TimeRule = (wall: Instant, offset: number, kitchen: Kitchen) => number;
export const neverBack: TimeRule = (wall, offset, { now }) => Math.max(offset, now - wall);

interface HandParts {
  readonly now?: Instant;
  readonly machines?: Machines;
  readonly fold?: Fold;
  readonly wait?: WaitModel;
  readonly starter?: StarterModel;
  readonly time?: TimeRule;
  /** Of the kitchen above the sea, m. */
  readonly height?: number;
}

/** A baker for tests: one log, one kitchen, a clock the test turns. */
export class Hand {
  wall: Instant;
  offset = 0;
  kitchen: Kitchen;
  records: LogRecord[] = [];
  says: Say[] = [];
  modelRuns = 0;
  readonly fold: Fold;
  readonly machines: Machines;
  private readonly wait: WaitModel;
  private readonly starter: StarterModel;
  private readonly time: TimeRule;
  private readonly height: number;

  constructor(parts: HandParts = {}) {
    this.fold = parts.fold ?? FOLD;
    this.machines = parts.machines ?? this.fold.MACHINES;
    this.wait = parts.wait ?? plainWait;
    this.starter = parts.starter ?? plainStarter;
    this.time = parts.time ?? neverBack;
    this.height = parts.height ?? 0;
    this.wall = parts.now ?? 1_000 * MINUTE;
    this.kitchen = this.fold.emptyKitchen(this.machines);
  }

  /** Kitchen time: never behind what the kitchen has already seen. */
  get now(): Instant {
    this.offset = this.time(this.wall, this.offset, this.kitchen);
    return this.wall + this.offset;
  }

  /** Turns the clock; what falls due falls due. */
  turn(minutes: number): this {
    return this.turnTo(this.now + minutes * MINUTE);
  }

  turnTo(at: Instant): this {
    this.wall += at - this.now;
    const stepped = this.fold.advance(this.kitchen, this.machines, this.now);
    this.kitchen = stepped.kitchen;
    this.says.push(...stepped.says);
    return this;
  }

  /** Someone sets the wall clock back. */
  wallBack(minutes: number): this {
    this.wall -= minutes * MINUTE;
    return this;
  }

  /** Does something; false where it was refused and nothing was written. */
  do(deed: Deed): boolean {
    const at = this.now;
    const id = `f${this.records.length + 1}`;
    const bare: Fact = { ...deed, id, device: 'test', at, raw: this.wall };
    const judged = this.fold.judgeFact(
      this.kitchen,
      this.machines,
      bare,
      (input) => {
        this.modelRuns += 1;
        return this.wait(input);
      },
      (input) => {
        this.modelRuns += 1;
        return this.starter(input);
      },
      this.height,
    );
    if (judged === null) return false;
    this.kitchen = judged.stepped.kitchen;
    this.says.push(...judged.stepped.says);
    this.records.push({
      seq: this.kitchen.seq,
      fact: judged.fact,
      machineVersion: this.fold.MACHINE_VERSION,
      position: this.fold.positionOf(this.kitchen),
    });
    return true;
  }

  start(bake = 'a', from = 'read.plan', loaves = [`${bake}1`, `${bake}2`], recipe = RECIPE) {
    return this.do({ kind: 'start', bake, loaves, from, recipe, kitchen: 24 });
  }

  /** With one pot the oven and its lane are one place to hands: while it bakes, the lane is meant. */
  place(who: string): string {
    const busy = who === 'oven' && this.fold.stageOf(this.kitchen.oven) === 'baking';
    return busy ? (Object.keys(this.kitchen.lanes)[0] ?? who) : who;
  }

  press(who: string, act: string, extra: object = {}): boolean {
    return this.do({ kind: 'press', who: this.place(who), act, ...extra } as Deed);
  }

  answer(who: string, items: Readonly<Record<string, string>>): boolean {
    return Object.entries(items).every(([item, value]) =>
      this.press(who, 'answer', { item, value }),
    );
  }

  tend(did: StarterDeed): boolean {
    return this.do({ kind: 'starter', ...did });
  }

  measure(bake: string, reading: Reading, by: 'hand' | 'probe' = 'hand'): boolean {
    return this.do({ kind: 'reading', by, bake, reading });
  }

  dough(bake: string, celsius: number, by: 'hand' | 'probe' = 'hand'): boolean {
    return this.measure(bake, { what: 'doughTemperature', celsius }, by);
  }

  takeBack(): boolean {
    const target = this.fold.takeBackTarget(this.kitchen);
    return target !== null && this.do({ kind: 'takeBack', target: target.id });
  }

  /** Where a bake, the oven or a lane of it stands; null for one that is over. */
  stage(who: string): string | null {
    const machine = this.fold.machineOf(this.kitchen, this.place(who));
    return machine ? this.fold.stageOf(machine) : null;
  }

  deadline(who: string): Instant | null {
    const machine = this.fold.machineOf(this.kitchen, this.place(who));
    return machine ? this.fold.deadlineOf(machine) : null;
  }

  /** The call that sounds now, as `who:stage`. */
  get ringing(): string | null {
    const call = this.fold.wanted(this.kitchen).ringing;
    return call && `${call.who}:${call.stage}`;
  }

  /** The pending call of a machine: its id. */
  callId(who: string): string {
    return (
      this.fold.callsOf(this.kitchen).find((call) => call.who === this.place(who))?.id ?? 'none'
    );
  }

  heard(who: string): boolean {
    return this.do({ kind: 'heard', call: this.callId(who) });
  }

  snooze(who: string, minutes = 2): boolean {
    return this.do({
      kind: 'snoozed',
      call: this.callId(who),
      until: this.now + minutes * MINUTE,
    });
  }

  /** As after a reload: the log read again from plain text, whole and the short way, which are one. */
  replayed(records: readonly LogRecord[] = this.records): Replayed {
    const read = JSON.parse(JSON.stringify(records)) as LogRecord[];
    const whole = this.fold.replay(read, this.machines);
    // An altered fold is held against itself alone.
    return this.fold === FOLD
      ? { ...whole, kitchen: openedShort(read, whole, this.machines) }
      : whole;
  }
}
