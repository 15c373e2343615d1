import type { Batch, PlanInput, PlannedTouch, PlanResult } from '../plan/types.ts';
import { MINUTE, type Instant, type Minutes } from '../../units.ts';

/** An oven stays on for the next bake's loaf as long as one may heat at most. Judgement. */
export const STAYS_ON: Minutes = 75;

type Places = ReadonlyMap<string, PlannedTouch>;
interface Bake {
  readonly batch: Batch;
  readonly places: Places;
}

/** What a batch bakes in, by what is done between lidded and open; a tin has neither. */
const vesselOf = ({ steps }: Batch): 'pot' | 'stone' | 'tin' => {
  if (steps.some(({ name }) => name.startsWith('lid lift '))) return 'pot';
  return steps.some(({ name }) => name.startsWith('vent ')) ? 'stone' : 'tin';
};

/** From a bake's first loaf in the oven to when the oven is hot again after its last; null: it has none. */
function hotOf({ batch, places }: Bake): readonly [Instant, Instant] | null {
  const held = batch.steps.flatMap(({ name, hands, ovenAfter, uses }) => {
    const touch = places.get(name);
    if (touch === undefined || (uses?.oven !== 1 && ovenAfter === undefined)) return [];
    return [[touch.at, touch.at + (hands + (ovenAfter ?? 0)) * MINUTE] as const];
  });
  if (held.length === 0) return null;
  return [Math.min(...held.map(([from]) => from)), Math.max(...held.map(([, to]) => to))];
}

/** The bake's own touch that turns the oven on, and the load it is for. */
function ovenOnOf({ batch, places }: Bake): readonly [PlannedTouch, PlannedTouch] | null {
  const i = batch.steps.findIndex(({ beforeNext }) => beforeNext !== undefined);
  const on = places.get(batch.steps[i]?.beforeNext?.name ?? '');
  const load = places.get(batch.steps[i + 1]?.name ?? '');
  return on && load ? [on, load] : null;
}

/**
 * A plan without the "oven on" of a bake whose loaf goes into an oven that is hot anyway: another bake's
 * last loaf comes out then, or up to 75 minutes before. One that the baker pinned, or that was announced,
 * stays; so does a bake's that needs another hot vessel than the one before. No other touch moves.
 */
export function withoutHotOven(input: PlanInput, result: PlanResult): PlanResult {
  if (!result.fits || input.batches.length < 2) return result;
  const bakes = input.batches.map((batch): Bake => ({
    batch,
    places: new Map(
      result.touches.filter((one) => one.batch === batch.name).map((one) => [one.name, one]),
    ),
  }));
  const isHotFor = (bake: Bake, load: Instant): boolean =>
    bakes.some((other) => {
      const hot = other === bake ? null : hotOf(other);
      if (hot === null) return false;
      const [from, to] = hot;
      const own = vesselOf(bake.batch);
      const isSame = own === 'tin' || own === vesselOf(other.batch);
      return isSame && from < load && load <= to + STAYS_ON * MINUTE;
    });
  const idle = new Set(
    bakes.flatMap((bake) => {
      const [on, load] = ovenOnOf(bake) ?? [];
      return on && load && !on.frozen && isHotFor(bake, load.at) ? [on] : [];
    }),
  );
  return idle.size === 0
    ? result
    : { ...result, touches: result.touches.filter((touch) => !idle.has(touch)) };
}
