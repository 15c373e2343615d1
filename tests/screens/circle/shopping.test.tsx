import { cleanup, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Circle, Ingredient, Order } from '../../../src/core/circle/circle.ts';
import Cupboard from '../../../src/screens/circle/cupboard/Cupboard.tsx';
import ShoppingFor from '../../../src/screens/circle/cupboard/ShoppingFor.tsx';
import { serveFormulas } from '../../fakes/baking.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { ingredient } from '../../core/circle/support.ts';
import { headline, key, openOver, press, shown } from './open-cupboard.tsx';

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const AT = Date.UTC(2031, 4, 3, 5);
const order = (day: string, bread: string, count: number, rest: Partial<Order> = {}): Order => ({
  id: `${day} ${bread}`,
  who: 'a',
  day,
  at: null,
  lines: [{ bread, count, grams: null, cut: false }],
  paid: false,
  handed: null,
  made: AT,
  standing: null,
  ...rest,
});
const PACK = { grams: 1000, cost: 1.5, usable: 1 };
const WHEAT = ingredient('strong wheat flour', { pack: PACK, counted: { grams: 900, at: AT } });
const open = async (first: Partial<Circle>) => {
  const opened = await openOver(
    (house, circle) => <Cupboard house={house} circle={circle} onBack={() => undefined} />,
    first,
  );
  press(/^Shopping list/);
  return opened;
};
const of = (circle: { circle(): Circle }, id: string): Ingredient | undefined =>
  circle.circle().ingredients.find((one) => one.id === id);
const button = (name: RegExp) => screen.getByRole('button', { name });

