import { isWarm } from '../formula/is-warm.ts';
import type { Metres } from '../oven/boiling.ts';
import { ONE_LOOK } from '../readiness/one-look.ts';
import type { Fact } from '../records/fact.ts';
import type { LogRecord } from '../records/record.ts';
import type { Seen } from '../records/seen.ts';
import { MINUTE, type Celsius, type Instant } from '../units.ts';
import { bakePage, type BakePage } from './bake-page.ts';
import type { BakeLoad } from './bake-loads.ts';
import { withdrawnIn, type BakeRows } from './bake-rows.ts';
import { bulkEnd, coldHours } from './bulk-end.ts';
import { doorIndex } from './door-index.ts';
import type { LoafDay } from './loaf-day.ts';
import { standingLog } from './standing-log.ts';

/** What a rise told as the highest picture or more is in doubt by besides, % points: a picture's step. Judgement. */
const OR_MORE = 25;
/** Later than this after the oven nobody knows when a loaf was cut, min. Judgement. */
const CUT_SEEN = 120;
/** An answer of a look, as a reading has it. */
const DENTS = { springs: 'springs', slowly: 'slow', stays: 'stays' } as const;

type Press = Extract<Fact, { kind: 'press' }>;

export interface DayAsked {
  /** When the cut loaf was first looked at. */
  readonly cutAt: Instant;
  /** Of the kitchen above the sea, where no core says it. */
  readonly height?: Metres;
}

const isOwn =
  (bake: string) =>
  (fact: Fact): boolean =>
    fact.kind === 'press' && fact.who === bake;

const riseOf = (page: BakePage, wanted: number): LoafDay['rise'] => {
  const rise = bulkEnd(page)?.rise;
  if (!rise) return undefined;
  const { percent, doubt, atLeast } = rise;
  return { percent, doubt: Math.hypot(doubt, atLeast ? OR_MORE : 0), wanted };
};

/** Of all that was measured in the dough till its bulk was over; later it is a loaf's. */
const doughOf = (page: BakePage): Celsius | undefined => {
  const end = bulkEnd(page)?.at ?? Infinity;
  const read = page.readings.flatMap(({ at, reading, odd }) =>
    reading.what === 'doughTemperature' && at <= end && !odd ? [reading.celsius] : [],
  );
  return read.length > 0 ? read.reduce((sum, one) => sum + one, 0) / read.length : undefined;
};

/** What was done at the oven's door while a loaf of this bake stood there first. */
function atDoor({ start, rows }: BakeRows, withdrawn: ReadonlySet<string>): readonly Press[] {
  return rows.flatMap(({ fact }, n) => {
    const [first = ''] = rows[n - 1]?.position.oven.waiting ?? [];
    const isHere = fact.kind === 'press' && fact.who === 'oven' && start.loaves.includes(first);
    return isHere && !withdrawn.has(fact.id) ? [fact] : [];
  });
}

const dentsIn = (presses: readonly Press[]): Seen[] =>
  presses.flatMap(({ at, act, item, value }): Seen[] => {
    const dent = act === 'answer' && item === 'dent' ? DENTS[value as keyof typeof DENTS] : null;
    return dent ? [{ at, reading: { what: 'poke', dent } }] : [];
  });

/** The last dent before the oven; a retarded loaf is cold unless it stood out by then. */
function pokeOf(
  { start, standing }: BakeRows,
  page: BakePage,
  door: readonly Press[],
): LoafDay['poke'] {
  const until = page.loads.at(-1)?.in ?? Infinity;
  const last = [...page.readings, ...page.looks, ...dentsIn(door)]
    .filter(({ at }) => at <= until)
    .toSorted((a, b) => a.at - b.at)
    .findLast(({ reading }) => reading.what === 'poke' && reading.dent !== 'unsure');
  if (last?.reading.what !== 'poke' || last.reading.dent === 'unsure') return undefined;
  const stood = [...standing.filter(isOwn(start.bake)), ...door].some(
    (fact) =>
      fact.kind === 'press' &&
      fact.at <= last.at &&
      (fact.act === 'standOut' || fact.act === 'pokeNotYet'),
  );
  return { dent: last.reading.dent, cold: !isWarm(start.recipe.process) && !stood };
}

