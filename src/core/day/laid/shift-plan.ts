import type { Instant } from '../../units.ts';
import type { Span } from '../plan/types.ts';
import type { AskedBake, DayPlan } from './day-plan.ts';

/**
 * The same plan so much later, where the clock had leapt: what lies after `from` moves with the waits it
 * was laid for, the hour the bread is wanted too, for the wall that shows it moves as well.
 *
 * @param by milliseconds
 */
export function shiftPlan(plan: DayPlan, by: number, from: Instant): DayPlan {
  const at = (instant: Instant): Instant => (instant > from ? instant + by : instant);
  const maybe = (instant: Instant | null): Instant | null =>
    instant === null ? null : at(instant);
  const span = (one: Span): Span => ({ ...one, from: at(one.from), to: at(one.to) });
  const asked = (bake: AskedBake): AskedBake => ({
    ...bake,
    due: maybe(bake.due),
    startAt: maybe(bake.startAt),
    pins: Object.fromEntries(Object.entries(bake.pins).map(([name, pin]) => [name, at(pin)])),
  });
  const { ask } = plan;
  return {
    ...plan,
    sequence: plan.sequence + 1,
    ask: {
      ...ask,
      bakes: ask.bakes.map(asked),
      away: ask.away.map(span),
      ...(ask.taken
        ? {
            taken: ask.taken.map((change) =>
              change.change === 'blocked'
                ? { ...change, from: at(change.from), to: at(change.to) }
                : change,
            ),
          }
        : {}),
    },
    touches: plan.touches.map((touch) => ({
      ...touch,
      at: at(touch.at),
      earliest: at(touch.earliest),
      latest: at(touch.latest),
      fineUntil: at(touch.fineUntil),
      lastPossible: at(touch.lastPossible),
    })),
    ready: plan.ready.map((one) => ({ ...one, at: at(one.at) })),
  };
}
