import { cleanup, render, screen, within } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import type { Order, OrderLine } from '../../../src/core/circle/circle.ts';
import { put } from '../../../src/core/circle/row.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { DoughDay } from '../../../src/screens/circle/dough/DoughDay.tsx';
import type { DayDraft } from '../../../src/screens/day-draft.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { fakeCircle } from '../../fakes/circle.ts';
import { makeMemoryCircle } from '../../fakes/memory-circle.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { THURSDAY } from '../day/saturday.ts';
import { tap, turnedClock } from '../parts/touching.ts';
import { showCircle } from './in-circle.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const SATURDAY = '2031-05-03';
const line = (bread: string, count: number, grams: number | null = null): OrderLine => {
  return { bread, count, grams, cut: false };
};
const order = (id: string, at: number | null, ...lines: OrderLine[]): Order => {
  const rest = { paid: false, handed: null, made: 0, standing: null };
  return { id, who: 'n1', day: SATURDAY, at, lines, ...rest };
};

/** The dough of a Saturday, on a Thursday. */
async function onDough(...orders: Order[]) {
  serveFormulas();
  const clock = turnedClock();
  const zone = new Intl.DateTimeFormat().resolvedOptions().timeZone;
  const { house } = await openBaking({ ...makeFakeWorld({ at: THURSDAY }), zone: () => zone });
  await vi.waitFor(() => expect(house.formulas().length).toBeGreaterThan(8));
  const circle = fakeCircle({
    neighbours: [{ id: 'n1', name: 'Q of the mill', watch: [] }],
    orders,
  });
  const drafts: DayDraft[] = [];
  let gone = 0;
  render(() => (
    <PressGround now={clock}>
      <DoughDay
        house={house}
        circle={circle}
        day={SATURDAY}
        onDay={(draft) => drafts.push(draft)}
        onBack={() => void (gone += 1)}
      />
    </PressGround>
  ));
  return {
    house,
    circle,
    drafts,
    gone: () => gone,
    press: (name: RegExp): void => {
      clock.at += 1_100;
      tap(screen.getByRole('button', { name }));
    },
    isOff: (name: RegExp) =>
      screen.getByRole('button', { name }).getAttribute('aria-disabled') === 'true',
    headline: () => screen.getByRole('heading', { level: 1 }).textContent.replace(/\u00a0/g, ' '),
    text: () => document.body.textContent!.replace(/\u00a0/g, ' '),
    rows: () =>
      within(screen.getAllByRole('table')[0]!)
        .getAllByRole('row')
        .slice(1)
        .map((row) => Array.from(row.children, (cell) => cell.textContent.replace(/\u00a0/g, ' '))),
  };
}

it('shows a day’s loaves by bread, and its dough bowl by bowl', async () => {
  const at = await onDough(
    order('o1', 600, line('lane-wheat', 5, 700)),
    order('o2', 540, line('lane-wheat', 3, 700), line('cherry-hazelnut', 2)),
  );
  expect(at.headline()).toBe('Dough and loads');
  expect(at.text()).toContain('Sat 3 May: 10 loaves.');
  expect(at.rows()).toContainEqual(['Lane wheat, 700 g', '8', '805 g', '8']);
  expect(at.rows()).toContainEqual(['Cherry and hazelnut', '2', '900 g', '2']);
  at.press(/^Bowl by bowl/);
  expect(at.headline()).toBe('One bowl, 1586 g');
  expect(at.text()).toContain('Cherry and hazelnut, 2 loaves141 g dried cherries');
  at.press(/^Next dough, 1 of 2/);
  expect(at.headline()).toMatch(/^3 bowls, (about )?219\d g each\.$/);
  expect(at.text()).toContain('Bowl 2: 6 min later. Bowl 3: 12 min later.For Lane wheat, 700 g.');
  at.press(/^That’s it/);
  expect(at.headline()).toBe('Dough and loads');
  at.press(/^Sat 3 May/);
  expect(at.gone()).toBe(1);
});

it('builds the levain, and tells its loads from the first one in', async () => {
  const at = await onDough(order('o1', null, line('lane-wheat', 4)));
  at.press(/^Levain/);
  expect(at.headline()).toMatch(/^Build \d+(\.\d)? g of levain$/);
  expect(at.text()).toContain('Plan the day to see when to feed it.');
  expect(at.rows().map(([name]) => name)).toEqual(['starter', 'strong wheat flour', 'water']);
  at.press(/^That’s it/);
  at.press(/^Loads/);
  expect(at.headline()).toBe('4 loads, 3 h 02');
  expect(at.text()).toContain('Counted from the first one in.');
  expect(at.rows()).toEqual([['Lane wheat', '4', 'at once', '3 h 02', '5 h 02']]);
});

