import type { Batch, Step } from '../plan/types.ts';
import { MINUTE, type Instant, type Minutes } from '../../units.ts';
import { SLOT } from '../plan/grid.ts';
import type { LiveInput } from './live-input.ts';

/** A sheet fold that waits for its baker is done within so long after, min. Judgement. */
const AFTER: Minutes = 15;

/**
 * The folds of the present wait that fall into an absence are left out: those that cannot be before or
 * after it, or (`all`) each that it touches, or `only` that one of them. A sheet fold never is, it waits: the filling has to go in.
 */
export function withoutFolds(
  live: LiveInput,
  { from, to }: { readonly from: Instant; readonly to: Instant },
  all = false,
  only: { readonly batch: string; readonly touch: string } | null = null,
): { readonly live: LiveInput; readonly without: readonly string[] } {
  const without: string[] = [];
  const batches = live.input.batches.map((batch): Batch => {
    const since = live.at[batch.name]?.since;
    const [step, ...rest] = batch.steps;
    if (since === undefined || !step?.during) return batch;
    const during = step.during.flatMap((side) => {
      const at = since + side.at * MINUTE;
      const [first, last] = [at - side.earlier * MINUTE, at + side.later * MINUTE];
      const isTouched = last >= from && first < to;
      const isIn = first + side.hands * MINUTE > from && last < to;
      if (!isTouched || batch.fixed?.[side.name] !== undefined) return side;
      if (side.name === 'lamination') {
        const later = Math.max(side.later, Math.ceil((to - at) / SLOT) * 5 + AFTER);
        return { ...side, later };
      }
      if (!all && !isIn) return side;
      if (only !== null && (only.batch !== batch.name || only.touch !== side.name)) return side;
      without.push(side.name);
      return [];
    });
    const left = new Set(during.map(({ name }) => name));
    const stayPut = Object.fromEntries(
      Object.entries(batch.stayPut ?? {}).filter(([name]) => !without.includes(name)),
    );
    const { during: _, ...plain } = step;
    const first: Step = left.size > 0 ? { ...plain, during } : plain;
    const inside = during.reduce(
      (most, side) => Math.max(most, side.at + side.later + side.hands),
      0,
    );
    const wait =
      'choices' in first.wait
        ? first.wait
        : { ...first.wait, max: Math.max(first.wait.max, inside) };
    return { ...batch, stayPut, steps: [{ ...first, wait }, ...rest] };
  });
  return { live: { ...live, input: { ...live.input, batches } }, without };
}
