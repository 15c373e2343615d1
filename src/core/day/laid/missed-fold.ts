import { MINUTE, type Minutes } from '../../units.ts';
import { liveInput, type LiveDay } from './live-input.ts';

/** A fold that was called for so long ago was missed. Judgement. */
const MISSED: Minutes = 10;

/** The day with every fold that is called for and not done still before its bake: as if nobody were at it. */
export const beforeFolds = (day: LiveDay): LiveDay => ({
  ...day,
  kitchen: {
    ...day.kitchen,
    bakes: Object.fromEntries(
      Object.entries(day.kitchen.bakes).map(([bake, place]) => [
        bake,
        place.stage === 'bulk.fold' ? { ...place, stage: 'bulk.between' } : place,
      ]),
    ),
  },
});

/**
 * The first fold that the bench called for ten minutes ago or more and nobody did; null where none was
 * missed. A fold that is behind its planned hour alone was not: the dough may be slower than its plan.
 */
export function missedFold(
  day: LiveDay,
): { readonly batch: string; readonly touch: string } | null {
  const { kitchen, plan, now } = day;
  const { done } = liveInput(beforeFolds(day));
  for (const { name: batch, bake } of plan.ask.bakes) {
    const place = bake === null ? undefined : kitchen.bakes[bake];
    const called = place?.entered['bulk.fold'];
    if (place?.stage !== 'bulk.fold' || called === undefined || now - called < MISSED * MINUTE)
      continue;
    const fold = plan.touches.find(
      (touch) =>
        touch.batch === batch &&
        touch.name.startsWith('fold ') &&
        !done[batch]?.includes(touch.name),
    );
    if (fold) return { batch, touch: fold.name };
  }
  return null;
}
