import type { Batch, PlanInput, PlannedTouch, PlanResult } from '../plan/types.ts';
import { MINUTE } from '../../units.ts';
import type { DayPlan } from './day-plan.ts';
import type { LiveInput } from './live-input.ts';
import type { Fitting, Why } from './moved.ts';

/** Asks the planner; `why` false: what would do where nothing fits is not looked for. */
export type Lay = (input: PlanInput, why?: false) => PlanResult;

/** A day laid with bakes held; `gave`: those that would stand, and may move since nothing fits else. */
export interface HeldResult {
  readonly result: PlanResult;
  readonly gave: readonly string[];
}

/** A batch's touches to come, as the plan has them. */
const ahead = ({ touches }: DayPlan, { done }: LiveInput, batch: string): PlannedTouch[] =>
  touches.filter((one) => one.batch === batch && !(done[batch]?.includes(one.name) ?? false));

const fixedAt = (batch: Batch, touches: readonly PlannedTouch[]): Batch => ({
  ...batch,
  fixed: { ...Object.fromEntries(touches.map(({ name, at }) => [name, at])), ...batch.fixed },
  stayPut: {},
});

/**
 * A batch with every touch to come where the plan has it; null where one of them is over and was not
 * done, or lies where no hands are: then it does not stand.
 */
export function standing(plan: DayPlan, live: LiveInput, batch: Batch): Batch | null {
  const { planFrom, now = planFrom, blocked } = live.input;
  const touches = ahead(plan, live, batch.name);
  const stands = touches.every(({ name, at, hands }) => {
    if (name in (batch.fixed ?? {})) return true;
    const isOut = blocked.some(({ from, to }) => at < to && at + hands * MINUTE > from);
    return at >= now && !(hands > 0 && isOut);
  });
  return stands ? fixedAt(batch, touches) : null;
}

const withBatches = (input: PlanInput, change: (batch: Batch) => Batch): PlanInput => ({
  ...input,
  batches: input.batches.map(change),
});

/** How late a held bake's touches may be, now that the others stand elsewhere. */
function slackOf(
  { input }: LiveInput,
  { touches }: Fitting,
  was: readonly PlannedTouch[],
  lay: Lay,
): PlannedTouch[] {
  const [{ batch: name } = { batch: '' }] = was;
  const others = withBatches(input, (batch) =>
    batch.name === name
      ? batch
      : fixedAt(
          batch,
          touches.filter((one) => one.batch === batch.name),
        ),
  );
  const free = lay(others, false);
  return was.map((touch) => {
    const now = free.fits ? free.touches.find((one) => sameTouch(one, touch)) : undefined;
    const last = Math.max(touch.at, now?.lastPossible ?? touch.at);
    return {
      ...touch,
      earliest: Math.min(touch.at, now?.earliest ?? touch.at),
      latest: Math.max(touch.at, now?.latest ?? touch.at),
      fineUntil: Math.min(last, Math.max(touch.at, now?.latest ?? 0, now?.fineUntil ?? 0)),
      lastPossible: last,
    };
  });
}

const sameTouch = (a: PlannedTouch, b: PlannedTouch): boolean =>
  a.batch === b.batch && a.name === b.name;

/**
 * Lays a day anew, the bakes that are as planned held where they stand: only where that leaves no plan
 * may they move. A bake is let go from the first where something of it is off its plan (`whys`), or
 * where it does not stand by itself.
 */
export function layHeld(
  plan: DayPlan,
  live: LiveInput,
  whys: readonly Why[],
  lay: Lay,
): HeldResult {
  const { input } = live;
  const off = new Set(whys.map(({ batch }) => batch));
  const held = new Map<string, Batch>();
  for (const batch of input.batches) {
    const stands = off.has(batch.name) ? null : standing(plan, live, batch);
    if (stands && lay({ ...input, batches: [stands] }, false).fits) held.set(batch.name, stands);
  }
  if (held.size === 0 || held.size === input.batches.length)
    return { result: lay(input), gave: [] };
  const result = lay(
    withBatches(input, (batch) => held.get(batch.name) ?? batch),
    false,
  );
  const names = [...held.keys()];
  if (!result.fits) return { result: lay(input), gave: names };
  const kept = names.flatMap((name) => slackOf(live, result, ahead(plan, live, name), lay));
  const rest = result.touches.filter((touch) => !kept.some((one) => sameTouch(one, touch)));
  const touches = [...rest, ...kept].toSorted((a, b) => a.at - b.at);
  return { result: { ...result, touches }, gave: [] };
}
