import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DOUGH_HEAT, HEAT, WARMEST_WATER } from '../../../src/core/heat/heats.ts';
import { iceFor } from '../../../src/core/heat/ice.ts';
import { mixedIn } from '../../../src/core/heat/mixed-in.ts';
import { multiplierAdvice } from '../../../src/core/heat/multiplier.ts';
import {
  doughByBalance,
  waterAdvice,
  waterByBalance,
  type Mix,
} from '../../../src/core/heat/water.ts';

const MIX: Mix = {
  wanted: 25,
  flour: { grams: 1000, celsius: 20 },
  levain: { flour: 100, water: 100, celsius: 22 },
  water: 750,
};

/** Where the mix lands by simple mixing, the heat of wetting freed in full, in part or not. */
const lands = ({ flour, levain, water, bowl }: Mix, celsius: number, hydration: number): number => {
  const parts = [
    { heat: flour.grams * HEAT.flour, celsius: flour.celsius },
    { heat: levain.flour * HEAT.flour + levain.water * HEAT.water, celsius: levain.celsius },
    { heat: water * HEAT.water, celsius },
    ...(bowl ? [{ heat: bowl.heat * 1000, celsius: bowl.celsius }] : []),
  ];
  const heat = parts.reduce((sum, part) => sum + part.heat, 0);
  const held = parts.reduce((sum, part) => sum + part.heat * part.celsius, 0);
  return (held + hydration * flour.grams) / heat;
};

const celsius = fc.double({ min: 2, max: 35, noNaN: true });
const mixes: fc.Arbitrary<Mix> = fc.record({
  wanted: fc.double({ min: 20, max: 30, noNaN: true }),
  flour: fc.record({ grams: fc.integer({ min: 200, max: 20_000 }), celsius }),
  levain: fc.record({
    flour: fc.integer({ min: 0, max: 2000 }),
    water: fc.integer({ min: 0, max: 2000 }),
    celsius,
  }),
  water: fc.integer({ min: 100, max: 16_000 }),
  bowl: fc.record({ heat: fc.double({ min: 0, max: 3, noNaN: true }), celsius }),
});

describe('water for a wanted dough temperature', () => {
  it('brings the mix to what was wanted, whatever lies in the bowl', () => {
    fc.assert(
      fc.property(mixes, fc.constantFrom(0, 7.5, 15.1), (mix, hydration) => {
        const water = waterByBalance(mix, { hydration });
        expect(lands(mix, water, hydration)).toBeCloseTo(mix.wanted, 6);
      }),
    );
  });

  it('makes of that water the dough it was reckoned for', () => {
    fc.assert(
      fc.property(mixes, fc.constantFrom(0, 7.5, 15.1), (mix, hydration) => {
        const water = waterByBalance(mix, { hydration, offset: 1.2 });
        expect(doughByBalance(mix, water, { hydration, offset: 1.2 })).toBeCloseTo(mix.wanted, 6);
        expect(doughByBalance(mix, 30, { hydration })).toBeCloseTo(lands(mix, 30, hydration), 9);
      }),
    );
  });

  it('is less warm by what earlier mixes came out too warm', () => {
    const plain = waterByBalance(MIX, { hydration: 7.55 });
    const learned = waterByBalance(MIX, { hydration: 7.55, offset: 1.5 });
    expect(lands(MIX, learned, 7.55)).toBeCloseTo(MIX.wanted - 1.5, 6);
    expect(learned).toBeLessThan(plain);
  });

  it('is advised between both ends of the heat of wetting until five mixes are logged', () => {
    const open = waterAdvice(MIX, [1, 1, 1, 1], 15);
    expect(open.cool).toBeLessThan(open.celsius);
    expect(open.warm).toBeGreaterThan(open.celsius);
    const learned = waterAdvice(MIX, [9, 9, 1, 1, 2, 1, 0], 15);
    expect(learned.cool).toBe(learned.warm);
    expect(learned.celsius).toBeCloseTo(waterByBalance(MIX, { hydration: 7.55, offset: 1 }), 6);
  });

  it('is never above 40 °C, and says that the sum asked for more', () => {
    const cold = { ...MIX, wanted: 30, flour: { grams: 1000, celsius: 4 } };
    expect(waterByBalance(cold, { hydration: 7.55 })).toBeGreaterThan(WARMEST_WATER);
    expect(waterAdvice(cold, [], 15)).toMatchObject({ celsius: 40, warm: 40, capped: true });
    expect(waterAdvice(MIX, [], 15).capped).toBe(false);
  });

  it('names the ice that makes the tap as cold as that, and is never below freezing', () => {
    const hot = { ...MIX, wanted: 22, flour: { grams: 1000, celsius: 34 } };
    const advice = waterAdvice(hot, [], 18);
    const wanted = waterByBalance(hot, { hydration: 7.55 });
    expect(wanted).toBeGreaterThan(0);
    expect(advice.celsius).toBeCloseTo(wanted, 6);
    expect(advice.ice).toBeCloseTo(iceFor({ water: 750, tap: 18, wanted }), 6);
    expect(advice.ice).toBeGreaterThan(20);
    expect(waterAdvice(hot, [], wanted - 1).ice).toBe(0);
    const hotter = { ...hot, flour: { grams: 1000, celsius: 60 } };
    expect(waterAdvice(hotter, [], 18)).toMatchObject({ celsius: 0, cool: 0 });
  });

  it('by the rule of thumb counts levain as a fourth temperature', () => {
    const at = { flour: 20, room: 20, levain: null };
    expect(multiplierAdvice(25, at, 'hand')).toBeCloseTo(33.5, 6);
    expect(multiplierAdvice(25, { ...at, levain: 22 }, 'mixer')).toBeCloseTo(27, 6);
  });
});

describe('ice', () => {
  it('takes as much heat as the water gives up', () => {
    const given = { water: 1000, tap: 22, wanted: 12 };
    const grams = iceFor(given);
    const lost = (1000 - grams) * HEAT.water * 10;
    const won = grams * (334 + HEAT.water * 12 + HEAT.ice * 18);
    expect(lost).toBeCloseTo(won, 3);
  });

  it('is none where the tap is cold enough, and never more than the water', () => {
    expect(iceFor({ water: 1000, tap: 10, wanted: 12 })).toBe(0);
    expect(iceFor({ water: 1000, tap: 20, wanted: -200 })).toBe(1000);
  });
});

describe('a filling mixed in', () => {
  it('leaves the dough between both temperatures, and alone where it weighs nothing', () => {
    const dough = { grams: 1700, celsius: 27 };
    expect(mixedIn(dough, { grams: 0, celsius: 5, heat: 3.5 })).toBe(27);
    const same = mixedIn(dough, { grams: 1700, celsius: 5, heat: DOUGH_HEAT });
    expect(same).toBeCloseTo(16, 9);
  });
});
