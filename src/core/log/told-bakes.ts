import type { CutRead } from '../records/cut-read.ts';
import type { Fact } from '../records/fact.ts';

export type StartFact = Extract<Fact, { kind: 'start' }>;
type Press = Extract<Fact, { kind: 'press' }>;
type Telling = StartFact | Press | Extract<Fact, { kind: 'cut' | 'jump' }>;

/** What a log told of one bake so far. */
export interface ToldBake {
  readonly start: StartFact;
  /** Those it was begun with, or that remain once some were given up. */
  loaves: number;
  /** The press that put it away or ended it. */
  end: Press | null;
  /** It went over and was baked flat. */
  tray: boolean;
}

/** What a log told of its bakes, row by row. It grows; what comes of it is made by others. */
export interface Told {
  /** By the ids of their starts, the first begun first. */
  readonly bakes: Map<string, ToldBake>;
  /** What cut loaves showed, by the ids of their bakes' starts: a bake's last one. */
  readonly cuts: Map<string, CutRead>;
  /** Starts of bakes that were told of since that was last asked, and of those that have no end. */
  readonly touched: Set<string>;
  readonly endless: Set<string>;
  /** The last that has this name. */
  readonly running: Map<string, ToldBake>;
  /** All that tells anything, with what was taken back. */
  readonly facts: Map<string, Telling>;
  readonly withdrawn: Set<string>;
  /** Something was taken back that had been told. */
  stale: boolean;
}

export const nothingTold = (): Told => ({
  bakes: new Map(),
  cuts: new Map(),
  touched: new Set(),
  endless: new Set(),
  running: new Map(),
  facts: new Map(),
  withdrawn: new Set(),
  stale: false,
});

const ACTS: ReadonlySet<string> = new Set<Press['act']>(['noted', 'ended', 'trayBaked', 'fewer']);

const tell = (told: Told, fact: Telling): void => {
  if (fact.kind === 'start') {
    const its: ToldBake = { start: fact, loaves: fact.loaves.length, end: null, tray: false };
    told.bakes.set(fact.id, its);
    told.running.set(fact.bake, its);
    told.endless.add(fact.id);
    told.touched.add(fact.id);
    return;
  }
  if (fact.kind === 'cut') {
    told.cuts.set(fact.target, fact.read);
    told.touched.add(fact.target);
    return;
  }
  if (fact.kind === 'jump') {
    // The kitchen may be put back to a place where one runs that was over.
    for (const { start } of Object.values(fact.position.bakes)) {
      const its = told.bakes.get(start);
      if (its === undefined || its.end === null) continue;
      its.end = null;
      told.endless.add(start);
      told.touched.add(start);
    }
    return;
  }
  const its = told.running.get(fact.who);
  if (its === undefined) return;
  if (fact.act === 'fewer') its.loaves = fact.loaves?.length ?? its.loaves;
  else if (fact.act === 'trayBaked') its.tray = true;
  else {
    its.end = fact;
    told.endless.delete(its.start.id);
  }
  told.touched.add(its.start.id);
};

/** One fact more. What is of no bake's line costs next to nothing. */
export function hear(told: Told, fact: Fact): void {
  if (fact.kind === 'takeBack') {
    told.withdrawn.add(fact.target);
    told.stale ||= told.facts.has(fact.target);
    return;
  }
  const tells =
    fact.kind === 'start' ||
    fact.kind === 'cut' ||
    fact.kind === 'jump' ||
    (fact.kind === 'press' && ACTS.has(fact.act));
  if (!tells) return;
  told.facts.set(fact.id, fact);
  if (!told.withdrawn.has(fact.id)) tell(told, fact);
}

/** Where something was taken back all is told anew without it: from the few facts that tell, not the log. */
export function tellAnew(told: Told): void {
  if (!told.stale) return;
  told.stale = false;
  told.bakes.clear();
  told.cuts.clear();
  told.endless.clear();
  told.running.clear();
  for (const [id, fact] of told.facts) if (!told.withdrawn.has(id)) tell(told, fact);
}
