import { describe, expect, it } from 'vitest';
import { tapeView } from '../../../src/screens/day/tape-view.ts';
import type { TapeRow } from '../../../src/parts/tape-shown.ts';
import { bread } from './breads.ts';
import { READ, saturday } from './saturday.ts';

const ONE = saturday({ formula: bread('cherry-hazelnut'), loaves: 6 });
const TWO = saturday(
  { formula: bread('cherry-hazelnut'), loaves: 2 },
  { formula: bread('lane-wheat'), loaves: 2 },
);
const DAYS = [
  ['one bake', ONE],
  ['two bakes', TWO],
] as const;
/** Letters in a row: a wide tablet, a small one, bigger words on a tall one, and less than that. */
const ROOMS = [70, 62, 46, 34, 26];
const all = DAYS.flatMap(([name, day]) => ROOMS.map((room) => [name, room, day] as const));

const half = (length: number, room: number): number => length / 2 / room;
const widest = (lines: readonly string[]): number => Math.max(...lines.map((line) => line.length));
/** Where something stands that is so many letters wide. */
const spread = (x: number, length: number, room: number): readonly [number, number] => [
  x - half(length, room),
  x + half(length, room),
];
const inRow = (rows: readonly TapeRow[], name: string) =>
  rows.flatMap((row) =>
    row.touches.flatMap((touch) => (touch.name.endsWith(name) ? [{ row, touch }] : [])),
  );

describe.each(all)('%s on a row of %i letters', (_, room, day) => {
  const read = {
    ...READ,
    mark: (batch: string) =>
      day === TWO ? day.batches.findIndex(({ name }) => name === batch) + 1 : null,
  };
  const rows = tapeView(day, read, room);

  it('tells each touch once, in the order of time, but what the lanes tell', () => {
    const wanted = day.touches
      .filter(({ name }) => !/^(lid lift|unload) /.test(name))
      .map(({ batch, name }) => `${batch}/${name}`);
    const told = rows.flatMap(({ touches }) => touches.map(({ key }) => key));
    expect(told.filter((key) => !key.endsWith('/ready')).toSorted()).toEqual(wanted.toSorted());
    expect(told.filter((key) => key.endsWith('/ready'))).toHaveLength(day.ready.length);
    expect(rows.flatMap(({ lanes }) => lanes)).toHaveLength(
      day.touches.filter(({ name }) => name.startsWith('load ')).length,
    );
  });

  it('has each calendar day begin a row of its own, once', () => {
    expect(rows.flatMap((row) => row.day ?? [])).toEqual(
      ['Thu', 'Fri', 'Sat'].slice(-rows.filter((row) => row.day).length),
    );
    expect(rows[0]!.day).not.toBeNull();
  });

  it('has no box, name or note over another, and none out of its row', () => {
    for (const { touches, notes, line } of rows) {
      const boxes = touches.map(({ x, time, mark }) =>
        spread(x, time.length + (mark ? 2.2 : 1), room),
      );
      const named = touches.map(({ x, lines }) => spread(x, widest(lines), room));
      const told = (wanted: number) =>
        notes.flatMap(({ x, lines, level }) =>
          level === wanted ? [spread(x, widest(lines), room)] : [],
        );
      const first = [...named, ...told(0)].toSorted((a, b) => a[0] - b[0]);
      for (const group of [boxes, first, told(1).toSorted((a, b) => a[0] - b[0])])
        group.forEach(([from, to], i) => {
          expect(from).toBeGreaterThanOrEqual(i === 0 ? -1e-9 : group[i - 1]![1] - 1e-9);
          expect(to).toBeLessThanOrEqual(1 + 1e-9);
        });
      expect(line.to).toBeLessThanOrEqual(1);
      expect(line.from).toBeLessThan(line.to);
    }
  });

  it('keeps ticks clear of touches, and windows, lanes and free hours in their row', () => {
    for (const { touches, ticks, windows, away, lanes } of rows) {
      for (const { x } of ticks)
        for (const touch of touches) expect(Math.abs(touch.x - x) * room).toBeGreaterThan(0.5);
      for (const { from, to } of [...windows, ...away, ...lanes]) {
        expect(from).toBeGreaterThanOrEqual(0);
        expect(to).toBeLessThanOrEqual(1);
        expect(to).toBeGreaterThan(from);
      }
    }
  });

  it('gives every lane words that stay in the row', () => {
    for (const { lanes } of rows)
      for (const { from, lid, to, label, side } of lanes) {
        expect(lid).toBeGreaterThan(from);
        // A load may go on past its row’s end.
        expect(lid).toBeLessThanOrEqual(to);
        if (side === 'right') expect(to * room + label.length).toBeLessThanOrEqual(room);
        if (side === 'left') expect(from * room).toBeGreaterThanOrEqual(label.length);
      }
  });
});

describe('a bake for Saturday noon', () => {
  const rows = tapeView(ONE, READ, 70);

  it('shows when its dough is ready around the touch that ends the wait', () => {
    const [divide] = inRow(rows, 'Divide');
    const over = divide!.row.windows.filter(
      ({ from, to }) => from <= divide!.touch.x && to >= divide!.touch.x,
    );
    expect(over).toHaveLength(1);
    const [mix] = inRow(rows, 'Mix flour and water');
    expect(
      mix!.row.windows.some(({ from, to }) => from <= mix!.touch.x && to >= mix!.touch.x),
    ).toBe(true);
  });

  it('tells each long wait once with its length or its hours, and till when nobody is up', () => {
    const words = rows.flatMap(({ notes }) => notes.map(({ lines }) => lines.join(' ')));
    for (const one of [
      /^11\u00a0h\u00a015, ripe 06:55 – 11:05$/,
      /^bulk ready \d\d:\d\d – \d\d:\d\d$/,
      /^14\u00a0h cold$/,
      /^2\u00a0h\u00a005 to cool$/,
    ])
      expect(
        words.filter((text) => one.test(text)),
        String(one),
      ).toHaveLength(1);
    expect(words).toContain('asleep till 06:30');
  });

  it('keeps each load in the oven from its touch on', () => {
    const saturdayRow = rows.at(-1)!;
    const loads = saturdayRow.touches.filter(({ name }) => /Load \d/.test(name));
    expect(saturdayRow.lanes.map(({ from }) => from)).toEqual(loads.map(({ x }) => x));
    expect(saturdayRow.lanes.map(({ label }) => label)).toEqual([
      'lid 07:40, out 08:00',
      'lid 08:35, out 08:55',
      'lid 09:30, out 09:50',
    ]);
  });

  it('marks what the baker has put to an hour', () => {
    const stays = tapeView(ONE, { ...READ, stays: ({ name }) => name === 'mix' }, 70);
    const kept = stays.flatMap(({ touches }) => touches.filter((touch) => touch.stays));
    expect(kept.map(({ key }) => key)).toEqual(['Cherry and hazelnut/mix']);
  });
});
