import { describe, expect, it } from 'vitest';
import { samePlain } from '../../machines/kitchen/same-plain.ts';

describe('two plain data', () => {
  it.each<[string, unknown, unknown]>([
    [
      'keys in another order',
      { a: 1, b: { c: [1, 2], d: null } },
      { b: { d: null, c: [1, 2] }, a: 1 },
    ],
    ['a key that holds nothing', { a: 1, b: undefined }, { a: 1 }],
    ['a key that holds nothing in the other', { a: 1 }, { a: 1, b: undefined }],
    ['two numbers that are none', { at: Number.NaN }, { at: Number.NaN }],
    ['nothing at all', {}, {}],
  ])('are the same with %s', (_, a, b) => expect(samePlain(a, b)).toBe(true));

  it.each<[string, unknown, unknown]>([
    ['a value', { marks: { look: 1 } }, { marks: { look: 2 } }],
    ['a key more', { a: 1 }, { a: 1, b: null }],
    ['a key less', { a: 1, b: null }, { a: 1 }],
    ['as many keys of other names', { a: undefined, b: 1 }, { a: 1, b: undefined }],
    ['a name that every object has', { toString: undefined, a: 1 }, { a: 1, valueOf: 1 }],
    ['the order of a list', ['a', 'b'], ['b', 'a']],
    ['the length of a list', ['a'], ['a', 'b']],
    ['a list for an object', [], {}],
    ['null for an object', null, {}],
    ['text for a number', { a: 1 }, { a: '1' }],
    ['an object for nothing', { a: {} }, {}],
  ])('differ by %s', (_, a, b) => {
    expect(samePlain(a, b)).toBe(false);
    expect(samePlain(b, a)).toBe(false);
  });
});
