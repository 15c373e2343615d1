import { expect } from 'vitest';
import type { Deed, Fact } from '../../../src/core/records/fact.ts';
import type { Position } from '../../../src/core/records/position.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { itemsOf, LIST_AT } from './chart.ts';
import { checkKitchen, checkMirror } from './check.ts';
import { FROM, joinedAt, pick, readingOf, RECIPES, rightPresses } from './choices.ts';
import type { Command } from './commands.ts';
import { BAKE_ACTS, OVEN_ACTS } from './events.ts';
import type { Fold } from './fold.ts';
import { deedOf } from './model-starter.ts';
import { Hand, type TimeRule } from './hand.ts';
import { Mirror, type Done } from './mirror.ts';
import { advance, copyOf, placesOf, recipeAt, type Model, type Press } from './model.ts';
import { Shadow } from './shadow.ts';

export interface DriverParts {
  readonly fold?: Fold;
  readonly time?: TimeRule;
}

/**
 * A random run: the same deeds to the kitchen and to its model, both compared after every one, and a
 * second kitchen that sees the facts alone and never the clock.
 */
export class Driver {
  readonly hand: Hand;
  readonly mirror = new Mirror();
  /** Stages and acts seen, for the coverage of a whole set of runs. */
  readonly seen = new Set<string>();
  private readonly shadow: Shadow;
  private readonly stored: { readonly position: Position; readonly model: Model }[] = [];
  private bakes = 0;
  private readonly lids = new Map<string, number>();

  constructor(parts: DriverParts = {}) {
    this.hand = new Hand(parts);
    this.shadow = new Shadow(this.hand);
    this.turn(0);
  }

  run(commands: readonly Command[]): void {
    for (const command of commands) {
      this.act(command);
      checkKitchen(this.hand);
      checkMirror(this.hand, this.mirror);
      this.checkLid();
      for (const [, { stage }] of placesOf(this.mirror.model)) {
        this.seen.add(stage);
      }
    }
    this.reload();
  }

  /** One lid call, at one instant, for each time a pot was closed. */
  private checkLid(): void {
    const lane = Object.values(this.hand.kitchen.lanes)[0];
    const at = this.hand.deadline('oven');
    if (lane === undefined || this.hand.stage('oven') !== 'lidded' || at === null) return;
    const { entered, loaves } = lane.context;
    const closed = `${loaves.join()} ${entered['lidded']}`;
    expect(at, 'one lid call each time a pot is closed').toBe(this.lids.get(closed) ?? at);
    this.lids.set(closed, at);
  }

  /** The same deed to both; whether it is taken must be the same, and a refused one writes nothing. */
  private do(deed: Deed, done: Done): void {
    const { hand, mirror } = this;
    const id = `f${hand.records.length + 1}`;
    const [at, before, written] = [hand.now, hand.kitchen, hand.records.length];
    const should = mirror.do(id, at, done);
    const real = this.placed(deed);
    const taken = hand.do(real);
    expect([done, taken], 'taken where the model takes it').toEqual([done, should]);
    if (!taken) {
      expect([hand.kitchen === before, hand.records.length]).toEqual([true, written]);
      return this.checkRefusal({ ...real, id, device: 'test', at, raw: at } as Fact);
    }
    this.seen.add(
      deed.kind === 'press'
        ? `${deed.who === 'oven' ? 'oven:' : ''}${deed.act}`
        : deed.kind === 'starter'
          ? `starter:${deed.did}`
          : deed.kind,
    );
    this.follow();
  }

  /** The model's one oven is the lane while it bakes, and its calls are the lane's. */
  private placed(deed: Deed): Deed {
    if (deed.kind === 'press') return { ...deed, who: this.hand.place(deed.who) };
    if (deed.kind !== 'heard' && deed.kind !== 'snoozed') return deed;
    const ids = this.hand.fold.callsOf(this.hand.kitchen).map(({ id }) => id);
    const names = ['lane.pot:', 'lane.tray:'].map((lane) => deed.call.replace(/^oven:/, lane));
    const call = ids.find((one) => names.includes(one));
    return { ...deed, call: call ?? deed.call };
  }

