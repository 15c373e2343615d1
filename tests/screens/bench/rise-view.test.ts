import { describe, expect, it } from 'vitest';
import type { RiseCourse } from '../../../src/core/day/rise-course.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { placeLabels, type Room } from '../../../src/screens/bench/rise/place-labels.ts';
import { courseAt, riseView, type RiseView } from '../../../src/screens/bench/rise/rise-view.ts';
import { sayRise } from '../../../src/screens/bench/rise/say-rise.ts';
import { HOUR } from '../../../src/core/units.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const day = (at: number) =>
  ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'][new Date(at).getUTCDay()]!;
const viewOf = (of: RiseCourse, room?: Room) => riseView(of, hour, day, room);
/** What was read, without the labels of lines. */
const readIn = (view: RiseView) => view.marks.filter(({ shape }) => shape !== 'line');
const seen = (hours: number, reading: Reading) => ({ at: T0 + hours * HOUR, reading });

/** A straight rise to the goal in five hours, ± 10 %. */
const course = (change: Partial<RiseCourse> = {}): RiseCourse => ({
  of: 'dough',
  now: T0 + 2 * HOUR,
  band: Array.from({ length: 7 }, (_, h) => ({
    at: T0 + h * HOUR,
    low: 16 * h,
    likely: 18 * h,
    high: 20 * h,
  })),
  jar: [],
  seen: [
    seen(1, { what: 'rise', percent: 20, of: 'dough' }),
    seen(1.5, { what: 'rise', percent: 15, of: 'dough', in: 'jar' }),
    seen(3, { what: 'rise', percent: 100, of: 'dough', atLeast: true }),
  ],
  goal: 90,
  ...change,
});

describe('the chart of a rise', () => {
  it('draws time across and rise up, goal, now and readings where they belong', () => {
    const view = viewOf(course());
    const { likely, goal, now, band } = view;
    const marks = readIn(view);
    expect(likely[0]).toEqual({ x: 0, y: 1 });
    expect(likely.at(-1)!.x).toBe(1);
    // The likely line meets the goal five hours in.
    expect(likely[5]!.y).toBeCloseTo(goal, 9);
    expect(now).toBeCloseTo(2 / 6, 9);
    expect(marks.map(({ x }) => x)).toEqual([1 / 6, 1.5 / 6, 3 / 6]);
    expect(marks[0]!.y).toBeGreaterThan(marks[2]!.y);
    expect(band).toHaveLength(14);
    for (const { x, y } of [...band, ...marks]) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(1);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(1);
    }
  });

  it('tells bowl, jar, growth and dent apart by shape, and labels each with what was read', () => {
    expect(readIn(viewOf(course())).map(({ shape, label }) => [shape, label])).toEqual([
      ['bowl', '20 %'],
      ['jar', 'jar 15 %'],
      ['bowl', '100 % or more'],
    ]);
    const looks = [
      seen(2, { what: 'growth', grown: 'little' }),
      seen(4, { what: 'poke', dent: 'slow' }),
      seen(4, { what: 'growth', grown: 'grown' }),
    ];
    const loaf = viewOf(course({ of: 'loaf', goal: 100, seen: looks }));
    expect(readIn(loaf).map(({ shape, label }) => [shape, label])).toEqual([
      ['growth', 'a little'],
      // What one look said is one mark.
      ['dent', 'slow, grown'],
    ]);
  });

  it('holds the same values in its table: every hour, now, and every reading, in order', () => {
    const { rows, percent } = viewOf(course());
    expect(rows.map(({ time }) => time)).toEqual([
      '06:00',
      '07:00',
      '07:30',
      '08:00 now',
      '09:00',
      '10:00',
      '11:00',
      '12:00',
    ]);
    expect(rows[1]).toEqual({ time: '07:00', read: '20 %', likely: '20 %', span: '15 to 20 %' });
    expect(rows[3]).toEqual({ time: '08:00 now', read: null, likely: '35 %', span: '30 to 40 %' });
    expect(percent).toBe(35);
  });

  it('has one line for now and for what was read in the same minute', () => {
    const read = [10, 25].map((percent, i) =>
      seen(2 + (i + 1) / 200, { what: 'rise', percent, of: 'dough' }),
    );
    const { rows } = viewOf(course({ seen: read }));
    const now = rows.filter(({ time }) => time.startsWith('08:00'));
    expect(now.map(({ time, read }) => [time, read])).toEqual([['08:00 now', '10 %, 25 %']]);
  });

  it('labels goal, now and lines where they are, and names the day once it is another', () => {
    const labels = viewOf(course()).marks.filter(({ shape }) => shape === 'line');
    expect(labels.map(({ label }) => label)).toEqual(['goal 90 %', 'now', 'likely']);
    const long = course({
      band: course().band.map((one, i) => ({ ...one, at: T0 + 6 * i * HOUR })),
    });
    expect(viewOf(long).across.map(({ label }) => label)).toContain('Sun 12:00');
  });

  it('has fewer ticks where letters take more room', () => {
    const many = viewOf(course(), { letter: 0.01, line: 0.08 }).across.length;
    const few = viewOf(course(), { letter: 0.045, line: 0.16 }).across.length;
    expect(many).toBeGreaterThan(few);
    expect(few).toBeGreaterThanOrEqual(1);
  });

  it('cuts what the model says far beyond the goal, and makes room for what was read beyond it', () => {
    const high = course({ seen: [seen(3, { what: 'rise', percent: 160, of: 'dough' })] });
    expect(readIn(viewOf(high))[0]!.y).toBeGreaterThan(0);
    const steep = course();
    const far = { ...steep, band: steep.band.map((one) => ({ ...one, high: 10 * one.high })) };
    expect(Math.min(...viewOf(far).band.map(({ y }) => y))).toBe(0);
  });

  it('tells nothing to the percent that the clock does not know', () => {
    const steep = course();
    const far = { ...steep, band: steep.band.map((one) => ({ ...one, high: 2 * one.high })) };
    expect(viewOf(far).rows.find(({ time }) => time === '10:00')?.span).toBe('65 to over 110 %');
  });

  it('reads the course between its points, and no further than its ends', () => {
    const { band } = course();
    expect(courseAt(band, T0 + 1.5 * HOUR).likely).toBe(27);
    expect(courseAt(band, T0 - HOUR).likely).toBe(0);
    expect(courseAt(band, T0 + 20 * HOUR).likely).toBe(108);
  });
});

