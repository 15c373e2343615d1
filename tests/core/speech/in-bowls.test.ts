import { describe, expect, it } from 'vitest';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { BOWL_MINUTES, recipeBowls } from '../../../src/core/kitchen/split-bowls.ts';
import {
  sayShares,
  showShares,
  tellClocks,
  tellShares,
} from '../../../src/core/speech/in-bowls.ts';
import { shippedFormula } from '../formula/shipped.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const OUNCES = { heat: 'F', weight: 'oz' } as const;
const bowlsFor = (loaves: number) =>
  recipeBowls(makeRecipe(shippedFormula('lane-wheat'), { loaves, piece: 900 }).recipe!, EQUIPMENT);

describe('a line that goes into several bowls', () => {
  it('is shown once for bowls that take as much, bowl by bowl where they differ', () => {
    expect(showShares([725, 725], METRIC)).toBe('2 × 725 g');
    expect(showShares([725, 726], METRIC)).toBe('725 g + 726 g');
    expect(showShares([725, 726, 725], METRIC)).toBe('725 g + 726 g + 725 g');
    expect(showShares([725, 726, 725, 725], METRIC)).toBe('3 × 725 g + 1 × 726 g');
    expect(showShares([9.1], METRIC)).toBe('9.1 g');
    // A gram that no scale in ounces shows makes no difference there.
    expect(showShares([725, 726], OUNCES)).toMatch(/^2 × 1\slb\s9\.6\soz$/);
  });

  it('is said with the bowls first, and with what one of them takes more', () => {
    expect(sayShares([725, 725], 'rye flour', METRIC)).toBe(
      'seven hundred and twenty-five grams of rye flour. In each of two bowls.',
    );
    expect(sayShares([725, 726], 'rye flour', METRIC)).toMatch(
      / In each of two bowls\. Put one gram more in bowl 2\.$/,
    );
    expect(sayShares([5, 5.1, 5.1], 'salt', METRIC)).toMatch(
      /^five grams of salt\. In each of three bowls\. Put zero point one grams more in bowl 2\. Put .* more in bowl 3\.$/,
    );
    expect(sayShares([725, 726], 'rye flour', OUNCES)).toMatch(/ In each of two bowls\.$/);
  });
});

describe('a dough in several bowls', () => {
  it('is told by bowl: 5.5 kg is two of 2755 g, six minutes apart', () => {
    const bowls = bowlsFor(6);
    expect(bowls).toHaveLength(2);
    expect(tellShares(bowls, METRIC)).toMatch(/^2 bowls, (about )?275\d g each\.$/);
    expect(tellClocks(2)).toEqual({
      shown: `Bowl 2: ${BOWL_MINUTES}\u00a0min later.`,
      said: 'Bowl 2: six minutes later.',
    });
    expect(tellClocks(2, () => '14:36')!.shown).toBe('Bowl 2: 6\u00a0min later, at 14:36.');
    // Of more, the second and the last.
    expect(tellClocks(4, (bowl) => ['', '14:36', '', '14:48'][bowl]!)!.shown).toBe(
      'Bowl 2: 6\u00a0min later, at 14:36. Bowl 4: 18\u00a0min later, at 14:48.',
    );
  });

  it('is told nothing of where one bowl takes it', () => {
    expect(tellShares(bowlsFor(2), METRIC)).toBe('');
    expect(tellClocks(1, () => '14:36')).toBeNull();
  });
});
