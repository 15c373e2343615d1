import { expect, it } from 'vitest';
import { bench } from '../../../src/core/speech/de/bench.ts';
import { breadNames } from '../../../src/core/speech/de/breads.ts';
import { partNames } from '../../../src/core/speech/de/parts.ts';
import { start } from '../../../src/core/speech/de/start.ts';
import { selectorsIn } from '../../browser/harness/in-tongue.ts';

const german = selectorsIn('de');

it('finds a press by a part of its English words on a German tablet', () => {
  expect(german('button:has-text("More") >> nth=-1')).toContain(`:has-text("${bench.more}")`);
  expect(german('button:has-text("More") >> nth=-1')).not.toContain('More');
});

it('finds by a label for ears, and by all the words of one', () => {
  expect(german('[aria-label^="One more"]')).toContain(`[aria-label^="${start.more}"]`);
  expect(german('.bench[aria-label="Bench"] .call')).toBe(
    // Long words of a label end lines as those that are seen.
    `.bench:is([aria-label="${bench.label}"], [aria-label="Back\u00adtisch"]) .call`,
  );
});

it('finds so many loaves of a bread by its name', () => {
  expect(german('.tile:has-text("1 Olive and seed")')).toBe(
    `.tile:is(:has-text("1 ${breadNames['olive-seed']}"))`,
  );
});

it('finds a line of a bread by the name of its filling', () => {
  expect(german('button:has-text("Dried cherries")')).toContain(`:has-text("${partNames.cherry}")`);
});

it('names a day as the clock of the tablet does', () => {
  expect(german('.tile:has-text("Sat 14 Mar")')).toBe('.tile:is(:has-text("Sa 14. März"))');
  // A hand's mark is called so as well.
  expect(german('.tile:has-text("Sun")')).toBe('.tile:is(:has-text("So"), :has-text("Sonne"))');
});

it('leaves the sign of a key, and what is no word, as they are', () => {
  const signs = ['.key:text-is("1")', '.key:text-is("e")', '.slab:not(.hold)', '[type="file"]'];
  expect(signs.map(german)).toEqual(signs);
});
