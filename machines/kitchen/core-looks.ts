import { boilingPoint } from '../../src/core/oven/boiling.ts';
import { coreSays } from '../../src/core/oven/core-spots.ts';
import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { Cored, TaughtCore } from '../../src/core/records/taught.ts';
import type { Celsius, Instant, Minutes } from '../../src/core/units.ts';
import type { Kitchen, LaneSnapshot, StartFact } from './kitchen.ts';
import { mendedIn } from './standing-readings.ts';

/** So many looks teach; what an oven did a season ago says little of it now. Judgement. */
const LOOKS = 12;

type CoredResult = Result & { readonly cored: Cored };

const coredIn = ({ results = [] }: Pick<Fact, 'results'>): CoredResult | undefined =>
  results.find((result): result is CoredResult => result.cored !== undefined);

/** One look at one loaf: its lane, and when it began. */
const lookOf = ({ who, since }: Pick<Result, 'who' | 'since'>): string => `${who} ${since}`;

/** The core that the spots of one look tell; null where they tell none, as one in a pocket of filling. */
function taught(
  { start, grams, minutes, height, vessel, filled }: Cored,
  spots: readonly Celsius[],
): TaughtCore | null {
  const { core } = coreSays(spots, { filled, height });
  return core === null
    ? null
    : { start, grams, minutes, core, boils: boilingPoint(height), vessel };
}

/** Cores of this fold, a look each, as its readings say now; what was kept as odd teaches nothing. */
const taughtHere = (kitchen: Kitchen, but: string | null): readonly TaughtCore[] => {
  const mended = mendedIn(kitchen);
  const looks = new Map<string, { cored: Cored; spots: Celsius[] }>();
  for (const fact of kitchen.standing) {
    const found = coredIn(fact);
    // A correction tells of its reading's look, and is heard through it.
    if (found === undefined || fact.kind !== 'reading') continue;
    const reading = mended.get(fact.id) ?? fact.reading;
    if (reading.what !== 'coreTemperature' || reading.odd) continue;
    const look = lookOf(found);
    if (look === but) continue;
    looks.set(look, {
      cored: found.cored,
      spots: [...(looks.get(look)?.spots ?? []), reading.celsius],
    });
  }
  return [...looks.values()].flatMap(({ cored, spots }) => taught(cored, spots) ?? []);
};

/**
 * What the cores of this kitchen taught so far, oldest first: those of this fold, but not of the `look`
 * that is being judged, and before a jump what the last start before it had found. One measured between
 * the two is lost.
 */
export function coresTaught(
  kitchen: Kitchen,
  look: Pick<Result, 'who' | 'since'> | null,
  but?: Pick<StartFact, 'id'>,
): readonly TaughtCore[] {
  const { starts, base } = kitchen;
  const last = Object.values(starts)
    .filter(({ id, at }) => id !== but?.id && base !== null && at <= base.now)
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  const before = last?.results?.find(({ who, cores }) => who === last.bake && cores)?.cores ?? [];
  return [...before, ...taughtHere(kitchen, look && lookOf(look))].slice(-LOOKS);
}

/** Whether the base of a loaf was seen to be dark since its look began: it needs no longer bake. */
const baseIsDark = ({ standing }: Kitchen, who: string, since: Instant): boolean => {
  const told = standing.findLast(
    (fact) => fact.kind === 'press' && fact.who === who && fact.at >= since && fact.item === 'base',
  );
  return told?.kind === 'press' && told.value === 'dark';
};

/**
 * Minutes more that the core measured at the last look of a lane foretells; null where none does, or
 * where its base is dark and nothing is left to wait for.
 */
export function moreMinutesAt(
  kitchen: Kitchen,
  who: string,
  { context }: LaneSnapshot,
): Minutes | null {
  const since = context.entered['judge'];
  if (since === undefined || baseIsDark(kitchen, who, since)) return null;
  const told = kitchen.standing.findLast((fact) => {
    const found = coredIn(fact);
    return found?.who === who && found.stage === 'judge' && found.since === since;
  });
  return (told && coredIn(told)?.cored.more) ?? null;
}
