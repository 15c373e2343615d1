import { expect } from 'vitest';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { pick } from './choices.ts';
import { Hand } from './hand.ts';
import type { PotsCommand } from './pots-commands.ts';
import { checkLids, checkPosition, checkPots, checkSame } from './pots-check.ts';
import {
  BEFORE,
  callsOf,
  CRUST,
  freePots,
  inOven,
  nextEnd,
  passTime,
  POKE,
  PotsLog,
  TRAY,
  type Pots,
  type PotsDeed,
  type Vessel,
} from './pots-model.ts';
import { RECIPE, STONE, TIN } from './recipe.ts';

type Press = Extract<PotsDeed, { kind: 'press' }>;

const RECIPES = { pot: RECIPE, stone: STONE, tin: TIN };
const NAMES = ['left', 'right', 'third', 'fourth', 'fifth', 'sixth'].map((name) => `lane.${name}`);
const LANE_ACTS = ['lidOff', 'steamOut', 'colourSeen', 'crustReady', 'crustNotYet', 'crustOver'];
const MORE_LANE_ACTS = [...LANE_ACTS, 'crustOnRack', 'unloaded', 'ovenHot'];
const OVEN_ACTS = [
  'ovenOn',
  'ovenHot',
  'pokeReady',
  'pokeNotYet',
  'pokeOver',
  'pokeFlat',
  'pokeNow',
];
const MORE_OVEN_ACTS = [...OVEN_ACTS, 'scored', 'lidOff', 'unloaded', 'ovenOff', 'loaded'];

/** The usual act of each stage, or one of them. */
const RIGHT: Readonly<Record<string, readonly string[]>> = {
  preheating: ['ovenHot'],
  standing: ['pokeNow'],
  poke: ['pokeReady', 'pokeReady', 'pokeOver', 'pokeFlat', 'pokeNotYet'],
  score: ['scored'],
  turnOff: ['ovenOff'],
  lidded: ['lidOff'],
  lift: ['lidOff'],
  steaming: ['steamOut'],
  vent: ['steamOut'],
  open: ['colourSeen'],
  judge: ['crustReady', 'crustReady', 'crustNotYet', 'crustOnRack', 'crustOver'],
  unload: ['unloaded'],
  recover: ['ovenHot'],
  'proof.warm': ['loafSeen'],
  'proof.soon': ['loafReady'],
  'proof.poke': ['loafReady'],
  'cool.cooling': ['cooled'],
  'cool.handOver': ['handedOver'],
  'cool.note': ['noted'],
};

/** A random run over the oven and its pots: the same deeds to the machines and to the model. */
export class PotsDriver {
  readonly hand = new Hand();
  readonly log = new PotsLog();
  /** Stages and acts seen. */
  readonly seen = new Set<string>();
  mostPots = 0;
  /** How often each interval under a lid was called by time alone. */
  readonly rung = new Map<string, number>();
  private bakes = 0;
  private alone: Hand['kitchen'];

  constructor() {
    this.alone = this.hand.fold.emptyKitchen(this.hand.machines);
    this.turn(0);
  }

  private get model(): Pots {
    return this.log.model;
  }

  run(commands: readonly PotsCommand[]): void {
    for (const command of [...commands, { do: 'reload', a: 0, b: 0, c: 0 } as const]) {
      const { hand } = this;
      const before = hand.kitchen;
      hand.says = [];
      this.act(command);
      checkPots(hand);
      checkSame(hand, this.model);
      checkPosition(hand, this.model);
      const withdrew = command.do === 'takeBack';
      // What called as the page was closed calls again as it opens.
      const read = command.do === 'reload' || command.do === 'closed';
      checkLids(hand, { before, rung: this.rung, withdrew, read });
      const { oven, lanes, bakes } = this.model;
      for (const { stage } of [oven, ...Object.values(lanes), ...Object.values(bakes)]) {
        this.seen.add(stage);
      }
      this.mostPots = Math.max(
        this.mostPots,
        Object.keys(lanes).filter((lane) => lane !== TRAY).length,
      );
    }
  }

  private do(deed: PotsDeed): void {
    const { hand, log } = this;
    const [at, before] = [hand.now, hand.kitchen];
    const should = log.do(`f${hand.records.length + 1}`, at, deed);
    const taken =
      deed.kind === 'start'
        ? hand.start(deed.bake, deed.from, deed.loaves, RECIPES[deed.vessel])
        : hand.do(deed as Parameters<Hand['do']>[0]);
    expect([deed, taken], 'taken where the model takes it').toEqual([deed, should]);
    if (!taken) return expect(hand.kitchen === before).toBe(true);
    this.seen.add(deed.kind === 'press' ? deed.act : deed.kind);
    this.follow();
  }