it('mixes as one what differs in its filling only, and says what goes in later', async () => {
  const at = await onDough(order('o1', 600, line('lane-wheat', 8, 700), line('lane-fig', 4)));
  const { formula } = at.house.formulas().find(({ file }) => /lane-wheat/.test(file))!;
  const figs = { id: 'fig', name: 'figs', pct: 20, keeps: 'shelf', allergens: [] } as const;
  await at.house.keepFormula({ ...formula!, id: 'lane-fig', name: 'Lane fig', fillings: [figs] });
  await vi.waitFor(() => expect(at.text()).toContain('Sat 3 May: 12 loaves.'));
  at.press(/^Bowl by bowl/);
  expect(at.headline()).toMatch(/^4 bowls, /);
  const [flour, ...others] = at.rows();
  expect(flour).toEqual(['strong wheat flour', '4 × 985 g', '3940 g']);
  expect(others.at(-1)![2]).toMatch(/^9\d{3} g$/);
  expect(screen.queryByRole('button', { name: /^Next dough/ })).toBeNull();
  expect(at.text()).toContain('For Lane wheat, 700 g · Lane fig.');
  expect(at.text()).toMatch(/Lane fig, 4 loaves36\d g figs/);
  expect(at.text()).toContain('On the Day each bread is a bake of its own.');
});

it('tells the loads by the clock where the oven’s hours are said, past midnight with the day', async () => {
  const at = await onDough(order('o1', null, line('lane-wheat', 4), line('harbour-rye', 1)));
  await at.circle.write({ puts: [], ways: { oven: { from: 480, to: 900 } } });
  at.press(/^Loads/);
  expect(at.text()).toContain('First in at 08:00, last out at 12:07.');
  expect(at.rows()).toEqual([
    ['Harbour rye', '1', '08:00', '08:55', 'Sun 00:55'],
    ['Lane wheat', '4', '09:05', '12:07', '14:07'],
  ]);
});

it('lays the day by one press: each bread due when it is first fetched, and no name in it', async () => {
  const at = await onDough(
    order('o1', 600, line('lane-wheat', 5, 700)),
    order('o2', 540, line('lane-wheat', 3, 700)),
    order('o3', null, line('cherry-hazelnut', 2)),
  );
  at.press(/^Plan the day/);
  const nine = new Date(2031, 4, 3, 9).getTime();
  expect(at.drafts).toEqual([
    {
      bakes: [
        { formula: 'cherry-hazelnut', loaves: 2, due: null, pins: {} },
        { formula: 'lane-wheat', loaves: 8, piece: 805, due: nine, pins: {} },
      ],
      kitchen: null,
      away: [],
      taken: [],
    },
  ]);
  expect(JSON.stringify(at.drafts)).not.toMatch(/mill|n1/);
});

it('first asks for the rules of a filling such as cheese, each time, and any answer goes on', async () => {
  const at = await onDough(order('o1', 600, line('cheese-seed', 2)));
  at.press(/^Plan the day/);
  expect(at.headline()).toBe('Look up the rules first');
  expect(at.text()).toMatch(/Home sale has local rules for .+\. Have you looked them up\?/);
  expect(at.text()).toContain('Your local authority tells you what they are.');
  expect(at.drafts).toEqual([]);
  at.press(/^Dough and loads/);
  expect(at.headline()).toBe('Dough and loads');
  at.press(/^Plan the day/);
  at.press(/^Not yet, go on/);
  expect(at.drafts).toHaveLength(1);
  at.press(/^Plan the day/);
  at.press(/^Looked up/);
  expect(at.drafts).toHaveLength(2);
});

it('tells which bread the Day has no room for, and leaves it out by a press', async () => {
  const at = await onDough(
    order('o1', 600, line('lane-wheat', 2), line('cherry-hazelnut', 2), line('harbour-rye', 1)),
    order('o2', null, line('barley-tin', 3)),
  );
  at.press(/^Plan the day/);
  expect(at.headline()).toBe('The Day takes 3 at once');
  expect(at.text()).toMatch(/Left out: Barley.*\./);
  at.press(/^Plan these/);
  expect(at.drafts[0]!.bakes.map(({ formula }) => formula)).not.toContain('barley-tin');
  expect(at.drafts[0]!.bakes).toHaveLength(3);
});

it('says what cannot be baked, and lays nothing where nothing can', async () => {
  const at = await onDough(order('o1', 600, line('gone', 3), line('lane-wheat', 1, 40)));
  const told = within(screen.getByRole('list', { name: 'What cannot be baked' }))
    .getAllByRole('listitem')
    .map((one) => one.textContent.replace(/\u00a0/g, ' '));
  expect(told).toEqual([
    'gone: 3 loaves ordered, but it is off the Book’s list.',
    'Lane wheat: A piece of 48 will not do. Choose 150 g to 2500 g.',
  ]);
  expect(at.isOff(/^Plan the day/)).toBe(true);
  cleanup();
  const empty = await onDough();
  expect(empty.text()).toContain('Nobody has ordered for that day yet.');
  expect(empty.isOff(/^Plan the day/)).toBe(true);
});

it('is come to from the day’s own page', async () => {
  serveFormulas();
  const clock = turnedClock();
  const circle = makeMemoryCircle();
  const { house } = await openBaking(makeFakeWorld({ at: THURSDAY, circle }));
  const rows = await house.circle();
  await rows.write({ puts: [put('orders', order('o1', null, line('lane-wheat', 2)))] });
  const drafts: DayDraft[] = [];
  showCircle(house, clock, { onDay: (draft) => drafts.push(draft) });
  const press = async (name: RegExp) => {
    const button = await screen.findByRole('button', { name });
    clock.at += 1_100;
    tap(button);
  };
  await press(/^Sat 3 May/);
  await press(/^Dough and loads/);
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Dough and loads');
  await press(/^Plan the day/);
  expect(drafts).toMatchObject([{ bakes: [{ formula: 'lane-wheat', loaves: 2, due: null }] }]);
});
