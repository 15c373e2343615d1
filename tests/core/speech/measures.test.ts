import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keyedHeight, showHeight } from '../../../src/core/speech/heights.ts';
import { sayHeat, showHeat, showHeats } from '../../../src/core/speech/heats.ts';
import { keyedHeat, keyedWeight } from '../../../src/core/speech/keyed.ts';
import { sayWeight, showWeight } from '../../../src/core/speech/weights.ts';
import type { Units } from '../../../src/core/units.ts';

const METRIC: Units = { heat: 'C', weight: 'g' };
const OTHER: Units = { heat: 'F', weight: 'oz' };

/** Reads a shown weight back to grams, written apart from the code under test. */
const gramsRead = (shown: string): number => {
  const part = (unit: string) => Number(new RegExp(`([\\d.]+)\\s${unit}\\b`).exec(shown)?.[1] ?? 0);
  return part('g') + part('lb') * 453.59237 + part('oz') * 28.349523125;
};
const celsiusRead = (shown: string): number => {
  const [number, unit] = shown.split(' ');
  return unit === '°C' ? Number(number) : ((Number(number) - 32) * 5) / 9;
};

/** Half of what the scale steps by, g: 0.01, 0.05 and 0.1 oz. */
const half = (grams: number): number => (grams < 56 ? 0.142 : grams < 453 ? 0.709 : 1.418);

test('a weight that is shown reads back within half a step of the scale', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 99_000, noNaN: true }), (grams) => {
      expect(Math.abs(gramsRead(showWeight(grams, METRIC)) - grams)).toBeLessThanOrEqual(0.0501);
      const shown = showWeight(grams, OTHER);
      expect(Math.abs(gramsRead(shown) - grams), shown).toBeLessThanOrEqual(half(grams) + 0.001);
      const ounces = Number(/([\d.]+)\soz/.exec(shown)?.[1] ?? 0);
      expect(ounces, shown).toBeLessThan(16);
      expect(sayWeight(grams, OTHER)).toMatch(/(pounds?|ounces?)$/);
    }),
    { numRuns: 3000 },
  );
});

test('salt and starter keep their worth in ounces: within 3 % from 5 g on', () => {
  fc.assert(
    fc.property(fc.double({ min: 5, max: 56, noNaN: true }), (grams) => {
      expect(Math.abs(gramsRead(showWeight(grams, OTHER)) / grams - 1)).toBeLessThan(0.03);
    }),
  );
});

test.each([
  [9.5, '0.34 oz', 'zero point three four ounces'],
  [30, '1.06 oz', 'one point zero six ounces'],
  [220, '7.75 oz', 'seven point seven five ounces'],
  [453.5, '1 lb', 'one pound'],
  [900, '1 lb 15.7 oz', 'one pound fifteen point seven, one five point seven, ounces'],
  [906, '2 lb', 'two pounds'],
  [935.53, '2 lb 1 oz', 'two pounds one ounce'],
])('%d g is %s', (grams, shown, said) => {
  expect(showWeight(grams, OTHER).replaceAll('\u00a0', ' ')).toBe(shown);
  expect(sayWeight(grams, OTHER)).toBe(said);
});

test('a temperature that is shown reads back within 0.05 °C or half a °F', () => {
  fc.assert(
    fc.property(fc.double({ min: -20, max: 300, noNaN: true }), (celsius) => {
      expect(Math.abs(celsiusRead(showHeat(celsius, METRIC)) - celsius)).toBeLessThan(0.0501);
      expect(Math.abs(celsiusRead(showHeat(celsius, OTHER)) - celsius)).toBeLessThan(0.2779);
      expect(sayHeat(celsius, OTHER)).toMatch(/ degrees? Fahrenheit$/);
    }),
    { numRuns: 2000 },
  );
  expect(sayHeat(-18, OTHER)).toBe('zero degrees Fahrenheit');
  expect(sayHeat(-4.5, METRIC)).toBe('minus four point five degrees');
});

test('the heats of the trade are the same heat in both units, an oven’s within its dial', () => {
  const [c, f] = [showHeats(METRIC), showHeats(OTHER)];
  expect(c['potHeat']).toBe('260 °C');
  expect(c['parchmentHeat']).toBe('215 to 230 °C');
  for (const [name, shown] of Object.entries(c)) {
    const near = shown.match(/\d+/g)!.map(Number);
    f[name]!.match(/\d+/g)!.forEach((fahrenheit, i) => {
      expect(Math.abs(((Number(fahrenheit) - 32) * 5) / 9 - near[i]!), name).toBeLessThan(1.39);
    });
    expect(f[name]).toMatch(/ °F$/);
  }
});

const KITCHEN = { least: 5, most: 40 };
const PIECE = { least: 150, most: 2500 };

test('a keypad asks in the baker’s unit and gives °C and grams', () => {
  expect(keyedHeat(KITCHEN, METRIC)).toMatchObject({ unit: '°C', least: 5, most: 40 });
  expect(keyedHeat(KITCHEN, OTHER)).toMatchObject({ unit: '°F', range: '41 to 104 °F' });
  expect(keyedHeat(KITCHEN, OTHER).record(76)).toBe(24.44);
  expect(keyedHeat(KITCHEN, METRIC).record(24.5)).toBe(24.5);
  expect(keyedWeight(PIECE, METRIC)).toMatchObject({ unit: 'g', range: '150 to 2500 g' });
  expect(keyedWeight(PIECE, OTHER)).toMatchObject({ unit: 'oz', range: '6 to 88 oz' });
  expect(keyedWeight(PIECE, OTHER).record(33)).toBe(935.5);
});

test('a height is keyed and shown in metres, or in feet where heat is in °F', () => {
  const sea = { least: 0, most: 5000 };
  expect(keyedHeight(sea, METRIC)).toMatchObject({ unit: 'm', range: '0 to 5000 m' });
  expect(keyedHeight(sea, OTHER)).toMatchObject({ unit: 'ft', range: '0 to 16404 ft' });
  expect(keyedHeight(sea, OTHER).record(5000)).toBe(1524);
  expect(showHeight(1524, METRIC)).toBe('1524 m');
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 16404 }), (feet) => {
      const metres = keyedHeight(sea, OTHER).record(feet);
      expect(showHeight(metres, OTHER)).toBe(`${feet} ft`);
      expect(metres).toBeLessThanOrEqual(sea.most);
    }),
  );
});

test('what is keyed in is shown as it was keyed, and what is plausible lies in the record’s range', () => {
  fc.assert(
    fc.property(fc.integer({ min: 41, max: 104 }), (typed) => {
      const celsius = keyedHeat(KITCHEN, OTHER).record(typed);
      expect(showHeat(celsius, OTHER)).toBe(`${typed} °F`);
      expect(celsius).toBeGreaterThanOrEqual(KITCHEN.least);
      expect(celsius).toBeLessThanOrEqual(KITCHEN.most);
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: 60, max: 880 }), (tenths) => {
      const grams = keyedWeight(PIECE, OTHER).record(tenths / 10);
      expect(
        Math.abs(gramsRead(showWeight(grams, OTHER)) / 28.349523125 - tenths / 10),
      ).toBeLessThan(0.051);
      expect(grams).toBeGreaterThanOrEqual(PIECE.least);
      expect(grams).toBeLessThanOrEqual(PIECE.most);
    }),
  );
});