  /** A second kitchen that sees the facts alone, as plain text, and never the clock. */
  private follow(): void {
    const { fold, machines, records } = this.hand;
    const { fact, position } = JSON.parse(JSON.stringify(records.at(-1)!)) as LogRecord;
    const { taken, kitchen } = fold.apply(this.alone, machines, fact);
    expect(taken, 'a fact that was written is taken again').toBe(true);
    const there = JSON.stringify(fold.positionOf(kitchen));
    if (there !== JSON.stringify(position))
      expect(JSON.parse(there), 'replayed = live').toEqual(position);
    this.alone = kitchen;
  }

  private press(who: string, act: string, more: Partial<Press> = {}): void {
    this.do({ kind: 'press', who, act, ...more });
  }

  private turn(minutes: number): void {
    this.hand.turn(minutes);
    passTime(this.model, this.hand.now);
  }

  /** The page is closed for so long, and its log read again from plain text. */
  private reload(minutes: number): void {
    const { hand } = this;
    hand.wall += minutes * MINUTE;
    const runs = hand.modelRuns;
    const { kitchen, trouble } = hand.replayed();
    expect([trouble, hand.modelRuns], 'the log replays, no model asked').toEqual([null, runs]);
    const stepped = hand.fold.advance(kitchen, hand.machines, hand.now);
    hand.kitchen = stepped.kitchen;
    hand.says = [...stepped.says];
    passTime(this.model, hand.now);
  }

  private act({ do: name, a, b, c }: PotsCommand): void {
    const { hand, model } = this;
    const lane = pick([...Object.keys(model.lanes), ...Object.keys(model.lanes), NAMES[5]!], a)!;
    const bake = pick([...Object.keys(model.bakes), 'nobody'], a)!;
    const { queue } = model;
    switch (name) {
      case 'onward':
        return this.onward(a, b, c);
      case 'turn':
        return this.turnBy(a, b);
      case 'sleep':
        return this.turn(60 + (b % 900));
      case 'closed':
        return this.reload(b % 700);
      case 'load': {
        const all = [...queue, ...inOven(model), ...model.out, 'nothing'];
        const loaves = all.filter((_, i) => ((b + 1) >> i) % 2 === 1);
        const twice = c % 5 === 0 ? [...loaves, ...loaves] : loaves;
        const into = pick([undefined, ...NAMES, 'lane.pot', TRAY, 'oven'], a);
        return this.press('oven', 'loaded', { loaves: twice, ...(into ? { lane: into } : {}) });
      }
      case 'lidOff': {
        const act = model.lanes[lane]?.vessel === 'stone' ? 'steamOut' : 'lidOff';
        return this.press(lane, act, { was: hand.now - ((b % 30) - 3) * MINUTE });
      }
      case 'lane':
        return this.press(lane, pick(MORE_LANE_ACTS, b)!);
      case 'oven':
        return this.press('oven', pick(MORE_OVEN_ACTS, b)!);
      case 'crust': {
        const value = pick(['golden', undefined], c);
        const item = pick([...CRUST, 'dent'], b)!;
        return this.press(lane, 'answer', { item, ...(value ? { value } : {}) });
      }
      case 'turns':
        return this.press('oven', pick(['loafFirst', 'loafLater'], b)!, {
          item: pick([...queue, 'nothing'], a)!,
        });
      case 'potOut':
        return this.press('oven', 'potOut', { item: pick(model.pots ?? NAMES, a)! });
      case 'fewer': {
        const own = model.bakes[bake]?.loaves ?? [];
        const loaves = own.filter((_, i) => ((b + 1) >> i) % 2 === 1);
        return this.press(bake, 'fewer', { loaves });
      }
      case 'ended':
        return this.press(bake, 'ended');
      case 'heard':
        return this.do({ kind: 'heard', call: pick([...callsOf(model), 'oven:lift:0'], a)! });
      case 'takeBack':
        return this.takeBack();
      case 'reload':
        return this.reload(0);
      case 'wallBack':
        hand.wallBack(a % 600);
        return this.turn(0);
      case 'start':
        return this.start(a, b, c);
    }
  }

  private takeBack(): void {
    const { hand, log } = this;
    const target = log.latest;
    expect(hand.fold.takeBackTarget(hand.kitchen)?.id ?? null).toBe(target);
    if (target === null) return;
    const [id, at] = [`f${hand.records.length + 1}`, hand.now];
    expect(hand.takeBack()).toBe(true);
    log.takeBack(id, at);
    this.seen.add('takeBack');
    this.follow();
  }

