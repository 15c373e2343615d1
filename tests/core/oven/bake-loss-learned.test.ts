import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bakeLoss } from '../../../src/core/formula/bake-loss.ts';
import { BREAD, pieceForBread } from '../../../src/core/formula/piece-for-bread.ts';
import {
  doughForLoaf,
  learnedLoss,
  lossOf,
  LOSS_PRIOR,
  type WeighIn,
} from '../../../src/core/oven/bake-loss-learned.ts';

const loss = fc.double({ min: 0.03, max: 0.28, noNaN: true });
const dough = fc.integer({ min: 300, max: 2000 });
const weighIn = fc
  .tuple(dough, loss)
  .map(([grams, share]): WeighIn => ({ dough: grams, loaf: grams * (1 - share) }));

describe('bake loss learned from weigh-ins', () => {
  it('lies between what was believed and what was weighed, surer with every loaf', () => {
    fc.assert(
      fc.property(fc.array(weighIn, { minLength: 1, maxLength: 30 }), (list) => {
        const { mean, sd, count } = learnedLoss(list);
        const weighed = list.reduce((sum, one) => sum + 1 - one.loaf / one.dough, 0) / list.length;
        expect(count).toBe(list.length);
        expect(mean).toBeGreaterThanOrEqual(Math.min(weighed, LOSS_PRIOR.mean) - 1e-12);
        expect(mean).toBeLessThanOrEqual(Math.max(weighed, LOSS_PRIOR.mean) + 1e-12);
        expect(sd).toBeLessThan(learnedLoss(list.slice(1)).sd);
      }),
    );
  });

  it('is the same in any order, and one loaf after the other as all at once', () => {
    fc.assert(
      fc.property(fc.array(weighIn, { maxLength: 8 }), (list) => {
        const all = learnedLoss(list);
        expect(learnedLoss(list.toReversed()).mean).toBeCloseTo(all.mean, 12);
        const stepped = list.reduce((belief, one) => learnedLoss([one], belief), {
          ...learnedLoss([]),
        });
        expect(stepped.mean).toBeCloseTo(all.mean, 12);
        expect(stepped.sd).toBeCloseTo(all.sd, 12);
      }),
    );
  });

  it('comes to what the kitchen loses, whatever was believed', () => {
    const many = Array.from({ length: 200 }, () => ({ dough: 900, loaf: 900 * 0.82 }));
    expect(learnedLoss(many).mean).toBeCloseTo(0.18, 3);
  });

  it('believes no loaf that is heavier than its dough, and says how many it left out', () => {
    const bad: WeighIn[] = [
      { dough: 900, loaf: 905 },
      { dough: 900, loaf: 450 },
      { dough: 0, loaf: 700 },
      { dough: 900, loaf: 0 },
    ];
    const { mean, sd, count, odd } = learnedLoss(bad);
    expect({ mean, count, odd }).toEqual({ mean: LOSS_PRIOR.mean, count: 0, odd: 4 });
    expect(sd).toBeCloseTo(LOSS_PRIOR.sd, 12);
  });

  it('gives the dough for a loaf, and that dough gives the loaf', () => {
    fc.assert(
      fc.property(dough, loss, (grams, mean) => {
        expect(doughForLoaf(grams, { mean, sd: 0.01 }) * (1 - mean)).toBeCloseTo(grams, 9);
      }),
    );
  });
});

describe('the loss of a piece in this kitchen', () => {
  it('is what is usual at its size, where nothing was weighed', () => {
    fc.assert(
      fc.property(dough, (piece) => {
        expect(lossOf(piece, []).mean).toBeCloseTo(bakeLoss(piece), 12);
      }),
    );
  });

  it('is learned from loaves of its size as any loss is, and moves those of another as far', () => {
    fc.assert(
      fc.property(fc.array(weighIn, { minLength: 1, maxLength: 12 }), dough, (list, piece) => {
        const same = list.map(({ loaf, dough: of }) => ({ dough: 900, loaf: (loaf / of) * 900 }));
        const prior = { mean: bakeLoss(900), sd: LOSS_PRIOR.sd };
        expect(lossOf(900, same).mean).toBeCloseTo(learnedLoss(same, prior).mean, 12);
        const moved = (at: number) => lossOf(at, same).mean - bakeLoss(at);
        // A loss shifted past what is plausible is left out; none of these comes near.
        fc.pre(same.every(({ loaf }) => loaf > 900 * 0.74 && loaf < 900 * 0.94));
        expect(moved(piece)).toBeCloseTo(moved(900), 12);
      }),
    );
  });

  it('counts what is no loaf of these, and leaves it out', () => {
    expect(lossOf(900, [{ dough: 900, loaf: 950 }])).toMatchObject({
      count: 0,
      odd: 1,
      mean: 0.13,
    });
  });

  it('makes of a wanted loaf the dough that bakes to it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.06, max: 0.22, noNaN: true }),
        fc.integer({ min: BREAD.least, max: BREAD.most }),
        (share, bread) => {
          const loaves = [{ dough: 900, loaf: 900 * (1 - share) }];
          const loss = (piece: number): number => lossOf(piece, loaves).mean;
          const piece = pieceForBread(bread, loss);
          expect(Math.abs(piece * (1 - loss(piece)) - bread)).toBeLessThan(0.02);
        },
      ),
    );
  });
});
