import { describe, expect, it } from 'vitest';
import { fillingOf, FILLING_FACTS } from '../../../src/core/formula/filling-facts.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { swapFilling, swapHerbs, type Swapped } from '../../../src/core/formula/swaps.ts';
import { swaps } from '../../../src/core/speech/words/notices.ts';
import { tellNotice } from '../../../src/core/speech/tell-notice.ts';
import { shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut');
const herbed: Formula = {
  ...cherry,
  fillings: [...cherry.fillings, fillingOf('freshHerbs', { id: 'thyme', name: 'thyme', pct: 3 })],
};
const dried = { id: 'dried-thyme', name: 'dried thyme', ...FILLING_FACTS.driedHerbs };
const fresh = { id: 'thyme', name: 'thyme', ...FILLING_FACTS.freshHerbs };
const done = (swapped: Swapped) => {
  if (swapped.formula === null) throw new Error(JSON.stringify(swapped.reason));
  return swapped;
};
const METRIC = { heat: 'C', weight: 'g' } as const;
const walnut = {
  id: 'walnut',
  name: 'walnuts',
  keeps: 'shelf',
  allergens: ['tree nuts (walnut)'],
} as const;

describe('a swap', () => {
  it('of herbs halves the weight dried, doubles it fresh, and is as it was there and back', () => {
    const one = done(swapHerbs(herbed, 'thyme', { to: 'dried', other: dried }));
    expect(one.formula.fillings[2]).toEqual({ ...dried, pct: 1.5 });
    const back = done(swapHerbs(one.formula, 'dried-thyme', { to: 'fresh', other: fresh }));
    expect(back.formula).toEqual(herbed);
    expect([one.told.key, back.told.key]).toEqual(['herbsDried', 'herbsFresh']);
  });

  it('of nuts keeps their share and their place, and tells the allergen that came', () => {
    const { formula, told } = done(swapFilling(cherry, 'hazelnut', walnut));
    expect(formula.fillings[1]).toEqual({ ...walnut, pct: 12 });
    expect(tellNotice(told, METRIC)).toBe(
      'walnuts for toasted hazelnuts, as much by weight. The label has to name: tree nuts (walnut).',
    );
    const { told: plain } = done(swapFilling(cherry, 'hazelnut', { ...walnut, allergens: [] }));
    expect(plain.key).toBe('swapped');
  });

  it('has words for all that it tells', () => {
    const told = [
      done(swapHerbs(herbed, 'thyme', { to: 'dried', other: dried })).told,
      done(swapHerbs(herbed, 'thyme', { to: 'fresh', other: fresh })).told,
      done(swapFilling(cherry, 'hazelnut', walnut)).told,
      done(swapFilling(cherry, 'hazelnut', { ...walnut, allergens: [] })).told,
    ];
    expect(told.map(({ key }) => key).toSorted()).toEqual(Object.keys(swaps).toSorted());
    for (const one of told) expect(tellNotice(one, METRIC)).toMatch(/^[^{}]+\.$/);
  });

  it('is refused for what is not there, and where the formula could not be read', () => {
    const unknown = { key: 'lineUnknown', values: { line: 'fig' } };
    expect(swapFilling(cherry, 'fig', walnut).reason).toEqual(unknown);
    expect(swapHerbs(cherry, 'fig', { to: 'dried', other: dried }).reason).toEqual(unknown);
    expect(swapFilling(cherry, 'hazelnut', { ...walnut, id: 'cherry' }).reason).toMatchObject({
      key: 'formulaUnreadable',
      values: { path: 'fillings[1].id' },
    });
    const much = { ...herbed, fillings: [{ ...herbed.fillings[2]!, pct: 60 }] };
    expect(swapHerbs(much, 'thyme', { to: 'fresh', other: fresh }).formula).toBeNull();
  });
});
