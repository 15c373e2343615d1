import { readThing, readChange, readWays } from '../../../src/core/circle/read-row.ts';
import { readCircle, rowOf } from '../../../src/core/circle/read-circle.ts';
import { isDayKey } from '../../../src/core/circle/day-key.ts';
import { inverse, LISTS, put } from '../../../src/core/circle/row.ts';
import { readSavedCircle, savedCircle } from '../../../src/core/circle/saved-circle.ts';
import { CIRCLE, type Circle } from '../../../src/core/circle/circle.ts';
import { readPeople } from '../../../src/core/ear/read-person.ts';
import { readClipIndex } from '../../../src/core/speech/clip-index.ts';
import { EQUIPMENT, ANY_POT } from '../../../src/core/kitchen/equipment.ts';
import { readEquipment } from '../../../src/core/kitchen/read-equipment.ts';
import { aPerson } from '../../fakes/said-phrases.ts';
import { either, leftOut, ofData, ofText, only, orNothing, type Reader } from '../reader.ts';

const LINE = { bread: 'lane-wheat', count: 2, grams: 850, cut: true };
/** A circle that has one of everything. */
export const CIRCLE_HERE: Circle = {
  neighbours: [{ id: 'n1', name: 'B', watch: ['milk', 'tree nuts (walnut)', 'pas de fraises'] }],
  orders: [
    {
      ...{ id: 'o1', who: 'n1', day: '2031-05-03', at: 600, lines: [LINE], paid: false },
      ...{ handed: null, made: 1_935_000_000_000, standing: 's1' },
    },
  ],
  standing: [
    {
      ...{ id: 's1', who: 'n1', weekday: 6, at: null, lines: [{ ...LINE, grams: null }] },
      ...{ from: '2031-05-03', until: null, skips: ['2031-05-10'] },
    },
  ],
  ingredients: [
    {
      ...{ id: 'wheat flour', name: 'Wheat flour', pack: { grams: 1000, cost: 1.2, usable: 1 } },
      ...{ counted: { grams: 640, at: 1_935_000_000_000 }, madeOf: ['wheat'] },
    },
  ],
  ways: {
    ...{ oven: { from: 480, to: 720 }, closes: { days: 1, at: 1200 }, list: 'us', paper: 'roll' },
    ...{ lines: ['Baker, invented lane 3'], currency: 'GBP', besides: 0.1, times: 2.5 },
  },
};

const BEFORE = inverse(CIRCLE_HERE, {
  puts: [put('neighbours', CIRCLE_HERE.neighbours[0]!), put('orders', CIRCLE_HERE.orders[0]!)],
  ways: { times: 3 },
});
const ROWS = new Map<unknown, unknown>([
  ...LISTS.flatMap((list) => CIRCLE_HERE[list].map((one) => [rowOf(list, one.id), one] as const)),
  ['ways', CIRCLE_HERE.ways],
  ['before', BEFORE],
  ['gone:n9', true],
]);

const EQUIPPED = {
  ...EQUIPMENT,
  oven: { most: 250, steams: true, atDial: 215, preheat: 50, parchment: 220, timer: true },
  pots: [{ ...ANY_POT, material: 'bareIron', litres: 5, knob: 'plastic', cold: false }],
  quiet: { from: 1320, to: 360 },
  week: [{ name: 'asleep', weekdays: [0, 3], from: 1350, to: 390, canBend: false }],
  sound: { at: 1_935_000_000_000, heard: 'yes' },
  pedal: { done: 'PageDown', next: 'b' },
  savedAt: 1_935_000_000_000,
};

const PEOPLE = new Map<unknown, unknown>([
  ['en/boat', { ...aPerson(['done', 'seven'], { mark: 'boat' }, 'learned'), tongue: 'en' }],
]);
const CLIPS = {
  'hot now': { file: 'a.mp3', start: 0, bytes: 4_000, seconds: 1.2, wpm: 150 },
  'fold the dough': { file: 'a.mp3', start: 4_000, bytes: 8_000, seconds: 1.4, wpm: 150 },
};

/** Readers of what a kitchen has beside its log: settings, the circle, voices. */
export const KITCHEN_READERS: readonly Reader[] = [
  {
    of: 'core/kitchen/read-equipment.ts readEquipment',
    make: ofData(EQUIPPED, EQUIPMENT),
    read: (value: unknown) => {
      const { equipment, reason } = { reason: null, ...readEquipment(value) };
      return either(equipment, reason);
    },
    again: true,
  },
  ...LISTS.map((list): Reader => ({
    of: `core/circle/read-row.ts readThing (${list})`,
    make: ofData(CIRCLE_HERE[list][0]),
    read: (value: unknown) => {
      const { thing, reason } = readThing(list, value);
      return either(thing, reason);
    },
    again: true,
    share: 0.5,
  })),
  {
    of: 'core/circle/read-row.ts readWays',
    make: ofData(CIRCLE_HERE.ways),
    read: (value: unknown) => {
      const { ways, misread } = readWays(value);
      return leftOut(ways, misread);
    },
    again: true,
  },
  {
    of: 'core/circle/read-row.ts readChange',
    make: ofData(BEFORE),
    read: (value: unknown) => {
      const { change, reason } = readChange(value);
      return either(change, reason);
    },
    again: true,
  },
  {
    of: 'core/circle/read-circle.ts readCircle',
    make: ofData(ROWS),
    read: (value: unknown) => {
      const { circle, misread } = readCircle(value instanceof Map ? value : new Map());
      return leftOut(circle, misread);
    },
  },
  {
    of: 'core/circle/saved-circle.ts readSavedCircle',
    make: ofData(
      savedCircle(CIRCLE_HERE, true),
      savedCircle({ ...CIRCLE, ways: CIRCLE_HERE.ways }, true),
    ),
    read: (value: unknown) => {
      const { saved, reason } = readSavedCircle(Array.isArray(value) ? value : [value]);
      return either(saved, reason);
    },
  },
  {
    of: 'core/circle/day-key.ts isDayKey',
    make: ofText('2031-05-03', '2032-02-29'),
    read: (value: unknown) => orNothing(isDayKey(value)),
  },
  {
    of: 'core/ear/read-person.ts readPeople',
    make: ofData(PEOPLE),
    read: (value: unknown) => {
      const people = readPeople(value instanceof Map ? value : new Map(), 'en');
      return orNothing(people[0]);
    },
  },
  {
    of: 'core/speech/clip-index.ts readClipIndex',
    make: ofData(CLIPS),
    read: (value: unknown) => {
      const index = readClipIndex(value);
      const says = Object.keys(CLIPS['hot now']);
      return orNothing(index && [...index.values()].map((clip) => only(clip, says)));
    },
  },
];
