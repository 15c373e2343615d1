import type { Formula } from '../../../../src/core/formula/formula.ts';
import { fromBowl } from '../../../../src/core/formula/in-bowl-percent.ts';
import { keptPct } from '../../../../src/core/formula/filling-basis.ts';
import { shippedFormula } from '../../formula/shipped.ts';

const WHEAT = { id: 'wheat', name: 'strong wheat flour', grain: 'wheat', pct: 100 } as const;

/** 100 flour, 72 water, 18 levain, 2 salt in the bowl, in the proportions a sheet has them in. */
export const plainBread: Formula = (() => {
  const base: Formula = { ...shippedFormula('lane-wheat'), id: 'plain', flours: [WHEAT] };
  const { formula } = fromBowl(base, {
    flours: [WHEAT],
    water: 72,
    levain: 18,
    levainHydration: 1,
    levainFlours: [WHEAT],
    salt: 2,
    fillings: [],
  });
  if (formula === null) throw new Error('the bowl’s sheet makes no formula');
  return { ...formula, convention: 'bowl' };
})();

/** The same dough with 18 % of it in figs, laid on a sheet. */
export const figBread: Formula = {
  ...plainBread,
  id: 'fig',
  name: 'Fig',
  fillingsOf: 'dough',
  fillings: [
    {
      id: 'fig',
      name: 'dried figs',
      pct: keptPct({ ...plainBread, fillingsOf: 'dough' }, 18),
      keeps: 'shelf',
      allergens: [],
    },
  ],
  process: shippedFormula('cherry-hazelnut').process,
};
