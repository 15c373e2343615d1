import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import {
  cupboardOf,
  foundIn,
  freshIngredient,
  knownAs,
  pageOf,
} from '../../../src/core/circle/cupboard.ts';
import { usesOf } from '../../../src/core/circle/uses.ts';
import { de } from '../../../src/core/speech/de.ts';
import { plainPart } from '../../../src/core/speech/show-part.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { SHIPPED, shippedFormula } from '../formula/shipped.ts';
import { ingredient, recipeOf } from './support.ts';

afterEach(() => speakIn('en'));

describe('the store cupboard', () => {
  it('has all that the Book’s breads take, once, and what was written down besides', () => {
    const own = [ingredient('Rice flour'), ingredient('SALT', { madeOf: [] })];
    const all = cupboardOf(own, SHIPPED.map(shippedFormula));
    const ids = all.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const name of SHIPPED)
      for (const { id } of usesOf(recipeOf(name, 2))) expect(ids).toContain(id);
    expect(ids).toContain('rice flour');
    expect(all.find(({ id }) => id === 'salt')).toBe(own[1]);
    expect(all.map(({ name }) => name.toLowerCase())).toEqual(
      all.map(({ name }) => name.toLowerCase()).toSorted((a, b) => a.localeCompare(b, 'en')),
    );
  });

  it('writes a new one down with one blank between its words', () => {
    expect(freshIngredient('  Rice \t flour ')).toMatchObject({
      id: 'rice flour',
      name: 'Rice flour',
    });
  });

  it('is found by words of a name in any order', () => {
    const all = ['Strong wheat flour', 'Whole rye flour', 'Rye flakes'].map((n) => ingredient(n));
    expect(foundIn(all, ' FLOUR rye').map(({ name }) => name)).toEqual(['Whole rye flour']);
    expect(foundIn(all, '')).toHaveLength(3);
    expect(foundIn(all, 'oats')).toEqual([]);
  });

  it('is kept as it was in another tongue, in the order of what is shown', () => {
    const own = [ingredient('Rice flour')];
    const all = () => cupboardOf(own, SHIPPED.map(shippedFormula));
    const english = all();
    speakIn('de', de);
    const german = all();
    expect(german).toHaveLength(english.length);
    expect(german).toEqual(expect.arrayContaining([...english]));
    const shown = german.map(({ name }) => plainPart(name).toLowerCase());
    expect(shown).toEqual(shown.toSorted((a, b) => a.localeCompare(b, 'de')));
    expect(shown.indexOf('haferflocken')).toBeLessThan(shown.indexOf('rice flour'));
  });

  it('is found by what is shown and by what is kept', () => {
    const all = cupboardOf([], SHIPPED.map(shippedFormula));
    const found = (text: string) => foundIn(all, text).map(({ name }) => name);
    const known = (text: string) => knownAs(all, text)?.id ?? null;
    expect([found('hafer'), known('Haferflocken'), known('Rolled  oats')]).toEqual([
      [],
      null,
      'rolled oats',
    ]);
    speakIn('de', de);
    expect(found('hafer')).toEqual(['rolled oats']);
    expect(found('roggenvollkorn')).toEqual(['whole rye flour']);
    expect(found('oats')).toEqual(['rolled oats']);
    expect(known('Haferflocken')).toBe('rolled oats');
    expect(known('roggenvollkornmehl')).toBe('whole rye flour');
    expect(known('rolled oats')).toBe('rolled oats');
    expect(known('Hafer')).toBeNull();
  });

  it('is paged so that each stands on one page', () => {
    fc.assert(
      fc.property(fc.array(fc.nat()), fc.integer({ min: 1, max: 12 }), (list, size) => {
        const { pages } = pageOf(list, size, 0);
        const all = Array.from({ length: pages }, (_, at) => pageOf(list, size, at).shown);
        expect(all.flat()).toEqual(list);
        for (const shown of all.slice(0, -1)) expect(shown).toHaveLength(size);
        expect(pageOf(list, size, pages + 3)).toEqual(pageOf(list, size, pages - 1));
        expect(pageOf(list, size, -1).at).toBe(0);
      }),
    );
  });
});
