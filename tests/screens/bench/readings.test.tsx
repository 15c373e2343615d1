import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Reading } from '../../../src/core/records/fact.ts';
import { BAKE_STAGES, OVEN_STAGES, type BakeStage } from '../../../src/core/records/stage.ts';
import { readingNames } from '../../../src/core/speech/words/readings.ts';
import { kindsAt } from '../../../src/screens/bench/readings/kinds.ts';
import { atBench, lastFact, type AtBench } from './at-bench.tsx';

/** A loaded machine is long about thirty presses. */
vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = async (at: AtBench, ...names: (string | RegExp)[]): Promise<void> => {
  for (const name of names) {
    await at.press(name);
    // The bench has controls of the same names: the sheet's are meant.
    if (name === 'More') await screen.findByRole('dialog');
  }
};
const shown = (): string => document.querySelector('.pad-typed')?.textContent ?? 'no keypad';
/** Words as they are read: a number is kept on the line of its unit. */
const read = (el: Element | null): string =>
  el?.textContent.replaceAll('\u00a0', ' ').trim() ?? 'nothing there';
const hint = (): string => read(document.querySelector('.pad-hint'));

/** The list of readings, line by line. */
const rows = () =>
  [...document.querySelectorAll('.reading-row')].map((row) =>
    [...row.children].map((part) => read(part)),
  );

/** Every kind of reading, at a step where it is natural, and the presses from the bench. */
const TAKEN: readonly (readonly [BakeStage, readonly (string | RegExp)[], Reading])[] = [
  [
    'bulk.proving',
    ['New reading', 'Dough temperature', '2', '4', '5', 'That’s it'],
    { what: 'doughTemperature', celsius: 24.5 },
  ],
  [
    'bulk.proving',
    ['New reading', '2', '4', '5', /^Dough\s*24.5/],
    { what: 'doughTemperature', celsius: 24.5 },
  ],
  [
    'bulk.proving',
    ['New reading', '1', '8', '4', '0', /^Dough\s*1840/],
    { what: 'weight', grams: 1840, of: 'dough' },
  ],
  [
    'cool.cooling',
    ['New reading', '1', '1', '5', '0', /^A loaf\s*1150/],
    { what: 'weight', grams: 1150, of: 'loaf' },
  ],
  [
    'proof.retard',
    ['New reading', '1', '2', '0', '5', /^A piece\s*1205/],
    { what: 'weight', grams: 1205, of: 'piece' },
  ],
  [
    'read.list',
    ['New reading', '2', '1', '5', /^Kitchen\s*21.5/],
    { what: 'kitchenTemperature', celsius: 21.5 },
  ],
  [
    'levain.feed',
    ['New reading', 'Kitchen temperature', '2', '1', 'That’s it'],
    { what: 'kitchenTemperature', celsius: 21 },
  ],
  [
    'cool.cooling',
    ['New reading', 'Inside the loaf', '9', '6', '5', 'That’s it'],
    { what: 'coreTemperature', celsius: 96.5 },
  ],
  [
    'bulk.proving',
    ['New reading', 'Dough rise, by eye', 'By half'],
    { what: 'rise', percent: 50, of: 'dough' },
  ],
  [
    'bulk.proving',
    ['New reading', 'Dough rise, in %', '1', '2', '0', 'That’s it'],
    { what: 'rise', percent: 120, of: 'dough' },
  ],
  [
    'levain.feed',
    ['New reading', 'Levain rise, by eye', 'Doubled'],
    { what: 'rise', percent: 100, of: 'levain', atLeast: true },
  ],
  [
    'levain.feed',
    ['New reading', 'Levain rise, in %', '8', '5', 'That’s it'],
    { what: 'rise', percent: 85, of: 'levain' },
  ],
  [
    'bulk.proving',
    ['New reading', 'Edge and bubbles', 'Domed', 'Many'],
    { what: 'edge', edge: 'domed', bubbles: 'many' },
  ],
  ['proof.retard', ['New reading', 'Dent test', 'Not sure'], { what: 'poke', dent: 'unsure' }],
  [
    'mix.work',
    ['Weigh the dough', '1', '8', '4', '0', 'That’s it'],
    { what: 'weight', grams: 1840, of: 'dough' },
  ],
  [
    'mix.work',
    ['Weigh the dough', '1', '2', '.', '3', 'That’s it'],
    { what: 'weight', grams: 12_300, of: 'dough' },
  ],
  [
    'bulk.proving',
    ['New reading', '1', '2', '.', '3', /^Dough\s*12300/],
    { what: 'weight', grams: 12_300, of: 'dough' },
  ],
  [
    'shape.divide',
    ['Weigh a piece', '9', '1', '1', 'That’s it'],
    { what: 'weight', grams: 911, of: 'piece' },
  ],
  [
    'cool.handOver',
    ['Weigh a loaf', '7', '8', '0', 'That’s it'],
    { what: 'weight', grams: 780, of: 'loaf' },
  ],
  [
    'mix.weigh',
    ['New reading', 'Flour temperature', '1', '8', 'That’s it'],
    { what: 'flourTemperature', celsius: 18 },
  ],
  [
    'mix.weigh',
    ['New reading', 'Levain temperature', '2', '3', 'That’s it'],
    { what: 'levainTemperature', celsius: 23 },
  ],
  [
    'levain.feed',
    ['New reading', 'Cold tap water', '1', '2', 'That’s it'],
    { what: 'water', celsius: 12, of: 'tap' },
  ],
  [
    'mix.weigh',
    ['New reading', 'Water poured in', '3', '1', 'That’s it'],
    { what: 'water', celsius: 31, of: 'bowl' },
  ],
  ['cool.cooling', ['New reading', 'Crust colour', 'Golden'], { what: 'crust', colour: 'golden' }],
];