describe('labels beside their marks', () => {
  const ROOM = { letter: 0.017, line: 0.09 };
  const mark = (x: number, y: number, label = '50 %') => ({ x, y, label, shape: 'bowl' }) as const;

  it('stand on the right, on the left where there is no room', () => {
    expect(placeLabels([mark(0.2, 0.5)], ROOM)[0]).toMatchObject({ side: 'right', up: 0 });
    expect(placeLabels([mark(0.97, 0.5)], ROOM)[0]).toMatchObject({ side: 'left', up: 0 });
  });

  it('of two readings close together never lie on each other', () => {
    const [a, b] = placeLabels([mark(0.5, 0.5), mark(0.52, 0.5)], ROOM);
    expect([a!.side, a!.up]).not.toEqual([b!.side, b!.up]);
  });

  it.each([0.05, 0.3, 1, 2, 4])('of now and of what was read at %f h lie side by side', (at) => {
    // A standing tablet in bigger words.
    const room = { letter: 0.043, line: 0.127 };
    const read = [10, 25].map((percent) => seen(at, { what: 'rise', percent, of: 'dough' }));
    const { marks } = viewOf(course({ now: T0 + at * HOUR, seen: read }), room);
    const boxes = marks.map(({ x, y, side, up, label }) => {
      const [gap, long] = [1.2 * room.letter, (label.length + 1) * room.letter];
      const from = side === 'right' ? x + gap : x - gap - long;
      const middle = y - up * room.line;
      return { label, from, to: from + long, middle };
    });
    const meets = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter(
          (b) => a.from < b.to && b.from < a.to && Math.abs(a.middle - b.middle) < room.line - 1e-9,
        )
        .map((b) => [a.label, b.label]),
    );
    expect(meets).toEqual([]);
    expect(boxes.map(({ label }) => label)).toContain('now');
  });
});

describe('the chart said', () => {
  const marks = { earliest: T0 + 4 * HOUR, likely: T0 + 5 * HOUR, latest: T0 + 6.5 * HOUR };
  const twelve = (at: number) => `${((new Date(at).getUTCHours() + 11) % 12) + 1}:55\u00a0pm`;

  it('says where it is and when it is ready, in words', () => {
    expect(sayRise(course(), 55, marks, hour)).toBe(
      'fifty-five percent now, about. Ready from ten o’clock to twelve thirty.',
    );
  });

  it.each([
    ['a bulk', course(), marks],
    ['a cold loaf', course({ of: 'loaf' }), { ...marks, latest: T0 + 40 * HOUR }],
    ['a loaf by tonight', course({ of: 'loaf' }), marks],
    ['what may be ready', course({ of: 'loaf' }), { ...marks, earliest: T0 }],
    ['what has no window', course(), {}],
  ])('of %s is over within eight seconds, without a digit', (_, of, window) => {
    for (const percent of [5, 55, 115]) {
      const text = sayRise(of, percent, window as Readonly<Record<string, number>>, twelve);
      expect(text).not.toMatch(/\d/);
      const seconds = (text.split(/[\s-]+/).length / 150) * 60 + 0.5;
      expect(seconds, text).toBeLessThanOrEqual(8);
    }
  });
});
