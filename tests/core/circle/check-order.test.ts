import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkOrder, closingOf, type Asked } from '../../../src/core/circle/check-order.ts';
import {
  CIRCLE,
  type Circle,
  type CircleWays,
  type Order,
} from '../../../src/core/circle/circle.ts';
import { standingOrderId } from '../../../src/core/circle/orders.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { orderAsked, orderRefused } from '../../../src/core/speech/words/orders.ts';
import { tellOrder } from '../../../src/core/speech/tell-order.ts';

const SATURDAY = '2031-05-03';
const bread = (id: string, more: Partial<Formula> = {}): Formula =>
  ({
    id,
    name: id,
    flours: [{ id: 'w', name: 'wheat flour', grain: 'wheat', pct: 100, packet: 'read' }],
    fillings: [],
    ...more,
  }) as unknown as Formula;
const BREADS = [
  bread('wheat'),
  bread('cherry', {
    fillings: [
      { id: 'h', name: 'hazelnuts', pct: 10, keeps: 'shelf', allergens: ['tree nuts (hazelnut)'] },
      { id: 'c', name: 'cherries', pct: 20, keeps: 'shelf', allergens: [] },
    ],
  }),
];
const line = { bread: 'wheat', count: 1, grams: null, cut: false } as const;
const asked = (more: Partial<Asked> = {}): Asked => ({
  id: 'new',
  who: 'a',
  day: SATURDAY,
  at: null,
  lines: [line],
  standing: null,
  ...more,
});
const ways = (more: Partial<CircleWays>): Partial<Circle> => ({
  ways: { ...CIRCLE.ways, ...more },
});
const check = (
  one: Asked,
  circle: Partial<Circle> = {},
  at: { today?: string; minute?: number } = {},
) =>
  checkOrder(one, {
    circle: { ...CIRCLE, neighbours: [{ id: 'a', name: 'A', watch: [] }], ...circle },
    breads: BREADS,
    today: '2031-05-01',
    minute: 600,
    ...at,
  });
const keys = (checked: ReturnType<typeof check>): string[] => checked.asks.map(({ key }) => key);

const shows = { date: (day: string) => day, hour: (minute: number) => `${minute} min` };
const tell = (notice: { key: string; values: Record<string, string | number> }): string =>
  tellOrder(notice, { heat: 'C', weight: 'g' }, shows);

describe('an order that is refused', () => {
  it.each([
    ['orderPast', asked({ day: '2031-04-30' })],
    ['orderNoDay', asked({ day: '2031-02-29' })],
    ['orderNoDay', asked({ day: 'Saturday' })],
    ['orderNobody', asked({ who: 'x' })],
    ['orderNoHour', asked({ at: 1440 })],
    ['orderEmpty', asked({ lines: [] })],
    ['orderNoBread', asked({ lines: [{ ...line, bread: 'x' }] })],
    ['orderCount', asked({ lines: [line, { ...line, count: 0 }] })],
    ['orderCount', asked({ lines: [{ ...line, count: 100 }] })],
    ['orderCount', asked({ lines: [{ ...line, count: 1.5 }] })],
    ['orderCount', asked({ lines: [{ ...line, count: NaN }] })],
    ['orderWeight', asked({ lines: [{ ...line, grams: 129 }] })],
    ['orderWeight', asked({ lines: [{ ...line, grams: NaN }] })],
  ])('%s', (key, one) => {
    const { refused, asks } = check(one);
    expect(refused?.key).toBe(key);
    expect(asks).toEqual([]);
    expect(tell(refused!)).not.toMatch(/[{}]|NaN/);
  });

  it('says what can be taken in place of ten thousand loaves, or of a loaf too heavy', () => {
    const many = check(asked({ lines: [{ ...line, count: 10_000 }] })).refused!;
    expect(tell(many)).toBe('That many cannot be taken. Take 1 to 99 of a bread.');
    const heavy = check(asked({ lines: [{ ...line, grams: 2500 }] })).refused!;
    expect(tell(heavy)).toBe('No loaf of that weight can be taken. Choose 130 g to 2100 g.');
  });

  it('is every one with a count or a weight that is none, whatever was keyed', () => {
    const any = fc.oneof(fc.double(), fc.integer(), fc.maxSafeInteger());
    fc.assert(
      fc.property(any, fc.option(any), (count, grams) => {
        const { refused } = check(asked({ lines: [{ ...line, count, grams }] }));
        const fits =
          Number.isInteger(count) &&
          count >= 1 &&
          count <= 99 &&
          (grams === null || (grams >= 130 && grams <= 2100));
        expect(refused === null).toBe(fits);
        if (refused) expect(tell(refused)).toMatch(/\d/);
      }),
    );
  });

  it('is not one of today, of one loaf and of ninety-nine, of the least and the most weight', () => {
    for (const grams of [130, 2100])
      for (const count of [1, 99]) {
        const one = asked({ day: '2031-05-01', lines: [{ ...line, count, grams }] });
        expect(check(one)).toEqual({ refused: null, asks: [], already: null });
      }
  });
});

