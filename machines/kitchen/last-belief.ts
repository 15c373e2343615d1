import type { PastBelief } from '../../src/core/readiness/carry-over.ts';
import type { Kitchen, StartFact } from './kitchen.ts';

/**
 * What was believed of the starter at the end of the last bake before this one, as far as the fold
 * knows: since the last jump by every result, before it by what a bake began with. A bake whose start
 * was taken back never was.
 */
export const lastBelief = (
  { starts, standing, base }: Kitchen,
  { id, at }: Pick<StartFact, 'id' | 'at'>,
): PastBelief | null => {
  const stands = new Set(standing.map((fact) => fact.id));
  const past = Object.values(starts)
    .filter(
      (s) => s.id !== id && s.at <= at && (stands.has(s.id) || (base !== null && s.at <= base.now)),
    )
    .toSorted((a, b) => b.at - a.at);
  for (const { bake, recipe, results } of past) {
    const told = standing.findLast((fact) =>
      fact.results?.some((result) => result.who === bake && result.belief),
    );
    const belief = (told?.results ?? results ?? []).find(
      (result) => result.who === bake && result.belief,
    )?.belief;
    if (belief) return { formula: recipe.formula, belief };
  }
  return null;
};
