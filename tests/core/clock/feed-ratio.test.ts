import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feedRatio } from '../../../src/core/clock/feed-ratio.ts';
import { gamma } from '../../../src/core/clock/gamma.ts';
import { ripeGrowth, seedShare } from '../../../src/core/clock/levain-ripe.ts';

const even = { seed: 1, levain: 1 };

describe('the feed for a wanted hour', () => {
  /** Hours of 1:1:1 at 26 °C, 1:5:5 at 24 and 1:10:10 at 21.5; common practice, no source. */
  it.each([
    [3.97, 26, 1],
    [8.54, 24, 5],
    [13.08, 21.5, 10],
  ])('%f h at %f °C is fed 1:%f', (hours, celsius, flour) => {
    const feed = feedRatio(hours * gamma(celsius), 1, even);
    expect(Math.abs(feed!.flour / flour - 1)).toBeLessThan(0.01);
    expect(feed!.water).toBeCloseTo(feed!.flour, 9);
  });

  it('is ripe when the clock says, whatever the waters', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 9, noNaN: true }),
        fc.double({ min: 0.6, max: 1.5, noNaN: true }),
        fc.double({ min: 0.5, max: 1.25, noNaN: true }),
        fc.double({ min: 0.6, max: 1.25, noNaN: true }),
        (theta, v, seed, levain) => {
          const feed = feedRatio(theta, v, { seed, levain });
          if (feed === null) return;
          const share = seedShare({ hydration: seed, feed: { seed: 1, flour: feed.flour } });
          expect(ripeGrowth(share)).toBeCloseTo(Math.max(0, v * theta), 9);
          const flour = 1 / (1 + seed) + feed.flour;
          expect((seed / (1 + seed) + feed.water) / flour).toBeCloseTo(levain, 9);
        },
      ),
    );
  });

  it('is in doubt beyond 1:1 and 1:20', () => {
    expect(
      feedRatio(ripeGrowth(seedShare({ hydration: 1, feed: { seed: 1, flour: 20 } })), 1, even)!
        .doubt,
    ).toBe(false);
    expect(feedRatio(11, 1, even)!.doubt).toBe(true);
    expect(feedRatio(3, 1, even)!.doubt).toBe(true);
  });

  it('has no answer for a stiff levain from a little flour and a wet seed', () => {
    expect(feedRatio(1, 1, { seed: 1.25, levain: 0.5 })).toBeNull();
  });

  it('is larger for more time, for a warmer kitchen and for a quicker starter', () => {
    const flour = (theta: number, v: number) => feedRatio(theta, v, even)!.flour;
    expect(flour(8, 1)).toBeGreaterThan(flour(7, 1));
    expect(flour(8, 1.2)).toBeGreaterThan(flour(8, 1));
  });
});