describe('taking a reading', () => {
  it.each(TAKEN)('at %s by %j', async (from, names, reading) => {
    const at = await atBench(from);
    await press(at, ...names);
    expect((await lastFact(at, 'reading')).reading).toEqual(reading);
    expect(at.presses).toBeLessThanOrEqual(6);
    await vi.waitFor(() => expect(document.querySelector('.sheet, .pad')).toBeNull());
    // It is said once its picture is there.
    await vi.waitFor(() => expect(at.said.at(-1)).not.toMatch(/undefined|NaN|[{}]/));
  });

  it('is blank at first and says what is usual', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', 'Dough temperature');
    expect(shown()).toBe('');
    expect(hint()).toBe('10 to 35 °C is usual.');
    await press(at, 'That’s it');
    expect(at.facts()).toHaveLength(1);
  });

  it('shows a weight with a point as kilograms, and takes its grams', async () => {
    const at = await atBench('mix.work');
    const unit = () => document.querySelector('.pad-unit')?.textContent;
    await press(at, 'Weigh the dough', '9', '1', '1');
    expect(unit()).toBe('g');
    await press(at, 'Clear', '1', '.', '8');
    expect([shown(), unit()]).toEqual(['1.8', 'kg']);
    screen.getByRole('button', { name: /^That’s it\s*1800\sg/ });
  });

  it('asks what is odd again, says what it expected, then keeps it and marks it', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', 'Dough temperature', '4', '1', 'That’s it');
    expect(hint()).toBe('Odd: 10 to 35 °C is usual.');
    expect(at.said.at(-1)).toBe(hint());
    expect(at.facts()).toHaveLength(1);
    await press(at, 'Keep it');
    expect((await lastFact(at, 'reading')).reading).toEqual({
      what: 'doughTemperature',
      celsius: 41,
      odd: true,
    });
  });

  it('goes by the baker’s own scale, and knows a probe of the other one', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', 'Dough temperature', '7', '6', 'That’s it');
    expect(hint()).toBe('Odd: does your probe show °F?');
    at.house.choose({ heat: 'F', weight: 'oz' });
    await vi.waitFor(() => expect(hint()).toBe('50 to 95 °F is usual.'));
    await press(at, 'That’s it');
    const { reading } = await lastFact(at, 'reading');
    expect(reading).toEqual({ what: 'doughTemperature', celsius: 24.44 });
    await press(at, 'New reading', 'Readings so far');
    expect(rows()[0]?.[1]).toBe('76 °F');
  });

  it('refuses what cannot be, keeps what was typed, and takes the mended number', async () => {
    const at = await atBench('cool.cooling');
    await press(at, 'New reading', 'Inside the loaf', '1', '9', '0');
    // A third digit that no crumb can have sets the point.
    expect(shown()).toBe('19.0');
    await press(at, 'Clear', 'Other readings', 'Kitchen temperature', '9', '9', 'That’s it');
    expect(hint()).toBe('Change it: only −30 to 60 °C here.');
    expect(shown()).toBe('99');
    await press(at, 'That’s it');
    expect(at.facts()).toHaveLength(1);
    await press(at, 'Clear', '2', '0', 'That’s it');
    expect((await lastFact(at, 'reading')).reading).toEqual({
      what: 'kitchenTemperature',
      celsius: 20,
    });
  });

  it('of several spots in one loaf keeps each', async () => {
    const at = await atBench('cool.cooling');
    await press(at, 'New reading', 'Inside the loaf', '9', '6', 'One more spot');
    await lastFact(at, 'reading');
    await vi.waitFor(() => expect(hint()).toBe('So far 96 °C. Next spot:'));
    expect(shown()).toBe('');
    await press(at, '9', '1', 'That’s it');
    await vi.waitFor(() => expect(at.facts()).toHaveLength(3));
    expect(at.facts().slice(1)).toMatchObject([
      { reading: { celsius: 96 } },
      { reading: { celsius: 91 } },
    ]);
  });

  it('has its caution at a hot oven, shown and said', async () => {
    const at = await atBench('oven.queued');
    await at.house.take({ kind: 'press', who: 'oven', act: 'ovenOn' });
    await press(at, 'More', 'New reading', 'Inside the loaf');
    expect(hint()).toBe('Dry mitts. Rack out, face back.');
    expect(at.said).toContain('Dry mitts. Rack out, face back.');
    await press(at, 'Back to the bench', 'More', 'New reading');
    expect(hint()).toBe('Dry mitts. Rack out, face back.');
    await press(at, 'Crust colour');
    expect(read(screen.getByRole('dialog'))).toContain('Dry mitts.');
  });

  it('can be reached in every stage', async () => {
    for (const stage of [...BAKE_STAGES, ...OVEN_STAGES]) {
      const { first, others } = kindsAt(stage);
      const ids = [...first, ...others].map(({ id }) => id);
      expect(new Set(ids).size, stage).toBe(20);
      expect(ids, stage).toHaveLength(20);
    }
    expect(kindsAt('levain.look').first[0]?.label).toBe('Levain rise, by eye');
    expect(kindsAt('judge').first[0]?.label).toBe('Inside the loaf');
    const at = await atBench('bulk.proving');
    await at.house.take({ kind: 'press', who: at.bake, act: 'doughSeen' });
    await vi.waitFor(() =>
      expect(screen.queryByRole('button', { name: 'New reading' })).toBeNull(),
    );
    await press(at, 'More', 'New reading', '2', '0', '5', /^Kitchen\s*20.5/);
    await lastFact(at, 'reading');
    expect(at.presses).toBe(6);
    await vi.waitFor(() => expect(document.querySelector('.sheet')).toBeNull());
  });
});

