import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANY_POT, EQUIPMENT, type Equipment } from '../../../src/core/kitchen/equipment.ts';
import { placesFor } from '../../../src/core/kitchen/places.ts';
import { readEquipment } from '../../../src/core/kitchen/read-equipment.ts';

const WHOLE: Equipment = {
  oven: { most: 250, steams: true, atDial: 215, preheat: 50, parchment: 220, timer: true },
  height: 1200,
  pots: [
    { material: 'bareIron', litres: 5, knob: 'heatProof', cold: null },
    { material: 'glass', litres: null, knob: 'plastic', cold: false },
  ],
  tins: 3,
  stones: 2,
  fridge: { celsius: 4.5, holds: 6 },
  bowls: { count: 2, kilos: 3, litres: 7 },
  scale: 0.1,
  quiet: { from: 1320, to: 360 },
  week: [
    { name: 'asleep', weekdays: [0, 1, 2, 3, 4, 5, 6], from: 1350, to: 390, canBend: true },
    { name: 'at work', weekdays: [1, 3], from: 480, to: 840, canBend: false },
  ],
  sound: { at: Date.UTC(2031, 4, 3), heard: 'yes' },
  readsOwn: true,
  pedal: { done: 'PageDown', next: 'b' },
  mediaKeys: true,
  ear: 'learned',
  pace: 'small',
  savedAt: Date.UTC(2031, 4, 2),
};

const NIGHT = { name: 'asleep', weekdays: [0], from: 1350, to: 390 };

describe('reading what the kitchen holds', () => {
  it('takes a whole setting as it is, and nothing as nothing said', () => {
    expect(readEquipment(WHOLE).equipment).toEqual(WHOLE);
    expect(readEquipment(undefined).equipment).toEqual(EQUIPMENT);
  });

  it('fills in what an older setting lacks, and drops what it does not know', () => {
    expect(readEquipment({ tins: 4, kettle: 2 }).equipment).toEqual({ ...EQUIPMENT, tins: 4 });
    expect(readEquipment({ oven: { most: 250 } }).equipment?.oven).toEqual({
      ...EQUIPMENT.oven,
      most: 250,
    });
  });

  it('takes no quiet hours from a setting in which nobody had chosen them', () => {
    const { quiet: _, ...rest } = WHOLE;
    const { equipment } = readEquipment({ ...rest, night: { from: 1320, to: 360 } });
    expect(equipment).toEqual({ ...WHOLE, quiet: null });
  });

  it('takes a call that was heard faintly for one not heard', () => {
    const { equipment } = readEquipment({ ...WHOLE, sound: { at: 5, heard: 'faint' } });
    expect(equipment?.sound).toEqual({ at: 5, heard: 'no' });
  });

  it('drops keys that may not be taught, or are taught twice', () => {
    const { equipment } = readEquipment({
      ...WHOLE,
      pedal: { done: 'PageDown', next: 'PageDown', takeBack: '7', hush: 'Tab', kettle: 'k' },
    });
    expect(equipment?.pedal).toEqual({ done: 'PageDown' });
  });

  it('sleeps at night unless it was said, and keeps a week in which nobody is ever away', () => {
    expect(readEquipment({ tins: 4 }).equipment?.week).toEqual([
      { name: 'asleep', weekdays: [0, 1, 2, 3, 4, 5, 6], from: 1350, to: 390, canBend: true },
    ]);
    expect(readEquipment({ ...WHOLE, week: [] }).equipment?.week).toEqual([]);
  });

  it('takes a window that ends where it begins for a whole day, a weekday twice for once', () => {
    const all = { name: 'away', weekdays: [2, 2], from: 600, to: 600 };
    expect(readEquipment({ week: [all] }).equipment?.week).toEqual([
      { ...all, weekdays: [2], canBend: true },
    ]);
  });

  it('keeps quiet hours that were switched off, and what was never said', () => {
    const read = readEquipment({ ...WHOLE, quiet: null, sound: null, scale: null }).equipment;
    expect(read).toMatchObject({ quiet: null, sound: null, scale: null });
  });

  it.each<[string, unknown, string, string]>([
    ['the file', 7, 'an object', '7'],
    ['oven.most', { oven: { most: 900 } }, 'a number 180 to 320', '900'],
    ['oven.steams', { oven: { steams: 'yes' } }, 'true or false', '"yes"'],
    ['height', { height: 9000 }, 'a number 0 to 5000', '9000'],
    ['height', { height: '1200 m' }, 'a number 0 to 5000', '"1200 m"'],
    ['pots', { pots: [] }, 'a list of 1 to 6', 'a list of 0'],
    [
      'pots[0].material',
      { pots: [{ material: 'gold' }] },
      'one of bareIron, enamel, clay, glass',
      '"gold"',
    ],
    ['tins', { tins: 1.5 }, 'a whole number 1 to 12', '1.5'],
    ['scale', { scale: 3 }, 'one of 0.1, 1, 2, 5', '3'],
    ['oven.timer', { oven: { timer: 1 } }, 'true or false', '1'],
    ['week', { week: 'always' }, 'a list of 0 to 12', '"always"'],
    ['week[0].to', { week: [{ ...NIGHT, to: 1440 }] }, 'a whole number 0 to 1439', '1440'],
    [
      'week[0].weekdays[0]',
      { week: [{ ...NIGHT, weekdays: [7] }] },
      'one of 0, 1, 2, 3, 4, 5, 6',
      '7',
    ],
    ['week[0].weekdays', { week: [{ ...NIGHT, weekdays: [] }] }, 'a list of 1 to 7', 'a list of 0'],
    ['week[0].name', { week: [{ ...NIGHT, name: ' ' }] }, 'a text of 1 to 80 characters', '" "'],
    ['readsOwn', { readsOwn: 'yes' }, 'true or false', '"yes"'],
    ['pace', { pace: 'fast' }, 'one of grown, small', '"fast"'],
    ['quiet.to', { quiet: { from: 0, to: 1440 } }, 'a whole number 0 to 1439', '1440'],
    [
      'sound.heard',
      { sound: { at: 5, heard: 'maybe' } },
      'one of yes, no, sightOnly, faint',
      '"maybe"',
    ],
  ])('says where, what was wanted and what came: %s', (path, value, expected, got) => {
    expect(readEquipment(value)).toEqual({ equipment: null, reason: { path, expected, got } });
  });

  it('never throws, and what it reads it reads again unchanged', () => {
    const mended = fc.record(
      Object.fromEntries(
        Object.entries(WHOLE).map(([name, good]) => [
          name,
          fc.oneof(fc.constant(good as unknown), fc.anything()),
        ]),
      ),
      { requiredKeys: [] },
    );
    let read = 0;
    fc.assert(
      fc.property(fc.oneof(fc.anything(), mended), (value) => {
        const { equipment, reason } = readEquipment(value);
        if (equipment === null) {
          expect(reason!.expected).not.toBe('');
          return;
        }
        read += 1;
        expect(readEquipment(structuredClone(equipment)).equipment).toEqual(equipment);
      }),
      { numRuns: 500 },
    );
    expect(read).toBeGreaterThan(5);
  });
});