  /** What nothing takes changes nothing, however it comes to the fold. */
  private checkRefusal(fact: Fact): void {
    const { fold, kitchen, machines } = this.hand;
    const { taken, kitchen: after } = fold.apply(kitchen, machines, fact);
    expect([taken, fold.positionOf(after)]).toEqual([false, fold.positionOf(kitchen)]);
    expect(after.standing).toBe(kitchen.standing);
  }

  private follow(): void {
    this.shadow.follow(this.hand, this.mirror);
    const { position } = this.hand.records.at(-1)!;
    this.stored.push({ position, model: copyOf(this.mirror.model) });
  }

  private reload(): void {
    const { hand } = this;
    const runs = hand.modelRuns;
    const { kitchen, trouble } = hand.replayed();
    expect(trouble, 'the log replays').toBeNull();
    expect(hand.modelRuns, 'no model is asked on replay').toBe(runs);
    expect(Object.keys(kitchen.starts)).toEqual(Object.keys(hand.kitchen.starts));
    hand.kitchen = hand.fold.advance(kitchen, hand.machines, hand.now).kitchen;
    checkMirror(hand, this.mirror);
  }

  private turn(minutes: number): void {
    this.hand.turn(minutes);
    advance(this.mirror.model, this.hand.now);
  }

  private press(press: Press): void {
    const done = { kind: 'press', ...press } as const;
    this.do(done as Deed, done);
  }

  private act({ do: name, a, b, c }: Command): void {
    const { hand, mirror } = this;
    const { model } = mirror;
    const running = Object.keys(model.bakes);
    const someone = pick(['oven', ...running, ...running, 'nobody'], a)!;
    switch (name) {
      case 'onward':
        return this.onward(a, b);
      case 'turn':
        return this.turnBy(a, b);
      case 'press': {
        const act = pick(
          [...BAKE_ACTS, ...OVEN_ACTS].filter((one) => one !== 'ended'),
          b,
        )!;
        return this.press({ who: someone, act });
      }
      case 'answer': {
        const place = someone === 'oven' ? model.oven : model.bakes[someone];
        const asked = LIST_AT[place?.stage ?? ''] ?? { list: 'beforeOven' as const };
        const items = [...itemsOf(asked.list, recipeAt(model, someone)), 'nonsense'];
        const value = pick(['ready', 'wet', 'close', undefined], c);
        const item = pick(items, b)!;
        return this.press({ who: someone, act: 'answer', item, ...(value ? { value } : {}) });
      }
      case 'load': {
        const loaves = [...model.waiting, ...model.load, ...model.out, 'nonsense'];
        const some = loaves.filter((_, i) => ((b + 1) >> i) % 2 === 1);
        return this.press({
          who: 'oven',
          act: 'loaded',
          loaves: c % 4 === 0 ? [...some, ...some] : some,
        });
      }
      case 'fewer': {
        const own = model.bakes[someone]?.loaves ?? [];
        const some = own.filter((_, i) => ((b + 1) >> i) % 2 === 1);
        const loaves = pick([some, some, some, own, [...some, 'nonsense']], c)!;
        return this.press({ who: someone, act: 'fewer', loaves });
      }
      case 'lidOff':
        return this.press({
          who: 'oven',
          act: c % 2 === 0 ? 'lidOff' : 'steamOut',
          was: hand.now - ((b % 50) - 4) * MINUTE,
        });
      case 'reading':
        return this.reading(someone, b, c);
      case 'correct': {
        const old = hand.records.filter(({ fact }) => fact.kind === 'reading');
        const target = pick(old, a)?.fact.id ?? 'f0';
        const reading = readingOf(b, c);
        return this.do({ kind: 'correct', target, reading }, { kind: 'correct', target, reading });
      }
      case 'heard': {
        const call = this.call(a);
        return this.do({ kind: 'heard', call }, { kind: 'heard', call });
      }
      case 'snooze': {
        const done = {
          kind: 'snoozed',
          call: this.call(a),
          until: hand.now + pick([120, 120, 60, 121, 0, -5], b)! * 1_000,
        } as const;
        return this.do(done, done);
      }
      case 'takeBack':
      case 'takeBackOther': {
        const wrong = pick(hand.records, a)?.fact.id ?? 'f0';
        const target = name === 'takeBack' ? (mirror.latest ?? 'f0') : wrong;
        return this.do({ kind: 'takeBack', target }, { kind: 'takeBack', target });
      }
      case 'starter': {
        const deed = { kind: 'starter', ...deedOf(hand.now, a, b) } as const;
        return this.do(deed, deed);
      }
      case 'start':
        return this.start(running, a, b, c);
      case 'end':
        return this.press({ who: someone, act: 'ended' });
      case 'reload':
        return this.reload();
      case 'jump':
        return this.jump(a);
      case 'wallBack':
        hand.wallBack(a % 600);
        return this.turn(0);
    }
  }