describe('a number keyed first', () => {
  const tiles = (): string[] =>
    [...document.querySelectorAll('.reading-which .control')].map((tile) => read(tile));

  it('is said to be what it is by the press that takes it, with nothing filled in before', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading');
    expect(shown()).toBe('');
    await press(at, '9', '1', '1');
    expect(tiles()).toEqual([
      'Inside the loaf91.1 °C',
      'Dough911 g',
      'A piece911 g',
      'A loaf911 g',
    ]);
    expect(at.facts()).toHaveLength(1);
    await press(at, 'Clear');
    expect(tiles()).toEqual(['Other readings']);
  });

  it('of many kinds is taken as a rarer one by a press more', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', '1', '8', '5', 'None of these', /^Flour temperature\s*18.5/);
    expect((await lastFact(at, 'reading')).reading).toEqual({
      what: 'flourTemperature',
      celsius: 18.5,
    });
    expect(at.presses).toBe(6);
    await vi.waitFor(() => expect(document.querySelector('.sheet')).toBeNull());
    await press(at, 'New reading', '1', '8', '5', 'None of these', 'Clear', '1', '9', '5');
    screen.getByRole('button', { name: 'None of these' });
    expect(at.facts()).toHaveLength(2);
  });

  it('that is odd for what it is said to be is asked again, and kept only then', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', '4', '1', /^Dough\s*41/);
    await vi.waitFor(() => expect(hint()).toBe('Odd: 10 to 35 °C is usual.'));
    expect(at.facts()).toHaveLength(1);
    await press(at, 'Keep it');
    expect((await lastFact(at, 'reading')).reading).toEqual({
      what: 'doughTemperature',
      celsius: 41,
      odd: true,
    });
  });
});

