import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/core/records/fact.ts';
import { READING_RANGES } from '../../src/core/records/reading-ranges.ts';
import { numberIn, readingOf } from '../../src/core/records/reading-number.ts';
import { slotOf, type NumberSlot } from '../../src/core/records/reading-slot.ts';
import { readReading } from '../../src/core/records/read-reading.ts';
import { makeRow } from '../fakes/records.ts';
import { readRecord } from '../../src/core/records/read-record.ts';

const SLOTS = Object.keys(READING_RANGES) as NumberSlot[];
const SIGNS: Reading[] = [
  { what: 'edge', edge: 'fallen', bubbles: 'many' },
  { what: 'growth', grown: 'little' },
  { what: 'growth', grown: 'unsure', rim: 'above' },
  { what: 'poke', dent: 'unsure' },
  { what: 'crust', colour: 'pale' },
];

describe('reading one reading', () => {
  it.each([...SLOTS.map((slot) => readingOf(slot, READING_RANGES[slot].usual.most)), ...SIGNS])(
    'takes %o as it is, odd or not',
    (reading) => {
      expect(readReading(reading, 'fact.reading').reading).toBe(reading);
      const odd = { ...reading, odd: true };
      expect(readReading(odd, 'fact.reading').reading).toBe(odd);
    },
  );

  it.each([
    ['reading', null],
    ['reading', 'warm'],
    ['reading.what', { what: 'smell' }],
    ['reading.what', { what: 'toString' }],
    ['reading.odd', { what: 'poke', dent: 'slow', odd: 'yes' }],
    ['reading.celsius', { what: 'doughTemperature' }],
    ['reading.celsius', { what: 'doughTemperature', celsius: '24' }],
    ['reading.celsius', { what: 'coreTemperature', celsius: Number.NaN }],
    ['reading.percent', { what: 'rise', of: 'dough' }],
    ['reading.of', { what: 'rise', percent: 50 }],
    ['reading.of', { what: 'weight', grams: 900, of: 'levain' }],
    ['reading.edge', { what: 'edge', bubbles: 'some' }],
    ['reading.bubbles', { what: 'edge', edge: 'flat', bubbles: 'few' }],
    ['reading.grown', { what: 'growth', rim: 'level' }],
    ['reading.rim', { what: 'growth', grown: 'none', rim: 'high' }],
    ['reading.dent', { what: 'poke', dent: 'slowly' }],
    ['reading.colour', { what: 'crust', colour: 'black' }],
  ])('names %s where it is wrong', (path, value) => {
    const { reading, reason } = readReading(value, 'reading');
    expect(reading).toBeNull();
    expect(reason?.path).toBe(path);
  });

  it('says what was expected and what came', () => {
    expect(readReading({ what: 'doughTemperature', celsius: -200 }, 'reading').reason).toEqual({
      path: 'reading.celsius',
      expected: '-30 to 100 °C',
      got: -200,
    });
  });

  it.each(SLOTS)('holds the bounds of %s to the last tenth', (slot) => {
    const { possible, usual } = READING_RANGES[slot];
    for (const at of [possible.least, possible.most]) {
      expect(readReading(readingOf(slot, at), 'r').reading).not.toBeNull();
    }
    expect(readReading(readingOf(slot, possible.least - 0.1), 'r').reading).toBeNull();
    expect(readReading(readingOf(slot, possible.most + 0.1), 'r').reading).toBeNull();
    expect(usual.least).toBeGreaterThanOrEqual(possible.least);
    expect(usual.most).toBeLessThanOrEqual(possible.most);
  });

  it('never throws, whatever comes', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const { reading, reason } = readReading(value, 'r');
        expect(reading === null).toBe(reason !== undefined);
      }),
    );
  });
});

describe('the slot of a reading', () => {
  it('is its kind, and of what, and leads back to it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SLOTS), fc.integer({ min: 0, max: 999 }), (slot, number) => {
        const reading = readingOf(slot, number);
        expect([slotOf(reading), numberIn(reading)]).toEqual([slot, number]);
      }),
    );
    expect(SIGNS.map((sign) => [slotOf(sign), numberIn(sign)])).toEqual([
      ['edge', null],
      ['growth', null],
      ['growth', null],
      ['poke', null],
      ['crust', null],
    ]);
  });
});

describe('a reading in a row of the log', () => {
  const row = (machineVersion: number, fact: object) => ({
    seq: 1,
    machineVersion,
    position: makeRow(1).position,
    fact: { id: 'x', device: 'd', at: 5, raw: 5, ...fact },
  });
  const freezing = { what: 'doughTemperature', celsius: -200 };
  const takes = (reading: unknown) => ({ kind: 'reading', bake: 'a', by: 'hand', reading });

  it('is refused by name where it cannot be, in a correction too', () => {
    const reason = { path: 'fact.reading.celsius', expected: '-30 to 100 °C', got: '-200' };
    expect(readRecord(row(2, takes(freezing)), 2)).toEqual({ record: null, reason });
    const corrects = { kind: 'correct', target: 'y', reading: freezing };
    expect(readRecord(row(2, corrects), 2)).toEqual({ record: null, reason });
  });

  it('is kept where an older program let it be keyed in twice', () => {
    const old = row(1, takes({ what: 'firstPiece', grams: 999_999 }));
    expect(readRecord(old, 2).record?.fact).toEqual(old.fact);
    expect(readRecord(row(1, takes({ what: 'firstPiece' })), 2).record).toBeNull();
  });
});