/** A core of the last look before a loaf came out, the coolest spot of it, unless it was told to bake on. */
function coreOf(page: BakePage, loads: readonly BakeLoad[]): Celsius | undefined {
  const inOven = page.readings.flatMap(({ at, reading, odd }) => {
    if (reading.what !== 'coreTemperature' || odd) return [];
    const load = loads.find((one) => one.in <= at && at <= (one.out ?? -Infinity));
    const bakedOn = load?.looks.some((look) => look.said === 'crustNotYet' && look.at >= at);
    return load === undefined || bakedOn ? [] : [{ at, celsius: reading.celsius }];
  });
  const last = inOven.at(-1);
  if (last === undefined) return undefined;
  const look = inOven.filter(({ at }) => last.at - at < ONE_LOOK * MINUTE);
  return Math.min(...look.map(({ celsius }) => celsius));
}

/** The shortest of its loads; nothing where some were shorter than its formula's least and some were not. */
function bakedOf({ start }: BakeRows, loads: readonly BakeLoad[]): LoafDay['baked'] {
  const { lidded, open } = start.recipe.process;
  const least = lidded + open;
  const minutes = loads.flatMap((load) =>
    load.out === null ? [] : [Math.round((load.out - load.in) / MINUTE)],
  );
  const short = minutes.filter((one) => one < least).length;
  if (minutes.length === 0 || (short > 0 && short < minutes.length)) return undefined;
  return { minutes: Math.min(...minutes), least };
}

/** Nobody knows which loaf was cut: a crust counts where all that were told of are alike. */
const crustOf = (loads: readonly BakeLoad[]): LoafDay['crust'] => {
  const told = new Set(loads.flatMap(({ colour }) => colour ?? []));
  return told.size === 1 ? [...told][0] : undefined;
};

/**
 * What a bake's facts tell of the day that its loaf had, for `readLoaf`; null where its start stands in no log.
 * Every measure is as its fact has it; what nobody saw is left out, and so is what was kept as odd.
 * Limits: which loaf of several was cut nobody says. How long it cooled is known where it was looked at
 * within two hours of the oven; a loaf that is told of later may have been cut at any hour before.
 */
export function dayOfBake(
  logs: readonly (readonly LogRecord[])[],
  start: string,
  { cutAt, height = 0 }: DayAsked,
): LoafDay | null {
  const log = standingLog(logs, start);
  if (log === null) return null;
  const { records, bake, found } = log;
  const withdrawn = withdrawnIn(records);
  const page = bakePage(records, bake, { begun: start, withdrawn })!;
  const loads = page.loads.filter(({ vessel }) => vessel !== 'tray');
  const { formula, process } = found.start.recipe;
  const door = atDoor(found, withdrawn);
  const index = doorIndex(found, page);
  const out = Math.max(...loads.map((load) => load.out ?? -Infinity));
  const cooled = (cutAt - out) / MINUTE;
  const cored = found.standing.flatMap(({ results }) => results ?? []).findLast((one) => one.cored);
  const told: { readonly [K in keyof LoafDay]: LoafDay[K] | undefined } = {
    rise: riseOf(page, process.rise),
    q: index?.q,
    qDoubt: index?.doubt,
    coldHours: coldHours(page) ?? undefined,
    doughCelsius: doughOf(page),
    poke: pokeOf(found, page, door),
    core: coreOf(page, loads),
    height: cored?.cored?.height ?? height,
    crust: crustOf(loads),
    baked: bakedOf(found, loads),
    cooledMinutes: cooled >= 0 && cooled <= CUT_SEEN ? Math.round(cooled) : undefined,
    filled: formula.fillings.length > 0,
  };
  return Object.fromEntries(
    Object.entries(told).filter(([, value]) => value !== undefined),
  ) as LoafDay;
}
