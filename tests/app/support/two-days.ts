import { DAY, HOUR, MINUTE, type Instant } from '../../../src/core/units.ts';
import { makeDice, type Dice } from '../../truth/synthetic.ts';
import { allIn, answersTo, formulaOf, nextDeeds } from './hands.ts';
import { Tablet } from './tablet.ts';
import { tallyOf, type Tally } from './tally.ts';

/** What a walk came by, and what was wrong in it. */
export interface Walked {
  readonly faults: readonly string[];
  readonly tally: Tally;
  /** The zone it began in, and the night that it went through. */
  readonly night: string;
  readonly sleeps: number;
  readonly sets: number;
  readonly zones: number;
  readonly reopened: number;
  readonly bakes: number;
}

const LONG = 2 * DAY;

/**
 * Nights in which a zone's hours go forward or back, the last second of 31 bits, and a plain one; UTC. By the
 * IANA time zone database, as this machine has it.
 */
const NIGHTS: readonly (readonly [zone: string, night: Instant])[] = [
  ['Europe/Berlin', Date.UTC(2031, 2, 30, 1)],
  ['UTC', 2 ** 31 * 1000],
  ['Australia/Lord_Howe', Date.UTC(2031, 9, 4, 15, 30)],
  ['Pacific/Auckland', Date.UTC(2031, 3, 5, 14)],
  ['Europe/Berlin', Date.UTC(2031, 9, 26, 1)],
  ['Australia/Lord_Howe', Date.UTC(2031, 3, 5, 15)],
  ['Pacific/Auckland', Date.UTC(2031, 8, 27, 14)],
  ['America/St_Johns', Date.UTC(2031, 2, 9, 5, 30)],
  ['Asia/Kathmandu', Date.UTC(2031, 4, 3, 20)],
];
const ZONES = [
  ...new Set(NIGHTS.map(([zone]) => zone)),
  ...['Africa/Lagos', 'Asia/Tokyo', 'America/Los_Angeles', 'Pacific/Kiritimati', 'Pacific/Chatham'],
];
/** Two in pots, one on the stone, and one that proves warm, in tins. */
const BREADS = ['cherry-hazelnut', 'lane-wheat', 'olive-seed', 'barley-tin'];
const JOINS = ['read.plan', 'levain.feed', 'mix.weigh', 'bulk.proving', 'shape.divide'];

const one = <T>(dice: Dice, of: readonly T[]): T => of[Math.floor(dice.between(0, of.length))]!;
const isSo = (dice: Dice, chance: number): boolean => dice.between(0, 1) < chance;
/** As likely in each size: from seconds to days, ms. */
const anyLength = (dice: Dice, from: number, to: number): number =>
  Math.round(Math.exp(dice.between(Math.log(from), Math.log(to))));

/** Somebody who bakes by this tablet. */
class Baker {
  bakes = 0;
  #timers = 0;

  constructor(
    private readonly tablet: Tablet,
    private readonly dice: Dice,
  ) {}

  async begin(): Promise<void> {
    const { tablet, dice } = this;
    const formula = formulaOf(one(dice, BREADS));
    const from = formula.process.warm > 0 ? 'bulk.proving' : one(dice, JOINS);
    const loaves = isSo(dice, 0.5) ? 2 : 1;
    await tablet.did(tablet.house.begin({ formula, loaves, kitchen: 22, from: from as never }));
    this.bakes += 1;
  }

  /** A timer; or the starter is put out on the counter, where it wants a feed. */
  async remind(): Promise<void> {
    const { tablet, dice } = this;
    const { kitchen, midnight } = tablet.house;
    const { timers, starter } = kitchen();
    const { now } = tablet.owed;
    if (isSo(dice, 0.3) && starter.put?.where !== 'counter') {
      const night = { midnight: midnight(now), from: 22 * 60, to: 6 * 60 };
      return tablet.take({ kind: 'starter', did: 'put', where: 'counter', night });
    }
    if (Object.keys(timers).length >= 3) return;
    const timer = `t${(this.#timers += 1)}`;
    const until = now + anyLength(dice, 30_000, 20 * HOUR);
    const call = isSo(dice, 0.5) ? 'act' : 'hot';
    return tablet.take({ kind: 'timer', timer, name: 'other', until, call });
  }

  /** Does what rings; or hushes it, puts it off, or takes back the last press. False: nothing is to be done. */
  async act(): Promise<boolean> {
    const { tablet, dice } = this;
    const { house } = tablet;
    const call = house.ringing();
    if (call === null) return this.#work();
    const { snoozed } = house.kitchen().attention.context;
    const mayWait = call.kind !== 'hot' && (snoozed[call.id]?.times ?? 0) < 2;
    const how = dice.between(0, 1);
    if (how < 0.04) await tablet.did(house.takeBack());
    else if (how < 0.2) await tablet.hush();
    else if (how < 0.3 && mayWait) {
      await tablet.take({ kind: 'snoozed', call: call.id, until: tablet.owed.now + 2 * MINUTE });
    } else {
      const isReady = isSo(dice, 0.8);
      for (const deed of answersTo(house.kitchen(), call, isReady)) await tablet.take(deed);
    }
    return true;
  }

