import { soakPct } from './dough-pct.ts';
import type { Formula } from './formula.ts';

/**
 * What the fillings bring into a dough, % of total flour: their salt; their water, soakers' and their
 * own. Of a filling that says nothing of it, nothing. Source: arithmetic.
 *
 * @example
 * brought({ fillings: [{ pct: 30, brings: { salt: 1.7, water: 36 } }] }) // → { salt: 0.51, water: 10.8 }
 */
export function brought({
  fillings,
}: {
  readonly fillings: readonly Pick<Formula['fillings'][number], 'pct' | 'soak' | 'brings'>[];
}): { readonly salt: number; readonly water: number } {
  return fillings.reduce(
    ({ salt, water }, filling) => ({
      salt: salt + (filling.pct * (filling.brings?.salt ?? 0)) / 100,
      water: water + (filling.pct * (filling.brings?.water ?? 0)) / 100 + soakPct(filling),
    }),
    { salt: 0, water: 0 },
  );
}
