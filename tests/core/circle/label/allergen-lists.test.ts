import { describe, expect, it } from 'vitest';
import {
  LIST_MEMBERS,
  namedBy,
  kindWanted,
} from '../../../../src/core/circle/label/allergen-lists.ts';
import { LABEL_LISTS } from '../../../../src/core/circle/circle.ts';
import {
  ALLERGENS,
  isOpen,
  kindsIn,
  standsIn,
  withAllergen,
} from '../../../../src/core/formula/allergens.ts';
import { listNames } from '../../../../src/core/speech/words/label.ts';

const ALL = [
  'gluten (wheat)',
  'gluten (rye)',
  'gluten (oats)',
  'gluten (triticale)',
  'tree nuts (hazelnut, walnut)',
  'sesame',
  'milk',
  'egg',
  'soya',
  'peanuts',
  'sulphites',
  'mustard',
  'celery',
  'lupin',
  'fish (anchovy)',
  'crustaceans (crab)',
  'molluscs (squid)',
];

describe('allergens as three lists have them', () => {
  it('has a name for each member, and no name without one', () => {
    for (const list of LABEL_LISTS)
      expect(Object.keys(LIST_MEMBERS[list])).toEqual(Object.keys(listNames[list]));
  });

  it('knows each of our fourteen in the EU’s list', () => {
    const held = Object.values(LIST_MEMBERS.eu).flatMap(({ of }) => of);
    expect(held.toSorted()).toEqual(ALLERGENS.toSorted());
  });

  it('names of a bread that brings all what the list has, in its order and by kind', () => {
    expect(namedBy('us', ALL)).toEqual([
      'milk',
      'eggs',
      'fish (anchovy)',
      'crustacean shellfish (crab)',
      'tree nuts (hazelnut, walnut)',
      'peanuts',
      'wheat (triticale)',
      'soybeans',
      'sesame',
    ]);
    expect(namedBy('canada', ALL)).toEqual([
      'eggs',
      'milk',
      'mustard',
      'peanuts',
      'crustaceans and molluscs (crab, squid)',
      'fish (anchovy)',
      'sesame',
      'soy',
      'sulphites',
      'tree nuts (hazelnut, walnut)',
      'wheat (triticale)',
      'rye',
      'oats',
    ]);
    expect(namedBy('eu', ALL)).toHaveLength(14);
  });

  it('calls spelt wheat, and rye alone none', () => {
    expect(namedBy('us', ['gluten (spelt wheat)'])).toEqual(['wheat (spelt wheat)']);
    expect(namedBy('us', ['gluten (rye)', 'gluten (barley)', 'gluten (oats)'])).toEqual([]);
    expect(namedBy('eu', ['gluten (rye)'])).toEqual(['cereals with gluten (rye)']);
  });

  it('leaves out nothing that a file named in its own words', () => {
    for (const list of LABEL_LISTS) expect(namedBy(list, ['kiwi', 'kiwi'])).toEqual(['kiwi']);
  });

  it('wants the kind of a fish where the list does, and takes it', () => {
    expect(kindWanted('us', ['fish', 'molluscs'])).toEqual(['fish']);
    expect(kindWanted('canada', ['fish', 'molluscs'])).toEqual(['fish', 'molluscs']);
    expect(kindWanted('eu', ['fish'])).toEqual([]);
    expect(kindWanted('us', ['fish (anchovy)'])).toEqual([]);
  });

  it('reads a fish’s kind as an answer; to be looked up it stays where a packet has to say', () => {
    expect(isOpen(['fish (anchovy)'])).toBe(false);
    expect(standsIn(['fish (anchovy)'], 'fish')).toBe('named');
    expect(kindsIn(['fish (anchovy, cod)'], 'fish')).toEqual(['anchovy', 'cod']);
    expect(withAllergen(['fish (anchovy)'], 'fish')).toEqual([]);
    for (const text of ['fish, if the packet says so', 'fish (name the fish)', 'tree nuts'])
      expect(isOpen([text]), text).toBe(true);
  });
});