  /** What stands to be done though nothing rings. */
  async #work(): Promise<boolean> {
    const kitchen = this.tablet.house.kitchen();
    const { calls } = kitchen.attention.context;
    const all = [
      ...calls.map((call) => answersTo(kitchen, call)),
      ...allIn(kitchen).map((who) => nextDeeds(kitchen, who)),
    ];
    const deeds = all.find((some) => some.length > 0) ?? [];
    for (const deed of deeds) await this.tablet.take(deed);
    return deeds.length > 0;
  }

  /** Says whether the clock was set, where that is asked. */
  async answer(wasSet: boolean): Promise<void> {
    const { house, owed } = this.tablet;
    if (house.leaps().ahead?.inSight !== true) return;
    if (wasSet) return this.tablet.did(house.clockWasWrong());
    house.leapRead('ahead');
    owed.asked = [];
  }
}

/** What happens to the tablet by itself. */
class Hazards {
  readonly counts = { sleeps: 0, sets: 0, zones: 0, reopened: 0 };
  /** Whether the last leap in sight was a clock that was set. */
  wasSet = false;

  constructor(
    private readonly tablet: Tablet,
    private readonly dice: Dice,
  ) {}

  async strike(): Promise<void> {
    const { tablet, dice } = this;
    const what = dice.between(0, 1);
    if (what < 0.45) this.#sleep();
    else if (what < 0.75) this.#set();
    else if (what < 0.9) {
      this.counts.zones += 1;
      tablet.goTo(one(dice, ZONES));
    } else {
      this.counts.reopened += 1;
      await tablet.reopen(anyLength(dice, 500, 6 * HOUR));
    }
    tablet.pass(1_000);
    tablet.check();
  }

  /** Now and then the network sets the clock meanwhile; now and then the page stood in sight, as under a lid. */
  #sleep(): void {
    const { tablet, dice } = this;
    this.counts.sleeps += 1;
    const set = isSo(dice, 0.15) ? Math.round(dice.normal(0, 1) * HOUR) : 0;
    const isHidden = isSo(dice, 0.8);
    const lag = Math.round(dice.between(0, 999));
    tablet.sleep(anyLength(dice, 1_000, 14 * HOUR), { set, lag, isHidden });
    if (!isHidden) this.wasSet = false;
  }

  #set(): void {
    const { tablet, dice } = this;
    this.counts.sets += 1;
    const isAhead = isSo(dice, 0.5);
    const by = anyLength(dice, 500, 3 * DAY);
    tablet.set(isAhead ? by : -by, Math.round(dice.between(0, 999)));
    if (isAhead) this.wasSet = true;
  }
}

async function walk(tablet: Tablet, dice: Dice): Promise<Omit<Walked, 'faults' | 'night'>> {
  const baker = new Baker(tablet, dice);
  const hazards = new Hazards(tablet, dice);
  /** True time of what comes next. */
  const at = {
    bake: 0,
    act: 0,
    hazard: dice.between(0, 2) * HOUR,
    reminder: dice.between(0, 4) * HOUR,
    answer: Infinity,
  };
  while (tablet.truth < LONG && tablet.judge().length === 0) {
    const next = Math.min(LONG, ...Object.values(at));
    if (next > tablet.truth) tablet.pass(Math.ceil(next - tablet.truth));
    tablet.check();
    const { truth } = tablet;
    if (at.bake <= truth) {
      at.bake = baker.bakes > 2 ? Infinity : truth + dice.between(0, 14) * HOUR;
      await baker.begin();
    }
    if (at.reminder <= truth) {
      at.reminder = truth + dice.between(1, 9) * HOUR;
      await baker.remind();
    }
    if (at.answer <= truth) {
      at.answer = Infinity;
      await baker.answer(hazards.wasSet);
    }
    if (at.act <= truth) {
      const most = isSo(dice, 0.1) ? 2 * HOUR : 4 * MINUTE;
      at.act = truth + ((await baker.act()) ? anyLength(dice, 5_000, most) : 3 * MINUTE);
    }
    if (at.hazard <= truth) {
      await hazards.strike();
      at.answer = isSo(dice, 0.9) ? tablet.truth + anyLength(dice, 5_000, 2 * HOUR) : Infinity;
      at.hazard = tablet.truth + anyLength(dice, 2_000, 8 * HOUR);
    }
  }
  const tally = tallyOf(tablet.heard, tablet.owed.rings);
  return { tally, ...hazards.counts, bakes: baker.bakes };
}

/**
 * Two days of one kitchen, thrown by a seed: up to four bakes with timers and a starter, and all that happens to
 * the tablet they are baked by. Each ninth seed has the same night.
 */
export async function twoDays(seed: number): Promise<Walked> {
  const dice = makeDice(seed);
  const [zone, night] = NIGHTS[seed % NIGHTS.length]!;
  const tablet = await Tablet.on(Math.round(night - dice.between(4, 40) * HOUR), zone);
  try {
    const walked = await walk(tablet, dice);
    const day = new Date(night).toISOString().slice(0, 10);
    return { faults: tablet.judge(), night: `${zone}, ${day}`, ...walked };
  } finally {
    tablet.leave();
  }
}
