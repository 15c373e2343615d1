import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { BakeStage } from '../../src/core/records/stage.ts';
import type { TaughtLoss } from '../../src/core/records/taught.ts';
import { MINUTE } from '../../src/core/units.ts';
import type { BakeSnapshot, Kitchen, StartFact } from './kitchen.ts';
import { mendedIn } from './standing-readings.ts';
import { stageOf } from './stage-of.ts';

/** Written with a loaf that was weighed. */
const LOSS_MODEL = 'loss-1';
/** So many loaves teach. Judgement: a dozen tell the loss to half a percent. */
const LOAVES = 24;
/** Sooner on the rack a loaf still loses steam. Source: cooled 1–2 h, seen in print. */
const COOL = 60 * MINUTE;

const isCool = (kitchen: Kitchen, bake: BakeSnapshot): boolean => {
  const stage = stageOf(bake);
  const since = bake.context.entered['cool.cooling'];
  if (stage === 'cool.cooling') return since !== undefined && kitchen.now - since >= COOL;
  return stage === 'cool.handOver' || stage === 'cool.note';
};

/** What is pinned of a cool loaf on the scale: the dough it was. */
export function weighResult(dry: Kitchen, fact: Fact): Result[] {
  if (fact.kind !== 'reading' || fact.reading.what !== 'weight') return [];
  const bake = dry.bakes[fact.bake];
  if (fact.reading.of !== 'loaf' || bake === undefined || !isCool(dry, bake)) return [];
  const { recipe, entered, marks } = bake.context;
  const stage = stageOf(bake) as BakeStage;
  return [
    {
      who: fact.bake,
      stage,
      since: entered[stage] ?? dry.now,
      // It changes nothing of a wait.
      marks,
      weighed: { dough: recipe.piece, vessel: recipe.process.vessel },
      model: LOSS_MODEL,
    },
  ];
}

/** Loaves of this fold as their readings say now; one kept as odd teaches nothing. */
function here(kitchen: Kitchen): readonly TaughtLoss[] {
  const mended = mendedIn(kitchen);
  return kitchen.standing.flatMap((fact) => {
    const weighed = fact.results?.find((result) => result.weighed)?.weighed;
    if (fact.kind !== 'reading' || weighed === undefined) return [];
    const reading = mended.get(fact.id) ?? fact.reading;
    return reading.what === 'weight' && !reading.odd ? [{ ...weighed, loaf: reading.grams }] : [];
  });
}

/**
 * What cool loaves of this kitchen weighed, oldest first: those of this fold, and before a jump what the
 * last start before it had found. One weighed between the two is lost.
 */
export function weighInsOf(kitchen: Kitchen, but?: Pick<StartFact, 'id'>): readonly TaughtLoss[] {
  const { starts, base } = kitchen;
  const last = Object.values(starts)
    .filter(({ id, at }) => id !== but?.id && base !== null && at <= base.now)
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  const before = last?.results?.find((one) => one.who === last.bake && one.weighIns)?.weighIns;
  return [...(before ?? []), ...here(kitchen)].slice(-LOAVES);
}
