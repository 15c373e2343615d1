import type { CallKind } from '../../../machines/ports.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { Fact } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import { LedByTime, type Owed } from './led-by-time.ts';

/** A call that has to begin to be heard, and when: true time, ms since the walk began. */
export interface OwedRing {
  readonly truth: number;
  readonly id: string;
  readonly kind: CallKind;
  /** How long after its deadline; null where that says nothing, as after a call was put off. */
  readonly late: number | null;
}

/** The clock went ahead in sight: by how much, and kitchen time before it. */
export interface Ahead {
  readonly by: number;
  readonly from: Instant;
}

const URGENCY: readonly CallKind[] = ['hot', 'act', 'look'];
/** Set back by less it is the clocks' drift. */
const DRIFT = 5_000;
/** Ahead by less nobody is asked. */
const ASKED = 15 * MINUTE;

const saysOf = (fact: Fact): readonly string[] => {
  if (fact.kind === 'press') return [fact.who];
  if (fact.kind === 'timer') return [fact.timer];
  return 'bake' in fact ? [fact.bake] : [];
};
const isHands = ({ kind }: Fact): boolean => kind !== 'heard' && kind !== 'snoozed';

/**
 * What has to be heard, and when, reckoned from two things alone: what happens to the device in true time,
 * and the deadlines that stand in the rows of the log. What is meant by an alarm's instant: two-days.test.ts.
 */
export class OwedCalls {
  truth = 0;
  /** Kitchen time by the rule. */
  now: Instant;
  readonly rings: OwedRing[] = [];
  readonly faults: string[] = [];
  /** Leaps ahead in sight that nobody has answered yet. */
  asked: Ahead[] = [];
  #wall: Instant;
  #led: LedByTime | null = null;
  #ringing: string | null = null;
  #heard = new Set<string>();
  #putOff = new Map<string, Instant>();
  #again = new Set<string>();
  /** Kitchen time before the clock, as the disk has it. */
  #kept = 0;
  /** Kitchen time of the last row, or as the last deadline was met: it never runs back behind it. */
  #floor = 0;
  readonly #rows: LogRecord[] = [];
  readonly #recipes = new Map<string, Recipe>();

  constructor(wall: Instant) {
    this.now = wall;
    this.#wall = wall;
  }