  /** The right press, or the clock turned to where something is to do. */
  private onward(a: number, b: number): void {
    const presses = rightPresses(this.mirror.model);
    const next = this.hand.fold.wanted(this.hand.kitchen).alarmAt;
    if (next !== null && (presses.length === 0 || b % 4 === 0)) return this.turnBy(0, 0);
    const press = pick(presses, a);
    // A baker says how much is kept back; an older log does not.
    const kept = press?.act === 'starterKept' && b % 2 === 0 ? { grams: 30 } : {};
    return press ? this.press({ ...press, ...kept }) : this.start([], a, b, 0);
  }

  /** To the next due, just before it, past it, or a little. */
  private turnBy(a: number, b: number): void {
    const due = this.hand.fold.wanted(this.hand.kitchen).alarmAt;
    const left = due === null ? 5 : (due - this.hand.now) / MINUTE;
    const before = Math.max(0, left - 1 / MINUTE);
    this.turn(pick([left, before, left + (b % 90), b % 10, (b % 3_000) / 2], a)!);
  }

  /** A call that stands, a silenced one too, or none at all. */
  private call(n: number): string {
    const ids = this.hand.fold
      .callsOf(this.hand.kitchen)
      .map(({ id }) => id.replace(/^lane\.(pot|tray):/, 'oven:'));
    return pick([...ids, ...ids, ...ids, 'oven:lift:0'], n)!;
  }

  private reading(bake: string, b: number, c: number): void {
    const done = {
      kind: 'reading',
      by: c % 3 === 0 ? 'probe' : 'hand',
      bake,
      reading: readingOf(b, c),
    } as const;
    this.do(done, done);
  }

  private start(running: readonly string[], a: number, b: number, c: number): void {
    if (running.length >= 3) return;
    const bake = c % 9 === 0 ? (pick([...running, 'oven'], a) ?? 'oven') : `b${(this.bakes += 1)}`;
    const from = b % 3 === 0 ? pick(FROM, a)! : pick(this.hand.fold.JOINABLE, a)!;
    const own = Array.from({ length: 1 + (c % 3) }, (_, i) => `${bake}.${i + 1}`);
    const { load, out, waiting } = this.mirror.model;
    const loaves = pick(
      [own, own, own, own, own, [], [...own, ...own], [...own, ...load, ...out, ...waiting]],
      b,
    )!;
    const recipe = pick(RECIPES, Math.floor(b / 7))!;
    const place = joinedAt(from, loaves, recipe);
    const deed = { kind: 'start', bake, loaves, from, recipe, kitchen: 24 } as const;
    this.do(deed, { kind: 'start', bake, place });
  }

  /** To one of the last positions of this log, where a bake may stand whose start was taken back. */
  private jump(n: number): void {
    const there = pick(this.stored.slice(-20), n);
    if (!there) return;
    this.mirror.jump(there.model, this.hand.now);
    expect(this.hand.do({ kind: 'jump', position: there.position })).toBe(true);
    this.seen.add('jump');
    this.follow();
  }
}
