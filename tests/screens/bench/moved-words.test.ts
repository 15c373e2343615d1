import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { movedWords } from '../../../src/screens/bench/readings/moved-words.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const hour = (at: number): string => new Date(at).toISOString().slice(11, 16);
const warm: Reading = { what: 'doughTemperature', celsius: 27 };
const risen: Reading = { what: 'rise', percent: 75, of: 'dough' };
const proving = (minutes: number) => ({
  likely: T0 + 3 * HOUR + minutes * MINUTE,
  look: T0 + 3 * HOUR + minutes * MINUTE,
});

describe('what a reading changed', () => {
  it('says why, how far, and when to look', () => {
    expect(movedWords(warm, false, proving(0), proving(-24), hour)).toBe(
      'Warmer than planned. About twenty-five minutes sooner, look at eight thirty-six.',
    );
    expect(movedWords(warm, false, proving(0), proving(71), hour)).toBe(
      'Cooler than planned. About one hour ten minutes later, look at ten eleven.',
    );
    const jar: Reading = { what: 'levainTemperature', celsius: 27 };
    expect(movedWords(jar, false, proving(0), proving(-24), hour)).toMatch(/^Warmer than/);
    expect(movedWords(risen, false, proving(0), proving(-10), hour)).toMatch(
      /^Further than expected\./,
    );
    expect(movedWords(risen, false, proving(0), proving(10), hour)).toMatch(
      /^Slower than expected\./,
    );
    expect(movedWords(risen, true, proving(0), proving(10), hour)).toMatch(/^That is corrected\./);
  });

  it('between folds tells when the dough is likely ready, since no look is laid yet', () => {
    const between = (minutes: number) => ({ likely: proving(minutes).likely, touch: T0 });
    expect(movedWords(risen, false, between(0), between(-30), hour)).toBe(
      'Further than expected. About thirty, three zero, minutes sooner, ready about eight thirty.',
    );
  });

  it('is silent about less than five minutes, and where nothing has a window', () => {
    expect(movedWords(warm, false, proving(0), proving(2), hour)).toBeNull();
    expect(movedWords(warm, false, { end: T0 }, { end: T0 }, hour)).toBeNull();
  });
});