  /** The device's clock at a kitchen instant. */
  wallOf = (at: Instant): Instant => at - (this.now - this.#wall);

  /** All that calls now, heard or not. */
  calls = (): readonly Owed[] => this.#led?.calls() ?? [];

  /** When each wait ends. */
  ends = (): Readonly<Record<string, Instant>> => this.#led?.ends() ?? {};

  /** What is to be heard now: the most urgent of all that is unheard, and of these the oldest. */
  ringing(): Owed | null {
    const unheard = this.calls().filter(({ id }) => !this.#heard.has(id));
    const rank = ({ kind }: Owed) => URGENCY.indexOf(kind);
    return unheard.toSorted((a, b) => rank(a) - rank(b) || a.since - b.since)[0] ?? null;
  }

  /** The device is awake for so long, its clock left alone. */
  awake(ms: number): void {
    const from = { now: this.now, truth: this.truth };
    this.#to(from.now + ms, (at) => from.truth + Math.max(0, at - from.now));
    this.#wall += ms;
    this.truth = from.truth + ms;
  }

  /** It slept for so long, and its clock was set by `set` meanwhile; in sight, its page was not hidden. */
  leapt(slept: number, set: number, inSight: boolean): void {
    const seen = slept + set;
    const before = this.now;
    this.#wall += seen;
    this.truth += slept;
    const goesOn = seen < -DRIFT ? before : before + seen;
    if (seen < -DRIFT) this.#kept = goesOn - this.#wall;
    if (seen > ASKED && inSight) this.asked.push({ by: seen, from: before });
    this.now = goesOn;
    this.#to(goesOn, () => this.truth);
  }

  /** Its clock is read: kitchen time never runs back behind what was written or was due. */
  read(): void {
    this.now = Math.max(this.now, this.#floor);
  }

  /** The page was closed for so long, and is opened anew. */
  reopened(closed: number): void {
    this.#wall += closed;
    this.truth += closed;
    this.asked = [];
    const last = this.#rows.at(-1);
    this.#floor = last?.fact.at ?? 0;
    this.now = Math.max(this.#wall + this.#kept, this.#floor);
    this.#ringing = null;
    if (last) this.#stand(last);
  }

  /** A row was written. */
  row(record: LogRecord): void {
    const { fact } = record;
    this.read();
    if (fact.kind === 'start') this.#recipes.set(fact.bake, fact.recipe);
    if (fact.kind === 'jump') this.#judge(record);
    if (Math.abs(fact.at - this.now) > 1)
      this.faults.push(`Row ${record.seq}: ${fact.at - this.now} ms off.`);
    const before = this.#rows.at(-1)?.fact.at ?? 0;
    if (fact.at < before) this.faults.push(`Row ${record.seq} is before the row before it.`);
    this.#rows.push(record);
    this.#kept = fact.at - fact.raw;
    this.#floor = fact.at;
    this.#stand(record);
  }

  #stand(record: LogRecord): void {
    const { heard, snoozed } = record.position.attention;
    this.#led = this.#ledFrom(record);
    this.#heard = new Set(heard);
    const puts = Object.entries(snoozed);
    this.#again = new Set(puts.map(([id]) => id));
    this.#putOff = new Map(
      puts.flatMap(([id, { until }]) => (until === null ? [] : [[id, until]])),
    );
    this.#to(this.now, () => this.truth);
  }

  #ledFrom = ({ position }: LogRecord): LedByTime =>
    new LedByTime(position, (bake) => this.#recipes.get(bake)!);

  /** Goes on to a kitchen instant; what is heard first in the end of a moment begins in it. */
  #to(until: Instant, truthAt: (at: Instant) => number): void {
    const isAtOnce = truthAt(until) === truthAt(this.now);
    const go = (at: Instant): void => {
      this.#led?.to(at, () => {
        this.#floor = isAtOnce ? until : this.#led!.now;
        if (!isAtOnce) this.#hear(this.#led!.now, truthAt(this.#led!.now));
      });
      this.now = Math.max(this.now, at);
    };
    for (;;) {
      const ends = [...this.#putOff].filter(([, at]) => at <= until);
      const [first] = ends.toSorted(([, a], [, b]) => a - b);
      if (first === undefined) break;
      const [id, at] = first;
      go(at);
      this.#floor = isAtOnce ? until : at;
      this.#putOff.delete(id);
      this.#heard.delete(id);
      if (!isAtOnce) this.#hear(at, truthAt(at));
    }
    go(until);
    this.#hear(until, truthAt(until));
  }

  #hear(now: Instant, truth: number): void {
    const call = this.ringing();
    if (call?.id === this.#ringing) return;
    this.#ringing = call?.id ?? null;
    if (call === null) return;
    const late = this.#again.has(call.id) ? null : now - call.since;
    this.rings.push({ truth, id: call.id, kind: call.kind, late });
  }

  /** Something it did was taken back after an instant. */
  #tookBack = (who: string, from: Instant): boolean =>
    this.#rows.some(({ fact }) => {
      if (fact.kind !== 'takeBack' || fact.at <= from) return false;
      const taken = this.#rows.find((row) => row.fact.id === fact.target);
      return taken !== undefined && saysOf(taken.fact).includes(who);
    });

  /**
   * *It was set*: what waited as the clock leapt, and nobody did anything to since, stands as if it had not
   * leapt: as long to go, and called since then only what is due by that. All else stands. Reckoned for each by
   * itself, from the place before the first leap that came after it was last touched.
   */
  #judge(jump: LogRecord): void {
    const last = this.#rows.findLast(({ fact }) => isHands(fact))!;
    const [stands, is] = [this.#ledFrom(last), this.#ledFrom(jump)];
    const names = [...Object.keys(stands.stages()), ...Object.keys(last.position.timers)];
    for (const who of new Set(names)) {
      const touches = this.#rows.filter(({ fact }) => saysOf(fact).includes(who));
      const touched = touches.at(-1)?.fact.at ?? 0;
      const leaps = this.asked.filter(({ from }) => from >= touched);
      const from = leaps[0]?.from ?? Infinity;
      // A press of before that was taken back since has it stand where it was then: not judged.
      if (this.#tookBack(who, from)) continue;
      const before = this.#rows.findLast(({ fact }) => fact.at <= from)!;
      const old = this.#ledFrom(before);
      // Others led it on by what they did: the oven has a bake's loaves, and a bake goes on when they are out.
      const entered = stands.firstEntered(who, from);
      const isLed = entered === null || Object.values(old.marksOf(who)).includes(entered);
      const by = isLed && old.knows(who) ? leaps.reduce((sum, leap) => sum + leap.by, 0) : 0;
      const [owed, at] = by > 0 ? [old, this.now - by] : [this.#ledFrom(last), this.now];
      owed.to(at);
      is.to(this.now);
      // Whether it is wanted at all hangs by the bakes: it may have to go off again.
      if (who === 'oven' && owed.stages()[who] !== is.stages()[who]) continue;
      const wanted = JSON.stringify(owed.standing(who, by));
      const found = JSON.stringify(is.standing(who, 0));
      if (found !== wanted) this.faults.push(`"It was set": ${who} ${found}, not ${wanted}.`);
    }
    this.asked = [];
  }
}
