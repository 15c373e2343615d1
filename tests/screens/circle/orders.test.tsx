import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CIRCLE, type Circle, type Order } from '../../../src/core/circle/circle.ts';
import { ordersOn } from '../../../src/core/circle/orders.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { CapSays } from '../../../src/screens/circle/orders/cap-says.ts';
import { DayOrders } from '../../../src/screens/circle/orders/DayOrders.tsx';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { fakeCircle } from '../../fakes/circle.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
/** The world's clock begins on Saturday, 3 May 2031. */
const TODAY = '2031-05-03';
const DAY = '2031-05-10';

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const miller = { id: 'm', name: 'M of the mill', watch: [] };
const wheat = { bread: 'lane-wheat', count: 2, grams: null, cut: false } as const;
const order = (more: Partial<Order> = {}): Order => ({
  id: 'o',
  who: 'm',
  day: TODAY,
  at: 600,
  lines: [wheat],
  paid: false,
  handed: null,
  made: 1,
  standing: null,
  ...more,
});

const open = async (first: Partial<Circle> = {}, cap?: CapSays, day = DAY) => {
  const { house } = await openBaking(makeFakeWorld());
  await vi.waitFor(() => expect(house.book().length).toBeGreaterThan(2), { timeout: 20_000 });
  const circle = fakeCircle({ neighbours: [miller], ...first });
  const back = vi.fn();
  render(() => (
    <PressGround now={clock}>
      <DayOrders
        house={house}
        circle={circle}
        day={day}
        cap={cap}
        onOpen={() => undefined}
        onBack={back}
      />
    </PressGround>
  ));
  return { house, circle, back, on: (which = day) => ordersOn(circle.circle(), which) };
};
/** A press, and what is written by it. */
const press = async (...names: readonly RegExp[]): Promise<void> => {
  for (const name of names) {
    clock.at += 1_100;
    tap(screen.getByRole('button', { name }));
    await Promise.resolve();
    await Promise.resolve();
    await Promise.resolve();
  }
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const shows = (text: RegExp) => expect(document.body.textContent).toMatch(text);

describe('a bake day', { timeout: 30_000 }, () => {
  it('shows its orders by hour and name, and all of its bread by weight', async () => {
    await open({
      neighbours: [miller, { id: 'k', name: 'K', watch: [] }],
      orders: [
        order({ day: DAY, lines: [wheat, { ...wheat, count: 1, grams: 450, cut: true }] }),
        order({ id: 'p', who: 'k', day: DAY, at: 480, paid: true }),
      ],
    });
    expect(headline()).toBe('Bake 5 loaves for Sat 10 May');
    shows(/5 Lane wheat \(1 of 450.g\)/);
    const names = screen.getAllByRole('button').map((one) => one.textContent);
    expect(names[0]).toMatch(/^08:00 K2 Lane wheat · paid$/);
    expect(names[1]).toMatch(/^10:00 M of the mill3 Lane wheat$/);
  });

  it('takes the same as last time by one press, and takes it back by one', async () => {
    const { circle, on } = await open({ orders: [order()] });
    await press(/^Add an order/, /^M of the mill/);
    expect(headline()).toBe('What does M of the mill want?');
    await press(/^As last time/);
    expect(on()).toMatchObject([{ who: 'm', day: DAY, at: 600, lines: [wheat], paid: false }]);
    expect(headline()).toBe('M of the mill, Sat 10 May');
    await press(/^Take that back/);
    expect(on()).toEqual([]);
    expect(headline()).toBe('This order is off');
    await press(/^That’s it/);
    expect(headline()).toBe('Bake for Sat 10 May');
    expect(circle.circle().orders).toEqual([order()]);
  });

  it('takes an order of somebody new from an empty circle', async () => {
    const { on, circle } = await open({ neighbours: [] });
    await press(/^Add an order/);
    shows(/Nobody is in the circle yet/);
    await press(/^Somebody new/);
    const input = screen.getByRole<HTMLInputElement>('textbox');
    input.value = '  Z of the quay ';
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await press(/^That’s it/);
    expect(circle.circle().neighbours[0]!.name).toBe('Z of the quay');
    expect(headline()).toBe('What does Z of the quay want?');
    expect(screen.queryByRole('button', { name: /^As last time/ })).toBeNull();
    await press(/^Lane wheat$/);
    expect(on()[0]!.lines).toEqual([{ ...wheat, count: 1 }]);
  });

  it('tells somebody new apart from another of that name', async () => {
    const { circle } = await open();
    await press(/^Add an order/, /^Somebody new/);
    const input = screen.getByRole<HTMLInputElement>('textbox');
    input.value = 'm of the mill';
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    shows(/There is a m of the mill already. This one is written as m of the mill 2./);
    await press(/^That’s it/);
    expect(circle.circle().neighbours.at(-1)!.name).toBe('m of the mill 2');
    expect(headline()).toBe('What does m of the mill 2 want?');
  });

  it('is over when its day is: nothing is added any more', async () => {
    await open({}, undefined, '2031-05-02');
    expect(screen.getByRole('button', { name: /^Add an order/ }).ariaDisabled).toBe('true');
  });
});

describe('an order', { timeout: 30_000 }, () => {
  const opened = async (first: Partial<Circle> = {}, cap?: CapSays) => {
    const its = await open({ orders: [order({ day: DAY })], ...first }, cap);
    await press(/M of the mill/);
    return its;
  };

  it('is changed part by part, each by presses, and every change is one to take back', async () => {
    const { on } = await opened();
    await press(/^2 Lane wheat/, /^One more/, /^Whole or sliced/);
    expect(on()[0]!.lines).toEqual([{ ...wheat, count: 3, cut: true }]);
    await press(/^Weight when cool/, /^4$/, /^5$/, /^0$/, /^That’s it/);
    expect(on()[0]!.lines[0]!.grams).toBe(450);
    await press(/^Weight when cool/, /^As in the recipe/);
    expect(on()[0]!.lines[0]!.grams).toBeNull();
    await press(/^That’s it/, /^Another bread/, /^Barley tin/);
    expect(on()[0]!.lines).toHaveLength(2);
    await press(/^Fetched/, /^Half an hour later/);
    expect(on()[0]!.at).toBe(630);
    await press(/^0?8:00/);
    expect(on()[0]!.at).toBe(480);
    await press(/^Paid/);
    expect(on()[0]!.paid).toBe(true);
    await press(/^Take that back/);
    expect(on()[0]!.paid).toBe(false);
    await press(/^Take it off/);
    expect(on()).toEqual([]);
    expect(headline()).toBe('Bake for Sat 10 May');
    await press(/^Take that back/);
    expect(on()).toHaveLength(1);
  });

  it('of a count that cannot be taken is refused, and says what can', async () => {
    const { on } = await opened();
    await press(/^2 Lane wheat/, /^Key it in/, /^1$/, /^0$/, /^0$/, /^0$/, /^0$/);
    shows(/Only 1 to 99/);
    expect(screen.getByRole('button', { name: /^That’s it/ }).ariaDisabled).toBe('true');
    await press(/^Clear/, /^2$/, /^\.$/, /^5$/, /^That’s it/);
    expect(headline()).toBe('It cannot be taken');
    shows(/Take 1 to 99 of a bread/);
    await press(/^Choose again/);
    expect(on()[0]!.lines).toEqual([wheat]);
  });

  it('is not shown as changed where it was not written', async () => {
    const { house } = await openBaking(makeFakeWorld());
    const circle = fakeCircle(
      { neighbours: [miller], orders: [order({ day: DAY })] },
      () => 'full',
    );
    render(() => (
      <PressGround now={clock}>
        <DayOrders
          house={house}
          circle={circle}
          day={DAY}
          onOpen={() => undefined}
          onBack={() => undefined}
        />
      </PressGround>
    ));
    await press(/M of the mill/, /^Paid/);
    expect(screen.getByRole('button', { name: /^Paid/ }).ariaPressed).toBe('false');
    expect(house.told().map(({ id }) => id)).toContain('circle');
  });

  it('says where the day is full, and may be taken all the same', async () => {
    const cap: CapSays = {
      line: () => '3 more will go.',
      asks: ({ lines }) => (lines[0]!.count > 2 ? ['Only with the oven on until 14:40.'] : []),
    };
    const { on } = await open({ orders: [order({ day: DAY })] }, cap);
    shows(/3 more will go/);
    await press(/M of the mill/, /^2 Lane wheat/, /^One more/);
    shows(/oven on until 14:40/);
    await press(/^No, leave it/);
    expect(on()[0]!.lines[0]!.count).toBe(2);
    await press(/^One more/, /^Take it anyway/);
    expect(on()[0]!.lines[0]!.count).toBe(3);
    // It was answered: one more loaf asks the same once more only where its words are new.
    await press(/^One more/);
    expect(on()[0]!.lines[0]!.count).toBe(4);
  });
});

describe('what is asked before an order is taken', { timeout: 30_000 }, () => {
  it('is a caution, then the closing hour, then a second order, each answered by itself', async () => {
    const { on } = await open({
      neighbours: [{ ...miller, watch: ['gluten'] }],
      orders: [order({ day: DAY, lines: [{ ...wheat, bread: 'barley-tin' }] })],
      ways: { ...CIRCLE.ways, closes: { days: 8, at: 1080 } },
    });
    await press(/^Add an order/, /^M of the mill/, /^Lane wheat$/);
    shows(/Lane wheat has gluten.* in it\. It is on their list\./);
    shows(/When in doubt, leave it/);
    await press(/^Take it anyway/);
    shows(/Lane wheat: not known what is in .*flour.*\. Read the packet\./);
    await press(/^Take it anyway/);
    shows(/closed at 18:00 on Fri 2 May/);
    await press(/^Take it anyway/);
    shows(/They have an order for that day already/);
    expect(on()).toHaveLength(1);
    await press(/^Add to it/);
    await vi.waitFor(() => expect(on()[0]!.lines).toHaveLength(2));
    expect(on()).toHaveLength(1);
    expect(headline()).toBe('M of the mill, Sat 10 May');
  });

  it('lets a second order stand beside the first, and leaves what is left', async () => {
    const { on } = await open({ orders: [order({ day: DAY })] });
    await press(/^Add an order/, /^M of the mill/, /^As last time/, /^No, leave it/);
    expect(on()).toHaveLength(1);
    await press(/^As last time/, /^A second one/);
    expect(on()).toHaveLength(2);
  });
});

describe('an order of every week', { timeout: 30_000 }, () => {
  const weekly = {
    id: 's',
    who: 'm',
    weekday: 6,
    at: 600,
    lines: [wheat],
    from: '2031-04-01',
    until: null,
    skips: [],
  };
  const breads = (orders: readonly Order[]) =>
    orders.flatMap(({ lines }) => lines.map(({ count }) => count));

  it('is made of an order by one press', async () => {
    const { circle, on } = await open({ orders: [order({ day: DAY })] });
    await press(/M of the mill/, /^Every Sat/);
    expect(circle.circle().standing).toMatchObject([{ weekday: 6, from: DAY, lines: [wheat] }]);
    expect(on()).toHaveLength(1);
    expect(on('2031-05-17')).toHaveLength(1);
    shows(/Every Sat: change/);
  });

  it('is left out on one day by one press, and changed on one day alone', async () => {
    const { on } = await open({ standing: [weekly] });
    await press(/M of the mill/, /^2 Lane wheat/, /^One more/);
    expect([on(TODAY), on(), on('2031-05-17')].map(breads)).toEqual([[2], [3], [2]]);
    await press(/^That’s it/, /^Skip this day/);
    expect([on(TODAY), on(), on('2031-05-17')].map(breads)).toEqual([[2], [], [2]]);
    await press(/^Take that back/);
    expect(breads(on())).toEqual([3]);
  });

  it('is changed from a day on, its page staying where it was, and ends there', async () => {
    const { on } = await open({ standing: [weekly] });
    await press(/M of the mill/, /^Every Sat: change/, /^2 Lane wheat/, /^One more/, /^One more/);
    expect([on(TODAY), on(), on('2031-05-17')].map(breads)).toEqual([[2], [4], [4]]);
    await press(/^That’s it/);
    expect(headline()).toBe('M of the mill, Sat 10 May');
    await press(/^End it here/);
    expect([on(TODAY), on(), on('2031-05-17')].map(breads)).toEqual([[2], [], []]);
    await press(/^Take that back/);
    expect([on(TODAY), on(), on('2031-05-17')].map(breads)).toEqual([[2], [4], [4]]);
  });
});
