import { createMemo, createRoot } from 'solid-js';
import { openHouse } from '../../../src/app/open-house.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import type { House } from '../../../src/screens/house.ts';
import { makeCountedIds } from '../../fakes/counted-ids.ts';
import { makeMemorySettings } from '../../fakes/memory-settings.ts';
import { makeMemoryStore } from '../../fakes/memory-store.ts';
import { makeTimedSound, type TimedRing, type TimedSound } from '../../fakes/timed-sound.ts';
import { makeTurnedClock, type TurnedClock } from '../../fakes/turned-clock.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { OwedCalls } from './owed-calls.ts';
import { endsOf, shownIn } from './shown-in.ts';
import { wrongRings, type HeardRing } from './wrong-rings.ts';

/** The page's own beat while nothing happens: seldom, for nothing hangs by it. */
const BEAT = 28_000;

/** By so much the clocks may drift, ms. */
const DRIFT = 5_000;
/** A look or an act is silent after its reminder. */
const SAID = 5 * MINUTE;

/**
 * A tablet that lies about in a kitchen: it is awake, sleeps, has its clock set, comes to another zone, and is
 * shut and opened again. The whole house runs on it; what has to be heard is reckoned beside it. True time goes
 * on in all of that, and nowhere else. Give `TZ` back with `leave`.
 */
export class Tablet {
  house!: House;
  sound!: TimedSound;
  clock!: TurnedClock;
  readonly owed: OwedCalls;
  readonly heard: HeardRing[] = [];
  readonly faults: string[] = [];
  readonly #store = makeMemoryStore();
  readonly #settings = makeMemorySettings();
  readonly #ids = makeCountedIds();
  readonly #before = process.env['TZ'];
  #world!: ReturnType<typeof makeFakeWorld>;
  #steady = 0;
  #begun: { readonly ring: TimedRing; readonly id: string | undefined }[] = [];
  #rows = 0;
  #shown: () => readonly string[] = () => [];
  #close: () => void = () => undefined;
  /** True time until which a ring may be laid anew and go on: its clock went back. */
  #mayResume = -Infinity;
  /** Kitchen time as it was last seen by this page. */
  #latest = 0;
  /** Since when the page is open, by what was heard. */
  #openSince = 0;

  private constructor(
    start: Instant,
    private zone: string,
  ) {
    this.owed = new OwedCalls(start);
    process.env['TZ'] = zone;
  }

  static async on(start: Instant, zone: string): Promise<Tablet> {
    const tablet = new Tablet(start, zone);
    await tablet.#open(start);
    return tablet;
  }

  async #open(wall: Instant): Promise<void> {
    const clock = makeTurnedClock(wall);
    const world = makeFakeWorld({ store: this.#store });
    this.clock = clock;
    let ringing = (): string | undefined => undefined;
    this.sound = makeTimedSound(clock, (ring) => this.#begun.push({ ring, id: ringing() }));
    this.#world = world;
    this.#steady = 0;
    const { sound } = this;
    const settings = this.#settings;
    const there = { clock, sound, settings, ids: this.#ids, zone: () => this.zone };
    this.house = await createRoot((close) => {
      this.#close = close;
      return openHouse({ ...world, ...there });
    });
    ringing = () => this.house.ringing()?.id;
    this.#shown = createRoot(() =>
      createMemo(() =>
        endsOf(this.house).map(
          (at, n) => (n === 0 ? `${this.house.day(at)} ` : '') + this.house.hour(at),
        ),
      ),
    );
    this.#note();
  }

  leave(): void {
    this.#close();
    if (this.#before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = this.#before;
  }

  get truth(): number {
    return this.owed.truth;
  }

  /** Awake for so long. */
  pass(ms: number): void {
    for (let left = ms; left > 0; left -= BEAT) {
      this.#run(Math.min(left, BEAT));
      this.#beat();
    }
  }

  #beat(): void {
    this.owed.read();
    this.#world.beat();
    this.#note();
  }

  #run(ms: number): void {
    this.#steady = this.clock.steady();
    const truth = this.owed.truth;
    this.owed.awake(ms);
    this.clock.turn(ms);
    this.#note(truth);
  }

  /** Nothing runs for so long, and its clock is set meanwhile. Then the page comes to within `lag` ms. */
  #leap(slept: number, set: number, lag: number, isHidden: boolean): void {
    if (isHidden) this.#world.glance();
    this.owed.leapt(slept, set, !isHidden);
    if (set < 0) this.#mayResume = this.owed.truth + 1_000;
    this.clock.sleep(slept + set);
    // The page hears of it by a timer of its own, or by the beat; either comes first.
    if (lag > 0) this.#run(lag);
    this.#beat();
  }

