import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import { beliefOf } from '../../../src/core/readiness/posterior.ts';
import { strengthOf, weighStarter } from '../../../src/core/readiness/starter-strength.ts';
import type { StarterSign } from '../../../src/core/records/starter.ts';
import { HOUR } from '../../../src/core/units.ts';

/** Fed 1:1:1 at 24 °C: ripe after some five hours for a starter of the usual speed. */
const fed = { at: 0, flour: 1, celsius: 24 };
const rose = (hours: number, percent: number): StarterSign => ({ at: hours * HOUR, percent });
const top = (hours: number, shape: 'domed' | 'fallen'): StarterSign => ({
  at: hours * HOUR,
  top: shape,
});
const ask = (...signs: StarterSign[]) => strengthOf({ fed, signs }, OPENING_BELIEF);

describe('is it strong enough to bake', () => {
  it('says nothing on one look, nor on two within half an hour, nor without a feed', () => {
    expect(ask()).toBeNull();
    expect(ask(rose(4, 100))).toBeNull();
    expect(ask(rose(4, 100), top(4.4, 'domed'))).toBeNull();
    expect(strengthOf({ signs: [rose(2, 30), rose(5, 110)] }, OPENING_BELIEF)).toBeNull();
    expect(weighStarter({ fed, signs: [rose(4, 100)] }, OPENING_BELIEF)).toBeNull();
  });

  it.each<[string, StarterSign[], string]>([
    ['half up in three hours, doubled in five', [rose(3, 50), rose(5, 110)], 'strong'],
    ['doubled in five hours and domed in six', [rose(4.5, 100), top(5.5, 'domed')], 'strong'],
    ['tripled and then fallen within a day', [rose(4.5, 180), top(8, 'fallen')], 'strong'],
    ['not up at all in six hours, a little in ten', [rose(6, 0), rose(10, 10)], 'weak'],
    ['a fifth up in five hours and fallen by eight', [rose(5, 20), top(8, 'fallen')], 'weak'],
    ['two thirds up, and domed so', [rose(5, 65), top(5.6, 'domed')], 'once'],
    ['half up in five hours, three quarters in eight', [rose(5, 45), rose(8, 70)], 'once'],
  ])('%s', (_, signs, answer) => {
    expect(ask(...signs)?.answer).toBe(answer);
  });

  it('is surer of what is plain than of what is near the line', () => {
    expect(ask(rose(4.5, 120), top(5.5, 'domed'))!.share).toBeGreaterThan(0.85);
    expect(ask(rose(6, 0), rose(10, 5))!.share).toBeGreaterThan(0.85);
    expect(ask(rose(4, 45), rose(6, 80))!.share).toBeLessThan(0.85);
  });

  it('a faster rise is never told as weaker', () => {
    const rank = { weak: 0, once: 1, strong: 2 };
    const percent = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(percent, percent, (a, b) => {
        const [slow, fast] = [Math.min(a, b), Math.max(a, b)];
        const told = (one: number) => rank[ask(rose(2.5, one / 2), rose(5, one))!.answer];
        expect(told(fast)).toBeGreaterThanOrEqual(told(slow));
      }),
      { numRuns: 25 },
    );
  });
});

describe('what two looks teach of the speed', () => {
  const learned = (...signs: StarterSign[]) =>
    beliefOf(weighStarter({ fed, signs }, OPENING_BELIEF)!);

  it('fallen early is fast, domed late is slow, and the doubt is smaller after', () => {
    const fast = learned(rose(2, 60), top(4.5, 'fallen'));
    const slow = learned(rose(5, 40), top(9, 'domed'));
    expect(fast.mean).toBeGreaterThan(0.1);
    expect(slow.mean).toBeLessThan(-0.1);
    for (const { sd } of [fast, slow]) expect(sd).toBeLessThan(OPENING_BELIEF.sd);
  });

  it('a jar that comes up high is not taken for a fast one by its height alone', () => {
    const high = learned(rose(2.5, 60), rose(5, 200));
    const low = learned(rose(2.5, 24), rose(5, 80));
    expect(Math.abs(high.mean - low.mean)).toBeLessThan(0.15);
  });
});
