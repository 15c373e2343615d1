import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fill, wants } from '../../../src/core/speech/fill.ts';

test('puts values where the names stand, and ignores the others', () => {
  expect(fill('{grams} g {name}', { grams: 18, name: 'salt', loaves: 4 })).toBe('18 g salt');
  expect(fill('{a}{a} and {b}', { a: 'x', b: 0 })).toBe('xx and 0');
  expect(fill('Let the dough rest', {})).toBe('Let the dough rest');
});

test('a hole in a sentence throws by name', () => {
  expect(() => fill('Next look at {time}.', { minutes: 5 })).toThrow(
    'Template "Next look at {time}." wants {time}, which is missing.',
  );
  expect(() => fill('{toString}', {})).toThrow('wants {toString}, which is missing.');
});

test('a value that looks like a template is left as it is', () => {
  expect(fill('{name}.', { name: '{grams} $& $1' })).toBe('{grams} $& $1.');
});

test('wants names each placeholder once, in order', () => {
  expect(wants('{touch} of {touches}, {touch}')).toEqual(['touch', 'touches']);
  expect(wants('no names { here }')).toEqual([]);
});

test('whatever is wanted and given leaves no name behind', () => {
  const name = fc.stringMatching(/^[a-z]{1,8}$/);
  fc.assert(
    fc.property(fc.array(name, { maxLength: 5 }), (names) => {
      const template = names.map((n) => `{${n}}`).join(' ');
      const values = Object.fromEntries(names.map((n) => [n, n.toUpperCase()]));
      expect(fill(template, values)).toBe(names.join(' ').toUpperCase());
    }),
  );
});
