import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANY_POT, POT_MATERIALS, type Pot } from '../../../src/core/kitchen/equipment.ts';
import { placesFor } from '../../../src/core/kitchen/places.ts';
import { potHolds } from '../../../src/core/kitchen/pot-holds.ts';
import {
  coldDough,
  coldDoughAllowed,
  fitsPot,
  potsFor,
  potsOf,
} from '../../../src/core/kitchen/pots.ts';

const pot = fc.record<Pot>({
  material: fc.option(fc.constantFrom(...POT_MATERIALS)),
  litres: fc.option(fc.double({ min: 2, max: 10, noNaN: true })),
  knob: fc.constant(null),
  cold: fc.option(fc.boolean()),
});
const kitchen = fc.array(pot, { minLength: 1, maxLength: 6 });

describe('the pots of a kitchen', () => {
  it('are named as they stand, each once, and numbered from one', () => {
    const names = [1, 2, 3, 4, 5, 6].map((count) =>
      potsOf({ pots: Array<Pot>(count).fill(ANY_POT) }).map(({ name }) => name),
    );
    expect(names.slice(0, 4)).toEqual([
      ['pot'],
      ['left', 'right'],
      ['left', 'middle', 'right'],
      ['backLeft', 'backRight', 'frontLeft', 'frontRight'],
    ]);
    expect(names[5]).toEqual(['first', 'second', 'third', 'fourth', 'fifth', 'sixth']);
    fc.assert(
      fc.property(kitchen, (pots) => {
        const lanes = potsOf({ pots });
        expect(lanes.map(({ id }) => id)).toEqual(pots.map((_, i) => `pot-${i + 1}`));
        expect(new Set(lanes.map(({ name }) => name)).size).toBe(pots.length);
        expect(lanes.map(({ material }) => material)).toEqual(pots.map((one) => one.material));
      }),
    );
  });

  it('are one to six', () => {
    expect(() => potsOf({ pots: [] })).toThrow('A kitchen has 1 to 6 pots.');
    expect(() => potsOf({ pots: Array<Pot>(7).fill(ANY_POT) })).toThrow('1 to 6');
  });

  it('hold so much dough a litre, and anything where nobody said their size', () => {
    // 900 g in a 3-litre pot, and the usual 4 to 5 litres for a big loaf.
    expect(potHolds(3)).toBe(909);
    const [unsaid, small] = potsOf({ pots: [ANY_POT, { ...ANY_POT, litres: 3 }] });
    expect(fitsPot(unsaid!, 5000)).toBe(true);
    expect(fitsPot(small!, 909)).toBe(true);
    expect(fitsPot(small!, 910)).toBe(false);
    expect(potsFor([unsaid!, small!], 1200)).toEqual([unsaid]);
  });

  it('take a lighter loaf wherever they take a heavier one', () => {
    const grams = fc.integer({ min: 150, max: 2500 });
    fc.assert(
      fc.property(kitchen, grams, grams, (pots, a, b) => {
        const lanes = potsOf({ pots });
        const heavy = potsFor(lanes, Math.max(a, b));
        expect(potsFor(lanes, Math.min(a, b))).toEqual(expect.arrayContaining([...heavy]));
      }),
    );
  });
});

describe('cold dough in a hot pot', () => {
  it('is for bare iron and where the maker allows it, asked of enamel, never for clay or glass', () => {
    const told = (material: Pot['material'], cold: Pot['cold'] = null) =>
      coldDough({ material, cold });
    expect([told('bareIron'), told('enamel', true), told('clay', true)]).toEqual(
      Array(3).fill('allowed'),
    );
    expect([told('enamel'), told(null)]).toEqual(['ask', 'ask']);
    expect([told('clay'), told('glass'), told('enamel', false), told(null, false)]).toEqual(
      Array(4).fill('never'),
    );
  });

  it('counts for a place exactly where it is not ruled out', () => {
    fc.assert(
      fc.property(kitchen, (pots) => {
        const lanes = potsOf({ pots });
        const places = lanes.filter((one) => coldDough(one) !== 'never').length;
        expect(places).toBe(placesFor({ pots, tins: 1, stones: 1 }, 'pot'));
        for (const lane of lanes.filter(coldDoughAllowed)) {
          expect(lane.material === 'bareIron' || lane.cold === true).toBe(true);
        }
      }),
    );
  });
});
