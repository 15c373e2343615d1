import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cleanName, NAME_LETTERS } from '../../../src/core/circle/name.ts';

it('has a name in one line of at most forty characters, whole ones', () => {
  expect(cleanName('  B\n of   the\tmill ')).toBe('B of the mill');
  expect(cleanName('B\u202e\u200b\u0000')).toBe('B');
  expect(cleanName('😀'.repeat(60))).toBe('😀'.repeat(NAME_LETTERS));
  expect(cleanName('x'.repeat(1_000_000))).toBe('x'.repeat(NAME_LETTERS));
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
      const name = cleanName(text);
      expect([...name].length).toBeLessThanOrEqual(NAME_LETTERS);
      expect(name).not.toMatch(/[\n\r\t]/);
      expect(cleanName(name)).toBe(name);
    }),
  );
});