describe('places in one load', () => {
  it('counts each vessel by itself', () => {
    expect(placesFor(EQUIPMENT, 'pot')).toBe(1);
    expect(placesFor({ ...WHOLE, pots: [WHOLE.pots[0]!, WHOLE.pots[0]!] }, 'pot')).toBe(2);
    const sizes = { ...WHOLE, pots: [2, 3, 4].map((litres) => ({ ...ANY_POT, litres })) };
    expect([600, 900, 1200, 2000].map((grams) => placesFor(sizes, 'pot', grams))).toEqual([
      3, 2, 1, 3,
    ]);
    expect(placesFor(WHOLE, 'tin')).toBe(3);
    expect(placesFor(WHOLE, 'stone')).toBe(2);
  });

  it('leaves out clay and glass: cold dough never goes into them hot', () => {
    const pot = (material: Equipment['pots'][number]['material']) => ({
      material,
      litres: null,
      knob: null,
      cold: null,
    });
    const of = (...materials: Parameters<typeof pot>[0][]) =>
      placesFor({ ...WHOLE, pots: materials.map(pot) }, 'pot');
    expect(of('bareIron', 'glass', 'clay')).toBe(1);
    expect(of('enamel', null)).toBe(2);
    expect(of('clay')).toBe(0);
  });

  it('goes by what the maker of a pot allows, which bare iron needs not', () => {
    const pot = WHOLE.pots[1]!;
    const of = (...pots: Equipment['pots']) => placesFor({ ...WHOLE, pots }, 'pot');
    expect(of({ ...pot, cold: true })).toBe(1);
    expect(of({ ...pot, material: 'enamel', cold: false })).toBe(0);
    expect(of({ ...pot, material: 'bareIron', cold: false })).toBe(1);
  });
});
