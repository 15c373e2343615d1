import { describe, expect, it } from 'vitest';
import { checkOrder, emptyDraft, type Draft } from '../../src/screens/start/draft.ts';
import { RECIPE } from '../machines/support/recipe.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const check = (change: Partial<Draft>, formula: typeof RECIPE.formula | null = RECIPE.formula) =>
  checkOrder({ ...emptyDraft, kitchen: 21.5, ...change }, formula, METRIC);

describe('what the start page asks for', () => {
  it('makes an order, read through first when it begins at the beginning', () => {
    expect(check({}).order).toMatchObject({ loaves: 2, kitchen: 21.5, from: 'read.plan' });
    expect(check({ from: 'bulk.proving' }).order).toMatchObject({ from: 'bulk.proving' });
  });

  it('fills in nothing that is measured', () => {
    expect(emptyDraft.kitchen).toBeNull();
    expect(checkOrder(emptyDraft, RECIPE.formula, METRIC)).toEqual({
      order: null,
      missing: 'How warm is the kitchen?',
    });
  });

  it.each([
    [{ kitchen: -5 }, 'Here only 5 to 40 °C. You typed -5 °C: change it.'],
    [{ kitchen: 55 }, 'Here only 5 to 40 °C. You typed 55 °C: change it.'],
    [{ loaves: 0 }, '0 loaves will not do. Choose a whole number, 1 to 36.'],
    [{ loaves: 60 }, '60 loaves will not do. Choose a whole number, 1 to 36.'],
    [{ loaves: 2.5 }, '2.5 loaves will not do. Choose a whole number, 1 to 36.'],
  ])('refuses %o with a sentence that says what to do', (change, missing) => {
    expect(check(change)).toEqual({ order: null, missing });
  });

  it('asks a kitchen of 205 again in the baker’s own unit', () => {
    const draft = { ...emptyDraft, kitchen: 205 };
    const missing = (heat: 'C' | 'F') =>
      checkOrder(draft, RECIPE.formula, { heat, weight: 'g' }).missing;
    expect(missing('C')).toBe('Here only 5 to 40 °C. You typed 205 °C: change it.');
    expect(missing('F')).toBe('Here only 41 to 104 °F. You typed 401 °F: change it.');
  });

  it('says so when there is no formula', () => {
    expect(check({}, null)).toEqual({ order: null, missing: 'No formula here yet.' });
  });
});
