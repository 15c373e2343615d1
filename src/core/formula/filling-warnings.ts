import { brought } from './brought.ts';
import { fillingShare } from './filling-share.ts';
import type { Formula } from './formula.ts';
import type { Notice } from './notice.ts';

/** Salt of a dough, % of all flour, between which it is usual. Common practice, no source. */
export const SALT = { least: 1.5, most: 2.5 } as const;

/** All water, what the fillings bring with it, % of flour, up to which hands can hold a dough. Judgement. */
const MOST_WET = 110;

/**
 * Warnings about what goes into a dough besides flour and water. saltHigh and saltLow (salt, most or
 * least) · saltWithFilling (salt, what the fillings bring of it, most: only together too much) ·
 * wetFilling (water: with what the fillings bring over 110 % of flour, while the dough's own is not) ·
 * fillingOutside 10–20 % of the dough before it goes in · fillingAtShaping (no lamination takes it in) ·
 * perishableFilling (filling: its rule) · cheeseStands (filling: its rule) · fillingFrozen and
 * fillingCold (filling: how it is made ready).
 * Source: filling share San Francisco Baking Institute (sfbi.com/inclusions-in-bread.html); the two
 * hours USDA; cheese Bishop & Smukowski 2006; salt: common practice, no source; wet: judgement.
 */
export function fillingWarnings(formula: Formula): readonly Notice[] {
  const warnings: Notice[] = [];
  const tell = (key: string, values: Notice['values']): void => void warnings.push({ key, values });
  const { salt, hydration, fillings, process } = formula;
  const { salt: bring, water } = brought(formula);
  if (salt > SALT.most) tell('saltHigh', { salt, most: SALT.most });
  else if (salt + bring > SALT.most) {
    tell('saltWithFilling', { salt: salt + bring, bring, most: SALT.most });
  }
  if (salt + bring < SALT.least) tell('saltLow', { salt: salt + bring, least: SALT.least });
  if (fillings.length === 0) return warnings;
  if (hydration <= MOST_WET && hydration + water > MOST_WET) {
    tell('wetFilling', { water: hydration + water, most: MOST_WET });
  }
  const share = fillingShare(formula) * 100;
  if (share < 10 || share > 20) tell('fillingOutside', { share, least: 10, most: 20 });
  if (!process.touches.some((touch) => touch.kind === 'laminate')) tell('fillingAtShaping', {});
  for (const { name: filling, keeps, from } of fillings) {
    if (keeps === 'perishable') tell('perishableFilling', { filling });
    else if (from === 'freezer') tell('fillingFrozen', { filling });
    else if (keeps === 'hardCheese') tell('cheeseStands', { filling, most: 30 });
    else if (from === 'fridge') tell('fillingCold', { filling });
  }
  return warnings;
}