  private start(a: number, b: number, c: number): void {
    const running = Object.keys(this.model.bakes);
    if (running.length >= 3) return;
    const bake = c % 12 === 0 ? (running[0] ?? 'b0') : `b${(this.bakes += 1)}`;
    const own = Array.from({ length: 1 + (b % 8) }, (_, i) => `${bake}.${i + 1}`);
    const loaves = c % 7 === 0 ? [...own, ...inOven(this.model), ...this.model.out] : own;
    const vessel = pick<Vessel>(['pot', 'pot', 'pot', 'pot', 'stone', 'tin'], a)!;
    const from = c % 6 === 1 ? 'proof.warm' : 'oven.queued';
    this.do({ kind: 'start', bake, from, loaves, vessel });
  }

  /** What is right at one of the places that want hands, or the clock turned to the next of them. */
  private onward(a: number, b: number, c: number): void {
    const { oven, lanes, bakes } = this.model;
    const rests = (stage: string): boolean => ['off', 'holding', 'baking'].includes(stage);
    const hands = Object.entries({ oven, ...lanes, ...bakes }).filter(
      ([, { stage, ends }]) => !rests(stage) && stage !== 'oven.queued' && ends === null,
    );
    if (nextEnd(this.model) !== null && (hands.length === 0 || b % 6 === 0)) {
      return b % 5 === 0 ? this.cutShort(a, c) : this.turnBy(0, 0);
    }
    // What is to go in goes first, so that many bake at once.
    const place = b % 3 === 0 ? pick(hands, a) : hands[0];
    return place ? this.right(place[0], place[1].stage, a, c) : this.start(a, b, c);
  }

  private right(who: string, stage: string, a: number, c: number): void {
    const { model } = this;
    const { vessel, queue } = model;
    if (stage === 'turnOn') return this.press('oven', 'ovenOn', this.potsOn(a, c));
    if (stage === 'before' || (stage === 'poke' && c % 5 === 0)) {
      const list = stage === 'poke' ? POKE : BEFORE[vessel];
      const item = list.find((one) => !(one in model.oven.answers)) ?? list[0]!;
      const wet = item === 'mitts' && model.oven.answers['mitts'] === undefined && c % 4 === 0;
      const open = item === list[0] && model.oven.answers['mitts'] === 'wet' ? 'mitts' : item;
      return this.press('oven', 'answer', { item: open, value: wet ? 'wet' : 'ready' });
    }
    if (stage === 'load') {
      const lane = pick(freePots(model, vessel), a);
      const many = vessel !== 'pot' || model.pots === null;
      const loaves = queue
        .filter((loaf) => bakesIn(model, loaf, vessel))
        .slice(0, many ? 1 + (c % 4) : c % 7 === 0 ? 2 : 1);
      return this.press('oven', 'loaded', { loaves, ...(lane && c % 4 > 0 ? { lane } : {}) });
    }
    if (stage === 'tray') {
      const loaves = queue.slice(0, c % 7 === 0 ? 2 : 1);
      return this.press('oven', 'loaded', { loaves, ...(c % 4 > 0 ? { lane: TRAY } : {}) });
    }
    return this.press(who, pick(RIGHT[stage] ?? ['nothing'], c)!);
  }

  private potsOn(a: number, c: number): Partial<Press> {
    const some = NAMES.slice(0, 1 + (a % 6));
    const lanes = pick(
      [some, some, some, some, undefined, [], [...some, some[0]!], ['left'], [TRAY]],
      c,
    );
    return lanes ? { lanes } : {};
  }

  /** A wait ended by hand before its time. */
  private cutShort(a: number, c: number): void {
    const { oven, lanes, bakes } = this.model;
    const waits = Object.entries({ oven, ...lanes, ...bakes }).filter(([, { ends }]) => ends);
    const wait = pick(waits, a);
    return wait ? this.right(wait[0], wait[1].stage, a, c) : this.turnBy(0, 0);
  }

  /** To the next end, just before it, past it, or a little. */
  private turnBy(a: number, b: number): void {
    const end = nextEnd(this.model);
    const left = end === null ? 5 : (end - this.hand.now) / MINUTE;
    const before = Math.max(0, left - 1 / MINUTE);
    this.turn(pick([left, before, left + (b % 40), b % 10, b % 4], a)!);
  }
}

const bakesIn = ({ bakes }: Pots, loaf: string, vessel: Vessel): boolean =>
  Object.values(bakes).some((one) => one.vessel === vessel && one.loaves.includes(loaf));