  /** @param set what its clock was set by meanwhile, as by the network. */
  sleep(ms: number, { set = 0, lag = 0, isHidden = true } = {}): void {
    this.#leap(ms, set, lag, isHidden);
    const { away } = this.house;
    const gone = ms + set;
    if (gone > MINUTE && isHidden && !((away()?.to ?? 0) >= this.owed.now - lag - 1)) {
      this.faults.push(`${this.truth}: a sleep of ${gone} ms is not told.`);
    }
    this.house.readBack();
  }

  /** Somebody sets its clock while the page is in sight. */
  set(ms: number, lag = 0): void {
    this.#leap(0, ms, lag, false);
  }

  /** It comes to another zone; the page knows within a second. */
  goTo(zone: string): void {
    this.zone = zone;
    process.env['TZ'] = zone;
    this.pass(1_000);
  }

  /** The page is shut, and opened again so much later. */
  async reopen(closed: number): Promise<void> {
    this.#close();
    this.owed.reopened(closed);
    this.#openSince = this.heard.length;
    this.#latest = 0;
    await this.#open(this.clock.now() + closed);
  }

  /** Its disk is slow: nothing is written until the returned function is called. */
  pauseWrites = (): (() => void) => this.#store.pause();

  /** One deed, which has to be taken. */
  async take(deed: Deed): Promise<void> {
    await this.house.take(deed);
    this.#readRows();
    this.#note();
    const last = this.house.records().at(-1)?.fact;
    if (last?.kind !== deed.kind) throw new Error(`Refused: ${JSON.stringify(deed)}.`);
  }

  /** What the house did by itself: a bake begun, a leap answered. */
  async did(work: Promise<unknown>): Promise<void> {
    await work;
    this.#readRows();
    this.#note();
  }

  /** A touch that silences what rings. */
  async hush(): Promise<void> {
    const rows = this.house.records().length;
    this.house.hush();
    while (this.house.records().length === rows) await new Promise((then) => setImmediate(then));
    this.#readRows();
    this.#note();
  }

  #readRows(): void {
    const records = this.house.records();
    for (; this.#rows < records.length; this.#rows += 1) this.owed.row(records[this.#rows]!);
  }

  /** Notes what began to be heard; what was silenced in the same instant was not. */
  #note(since = this.owed.truth): void {
    for (const [n, { ring, id: then }] of this.#begun.entries()) {
      if (ring.stopped === ring.begun) continue;
      // The last one may have begun a moment before the kitchen knew.
      const id = n === this.#begun.length - 1 ? this.house.ringing()?.id : then;
      const truth = Math.min(this.owed.truth, since + Math.max(0, ring.begun! - this.#steady));
      const again = this.heard.slice(this.#openSince).at(-1)?.id === id;
      if (again && truth <= this.#mayResume) continue;
      const { kind, late } = ring;
      this.heard.push({ truth, wall: ring.since + late, id: id ?? 'none', kind, late });
    }
    this.#begun = [];
  }

  /** Everything that can be seen at this instant, held against what it has to be. */
  check(): void {
    const { house, owed } = this;
    const told = (what: string, is: unknown, wanted: unknown): void => {
      if (JSON.stringify(is) === JSON.stringify(wanted)) return;
      this.faults.push(
        `${this.truth}: ${what} ${JSON.stringify(is)}, not ${JSON.stringify(wanted)}.`,
      );
    };
    told('now', house.now(), owed.now);
    if (house.now() < this.#latest - DRIFT) told('time went back to', house.now(), this.#latest);
    this.#latest = house.now();
    const ids = (calls: readonly { readonly id: string }[]) => calls.map(({ id }) => id).toSorted();
    told('calls', ids(house.kitchen().attention.context.calls), ids(owed.calls()));
    const rings = owed.ringing();
    told('rings', house.ringing()?.id, rings?.id);
    // One that has said all it has to say is the same whether it is laid or not.
    const isOver = rings !== null && rings.kind !== 'hot' && owed.now - rings.since > SAID;
    const sounds = this.sound.heard().map(({ kind }) => kind);
    if (!isOver || sounds.length > 0) told('sounds', sounds, rings ? [rings.kind] : []);
    const hours = endsOf(house).map((at) => shownIn(this.zone, owed.wallOf(at)));
    told(
      'hours',
      this.#shown(),
      hours.map((hour, n) => (n === 0 ? hour : hour.slice(-5))),
    );
  }

  /** All that was wrong so far. */
  judge(): readonly string[] {
    const { faults, rings } = this.owed;
    return [...this.faults, ...faults, ...wrongRings(this.heard, rings)];
  }
}