describe('the shopping list', { timeout: 30_000 }, () => {
  it('says where nothing is ordered, and makes nothing up', async () => {
    await open({});
    expect(headline()).toBe('Shopping list');
    expect(shown()).toContain('No bread is ordered.');
    press(/^Days, print, copy/);
    expect(button(/^Print it/).ariaDisabled).toBe('true');
    expect(button(/^Copy it/).ariaDisabled).toBe('true');
  });

  it('rounds up to packs, names what nobody counted, and leaves out what there is enough of', async () => {
    const salt = ingredient('salt', { counted: { grams: 700, at: AT } });
    await open({
      orders: [order('2031-05-10', 'lane-wheat', 4), order('2031-05-04', 'lane-wheat', 2)],
      ingredients: [WHEAT, salt],
    });
    expect(shown()).toContain('The next two weeks: 6 loaves to bake.');
    expect(button(/^Strong wheat flour\s*2 × 1000\sg$/)).toBeTruthy();
    expect(button(/^Wholemeal wheat flour\s*\d+\sg/).textContent).toContain('not counted');
    expect(screen.queryByRole('button', { name: /^Salt/ })).toBeNull();
    expect(shown()).toContain('There is enough of all the rest: salt.');
    press(/^Days, print, copy/);
    const rows = screen.getAllByRole('row').map((row) => row.textContent.replace(/\s/g, ' '));
    expect(rows[0]).toBe('WhatNeededOn handTo buy');
    expect(rows[1]).toBe('Strong wheat flour2492 g900 g2 × 1000 g');
    expect(rows[2]).toMatch(/^Wholemeal wheat flour(\d+ g)not counted\1$/);
    expect(rows).toHaveLength(3);
  });

  it('is ticked: the packs are a new count, and unticked the old one stands again', async () => {
    const { circle, house } = await open({
      orders: [order('2031-05-10', 'lane-wheat', 6)],
      ingredients: [WHEAT],
    });
    press(/^Strong wheat flour/);
    await vi.waitFor(() => expect(of(circle, WHEAT.id)!.counted!.grams).toBe(2900));
    expect(of(circle, WHEAT.id)!.counted!.at).toBe(house.now());
    await vi.waitFor(() =>
      expect(button(/^Strong wheat flour\s*2 × 1000\sg/).getAttribute('aria-pressed')).toBe('true'),
    );
    press(/^Strong wheat flour/);
    await vi.waitFor(() => expect(of(circle, WHEAT.id)!.counted).toEqual(WHEAT.counted));
    await vi.waitFor(() =>
      expect(button(/^Strong wheat flour/).getAttribute('aria-pressed')).toBe('false'),
    );
  });

  it('asks how much was bought where no pack is known', async () => {
    const { circle } = await open({ orders: [order('2031-05-10', 'lane-wheat', 6)] });
    press(/^Salt/);
    expect(headline()).toBe('How much did you buy?');
    key('500');
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('Shopping list'));
    expect(of(circle, 'salt')).toMatchObject({ name: 'salt', counted: { grams: 500 } });
    expect(button(/^Salt/).getAttribute('aria-pressed')).toBe('true');
  });

  it('is for one day where that is chosen', async () => {
    await open({
      orders: [order('2031-05-10', 'barley-tin', 1), order('2031-05-04', 'lane-wheat', 2)],
    });
    expect(button(/^Barley flour/)).toBeTruthy();
    press(/^Days, print, copy/);
    press(/^Other days/);
    press(/^Sun 4 May\s*2 loaves/);
    expect(shown()).toContain('Sun 4 May: 2 loaves to bake.');
    expect(screen.queryByRole('button', { name: /^Barley flour/ })).toBeNull();
  });

  it('leaves out what is handed over or in the making, and tells what cannot be weighed', async () => {
    const { house } = await open({
      orders: [
        order('2031-05-03', 'lane-wheat', 9, { handed: AT }),
        order('2031-05-04', 'gone-bread', 2),
        order('2031-05-05', 'lane-wheat', 2),
      ],
    });
    expect(shown()).toContain('2 loaves to bake.');
    expect(shown()).toContain('Not worked out: 2 loaves.');
    const formula = house.formulas().find((one) => one.formula?.id === 'lane-wheat')!.formula!;
    await house.begin({ formula, loaves: 3, kitchen: 22, from: 'levain.feed' });
    expect(shown()).toContain('2 loaves in the making');
    expect(screen.queryByRole('button', { name: /^Strong wheat flour/ })).toBeNull();
  });

  it('is copied as plain text, and printed with a box for each', async () => {
    const copied: string[] = [];
    const { house } = await open({
      orders: [order('2031-05-10', 'lane-wheat', 6)],
      ingredients: [WHEAT],
    });
    const sheets = await house.sheets();
    vi.spyOn(sheets, 'copy').mockImplementation((text) => {
      copied.push(text);
      return Promise.resolve(true);
    });
    vi.spyOn(house, 'sheets').mockResolvedValue(sheets);
    press(/^Days, print, copy/);
    press(/^Copy it/);
    await vi.waitFor(() => expect(shown()).toContain('The list is copied.'));
    expect(copied[0]!.replace(/\u00a0/g, ' ')).toMatch(
      /^Shopping list, The next two weeks\n- Strong wheat flour: 2 × 1000 g\n- Wholemeal wheat flour: \d+ g\n- Salt: \d+ g$/,
    );
    let paper: string | null = null;
    window.print = () => void (paper = document.querySelector('.printed-page')!.innerHTML);
    press(/^Print it/);
    expect(paper).toContain('Strong wheat flour');
    expect(document.querySelectorAll('.printed-tick')).toHaveLength(3);
    window.dispatchEvent(new Event('afterprint'));
  });
});

describe('the shopping of one day', { timeout: 30_000 }, () => {
  it('is come to from its orders, and goes back there', async () => {
    const onBack = vi.fn();
    await openOver(
      (house, circle) => (
        <ShoppingFor house={house} circle={circle} day="2031-05-04" onBack={onBack} />
      ),
      { orders: [order('2031-05-10', 'barley-tin', 1), order('2031-05-04', 'lane-wheat', 2)] },
    );
    expect(shown()).toContain('Sun 4 May: 2 loaves to bake.');
    press(/^That’s it\s*Sun 4 May/);
    expect(onBack).toHaveBeenCalledOnce();
  });
});
