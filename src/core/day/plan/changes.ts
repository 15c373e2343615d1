import type { Minutes } from '../../units.ts';
import { minutesOf, SLOT, slotDown, slotUp } from './grid.ts';
import { dueLater, reachableLater } from './later.ts';
import { fewerTouches, stretches, type Offer } from './other-steps.ts';
import type { Effort } from './shortest.ts';
import type { Change, PlanInput, Span } from './types.ts';
import { least, type WhatIf } from './what-if.ts';

/** An edge bent by no more, or bread later by no more, is a small change. Judgement. */
const SMALL_BEND: Minutes = 30;
const SMALL_DELAY: Minutes = 60;

/** Windows that alone stand in the way, and by how much either end would have to give. */
function bends(input: PlanInput, ask: WhatIf): Offer[] {
  return input.blocked.flatMap((span, i): Offer[] => {
    if (span.canBend === false || span.to === span.from) return [];
    const other = (one?: Span): PlanInput => ({
      ...input,
      blocked: input.blocked.toSpliced(i, 1, ...(one ? [one] : [])),
    });
    if (!ask.fits(other())) return [];
    const [from, to] = [slotDown(span.from) * SLOT, slotUp(span.to) * SLOT];
    const slots = (to - from) / SLOT;
    const bend = (change: (by: number) => Partial<Span>): Minutes | null => {
      const count = least(slots, (n) =>
        ask.fits(other({ ...span, from, to, ...change(n * SLOT) })),
      );
      return count === null ? null : minutesOf(count);
    };
    const endEarlierBy = bend((by) => ({ to: to - by }));
    const startLaterBy = bend((by) => ({ from: from + by }));
    const by = Math.min(endEarlierBy ?? Infinity, startLaterBy ?? Infinity);
    const rank = by <= SMALL_BEND ? 2 : 6;
    const { name = '' } = span;
    return [
      {
        change: {
          change: 'blocked',
          name,
          from: span.from,
          to: span.to,
          endEarlierBy,
          startLaterBy,
        },
        rank,
        by,
      },
    ];
  });
}

/** Bread later, the least for each batch that is due. */
function delays(input: PlanInput, ask: WhatIf, effort: Effort): Offer[] {
  return input.batches.flatMap((batch, index): Offer[] => {
    if (batch.due === null) return [];
    const others = { ...input, batches: input.batches.toSpliced(index, 1) };
    if (!ask.fits(others)) return [];
    const laterBy = reachableLater(input, index, effort).find((by) =>
      ask.fits(dueLater(input, index, by)),
    );
    if (laterBy === undefined) return [];
    const rank = laterBy <= SMALL_DELAY ? 3 : 6;
    return [{ change: { change: 'due', batch: batch.name, laterBy }, rank, by: laterBy }];
  });
}

/**
 * Every single change that by itself makes a plan, the gentlest first: power and comfort, an edge of
 * half an hour, bread an hour later, fewer loads or folds, the dough's limits by a tenth, larger moves.
 * Cooling, bake times, the least heating and windows that cannot bend are never touched. Where to draw
 * these lines is judgement.
 */
export function changesFor(input: PlanInput, ask: WhatIf, effort: Effort): Change[] {
  const fits = (one: PlanInput): boolean => ask.fits(one);
  return [
    ...stretches(input, fits),
    ...bends(input, ask),
    ...delays(input, ask, effort),
    ...fewerTouches(input, fits),
  ]
    .sort((a, b) => a.rank - b.rank || a.by - b.by)
    .map(({ change }) => change);
}