describe('an order that is asked again', () => {
  it('after the hour at which orders close, to the minute; it may be taken all the same', () => {
    const closes = ways({ closes: { days: 2, at: 1080 } });
    expect(closingOf({ ...CIRCLE, ...closes }, SATURDAY)).toEqual({ day: '2031-05-01', at: 1080 });
    expect(keys(check(asked(), closes, { minute: 1079 }))).toEqual([]);
    const late = check(asked(), closes, { minute: 1080 });
    expect(late.refused).toBeNull();
    expect(late.asks.map(tell)).toEqual(['Orders for that day closed at 1080 min on 2031-05-01.']);
    expect(keys(check(asked(), closes, { today: '2031-05-02', minute: 0 }))).toEqual([
      'orderClosed',
    ]);
    expect(keys(check(asked(), {}, { today: SATURDAY, minute: 1439 }))).toEqual([]);
  });

  it('at an hour that is past, which says more than that orders are closed', () => {
    const closes = ways({ closes: { days: 2, at: 1080 } });
    const today = { today: SATURDAY, minute: 601 };
    expect(keys(check(asked({ at: 600 }), closes, today))).toEqual(['orderHourPast']);
    expect(keys(check(asked({ at: 700 }), closes, today))).toEqual(['orderClosed']);
  });

  it('a second one of the same neighbour on one day, written or standing, but never itself', () => {
    const one: Order = { ...asked(), id: 'old', paid: false, handed: null, made: 1 };
    const twice = check(asked(), { orders: [one] });
    expect(keys(twice)).toEqual(['orderTwice']);
    expect(twice.already).toEqual(one);
    expect(check(one, { orders: [one] }).already).toBeNull();
    expect(keys(check(asked({ day: '2031-05-04' }), { orders: [one] }))).toEqual([]);
    const standing = [
      {
        id: 's',
        who: 'a',
        weekday: 6,
        at: null,
        lines: [line],
        from: '2031-01-01',
        until: null,
        skips: [],
      },
    ];
    const stands = check(asked(), { standing });
    expect(stands.already?.id).toBe(standingOrderId('s', SATURDAY));
    expect(check(stands.already!, { standing }).already).toBeNull();
  });

  it('where the bread brings what they must not eat, and where it is not known', () => {
    const cherry = asked({
      lines: [
        { ...line, bread: 'cherry' },
        { ...line, bread: 'cherry', count: 2 },
      ],
    });
    const of = (...watch: string[]) =>
      check(cherry, { neighbours: [{ id: 'a', name: 'A', watch }] });
    expect(keys(of())).toEqual([]);
    expect(of('tree nuts (hazelnut)').asks.map(tell)).toEqual([
      'cherry has tree nuts (hazelnut) in it. It is on their list.',
      'cherry: not known what is in cherries. Read the packet.',
    ]);
    expect(keys(of('milk'))).toEqual(['watchUnknown']);
    const plain = (...watch: string[]) =>
      check(asked(), { neighbours: [{ id: 'a', name: 'A', watch }] });
    expect(keys(plain('milk'))).toEqual([]);
    expect(keys(plain('gluten (wheat)'))).toEqual(['watchNamed']);
  });

  it('asks everything in one go, the caution first', () => {
    const one: Order = { ...asked(), id: 'old', paid: false, handed: null, made: 1 };
    const all = check(asked(), {
      neighbours: [{ id: 'a', name: 'A', watch: ['gluten'] }],
      orders: [one],
      ...ways({ closes: { days: 4, at: 0 } }),
    });
    expect(keys(all)).toEqual(['watchNamed', 'orderClosed', 'orderTwice']);
  });
});

describe('the words', () => {
  it('are there for every key, and for no other', () => {
    const values = {
      name: 'n',
      allergens: 'a',
      filling: 'f',
      day: 'd',
      minute: 1,
      count: 1,
      grams: 1,
      least: 1,
      most: 2,
    };
    for (const key of Object.keys({ ...orderRefused, ...orderAsked }))
      expect(tell({ key, values })).toMatch(/\.$/);
    expect(() => tell({ key: 'no', values })).toThrow('No sentence for the notice no.');
  });
});