describe('a number half keyed', () => {
  it('is there again at its own question after the bench was shown, and at no other', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', 'Dough temperature', '2', '4', 'Back to the bench');
    await press(at, 'New reading', 'Kitchen temperature');
    expect(shown()).toBe('');
    await press(at, 'Back to the bench', 'New reading');
    expect(shown()).toBe('');
    await press(at, 'Dough temperature');
    expect(shown()).toBe('24');
    expect(hint()).toBe('Keyed before: clear it if old.');
    expect(at.facts()).toHaveLength(1);
    await press(at, '5', 'That’s it');
    expect((await lastFact(at, 'reading')).reading).toEqual({
      what: 'doughTemperature',
      celsius: 24.5,
    });
    await press(at, 'New reading', 'Dough temperature');
    expect(shown()).toBe('');
  });

  it('is gone with the act it was begun at', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', '2', '4', 'Back to the bench');
    await press(at, 'New reading');
    expect(shown()).toBe('24');
    await press(at, 'Back to the bench');
    await at.house.take({ kind: 'press', who: at.bake, act: 'doughSeen' });
    await press(at, 'More', 'New reading');
    expect(shown()).toBe('');
  });
});

describe('the readings so far', () => {
  it('are listed newest first in two presses, odd ones marked, and one press corrects one', async () => {
    const at = await atBench('bulk.proving');
    const take = (reading: Reading) =>
      at.house.take({ kind: 'reading', by: 'hand', bake: at.bake, reading });
    await take({ what: 'doughTemperature', celsius: 41, odd: true });
    await take({ what: 'edge', edge: 'flat', bubbles: 'none' });
    const time = at.house.hour(at.house.kitchen().now);
    await press(at, 'New reading', 'Readings so far');
    expect(rows()).toEqual([
      ['Edge and bubbles', 'Flat · None', time],
      ['Dough temperature', '41 °C', `${time} · odd`],
    ]);

    await press(at, 'Dough temperature');
    expect(read(screen.getByRole('heading', { level: 1 }))).toBe('Correct 41 °C');
    expect(shown()).toBe('');
    await press(at, '2', '4', 'That’s it');
    const target = at.facts()[1]!.id;
    expect(await lastFact(at, 'correct')).toMatchObject({
      target,
      reading: { what: 'doughTemperature', celsius: 24 },
    });
    await vi.waitFor(() => expect(document.querySelector('.pad')).toBeNull());

    await press(at, 'More', 'Readings so far');
    expect(rows()[1]).toEqual(['Dough temperature', '24 °C', `${time} · was 41 °C`]);
    await press(at, 'Edge and bubbles');
    expect(read(screen.getByRole('dialog'))).toContain('it says Flat · None.');
    await press(at, 'Fallen', 'Many');
    await vi.waitFor(() =>
      expect(at.facts().at(-1)).toMatchObject({
        kind: 'correct',
        reading: { what: 'edge', edge: 'fallen', bubbles: 'many' },
      }),
    );
  });

  it('follow a take-back', async () => {
    const at = await atBench('bulk.proving');
    await press(at, 'New reading', 'Dough rise, by eye', 'Doubled');
    await lastFact(at, 'reading');
    await vi.waitFor(() => expect(document.querySelector('.sheet')).toBeNull());
    await press(at, 'Take that back');
    await lastFact(at, 'takeBack');
    await press(at, 'New reading', 'Readings so far');
    expect(read(screen.getByRole('dialog'))).toContain('Nothing is measured yet.');
    expect(rows()).toEqual([]);
  });

  it('stand six to a page, and all of fourteen are reached by presses', async () => {
    const at = await atBench('bulk.proving');
    for (let n = 0; n < 14; n += 1) {
      const reading = { what: 'rise', percent: n, of: 'dough' } as const;
      await at.house.take({ kind: 'reading', by: 'hand', bake: at.bake, reading });
    }
    await press(at, 'New reading', 'Readings so far');
    expect(rows().map((row) => row[1])[0]).toBe('13 %');
    expect(rows()).toHaveLength(6);
    await press(at, 'Older', 'Older');
    expect(rows().map((row) => row[1])).toEqual(['1 %', '0 %']);
    await press(at, 'Newer');
    expect(rows()[0]?.[1]).toBe('7 %');
  });
});

it('every kind of reading has a name of its own', () => {
  const names = Object.values(readingNames);
  expect(new Set(names).size).toBe(names.length);
});
