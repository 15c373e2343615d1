import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { NOTHING_SAID, type About } from '../../../src/core/log/about.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { House } from '../../../src/screens/house.ts';
import type { Face } from '../../../src/screens/log/face.ts';
import { makeFinding, type Finding } from '../../../src/screens/log/list/finding.ts';
import { ListFace } from '../../../src/screens/log/list/ListFace.tsx';
import { begun, noted, rowsOf } from '../../core/log/support/log-rows.ts';
import { fakeHouseLog } from '../../fakes/house-log.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
/** Room for three rows: a page without a layout has no height of its own. */
const HIGH = 3 * 165;

beforeEach(() => {
  serveFormulas();
  vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockReturnValue(HIGH);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const about = (said: Partial<About>): About => ({ ...NOTHING_SAID, at: 0, ...said });
const BREADS = ['Lane wheat', 'Barley tin', 'Cherry and hazelnut'] as const;
/** So many bakes, one every other day, the second of three noted as good. */
const bakes = (many: number) =>
  rowsOf(
    Array.from({ length: many }, (_, n) => [
      begun(`b${n}`, BREADS[n % 3], 2),
      noted(`b${n}`, n % 3 === 1 ? 'good' : n === 0 ? 'Less water next time' : undefined),
    ]).flat(),
  );

const open = async (
  first: readonly LogRecord[],
  beside: Parameters<typeof fakeHouseLog>[0] = {},
  finding: Finding = makeFinding(),
) => {
  const { house } = await openBaking(makeFakeWorld());
  const [records, setRecords] = createSignal(first);
  const log = fakeHouseLog(beside);
  const opened: Face[] = [];
  const onBack = vi.fn();
  const its: House = { ...house, records };
  render(() => (
    <PressGround now={clock}>
      <ListFace
        house={its}
        log={log}
        finding={finding}
        onOpen={(face) => opened.push(face)}
        onBack={onBack}
      />
    </PressGround>
  ));
  return { opened, onBack, log, setRecords, finding };
};
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const rows = () =>
  [...document.querySelectorAll<HTMLElement>('.log-bake')].map((row) => row.textContent ?? '');
const type = (text: string): void => {
  fireEvent.input(screen.getByRole('searchbox'), { target: { value: text } });
};
/** A page without a layout scrolls and says nothing of it. */
const scrolled = (): void => {
  fireEvent.scroll(document.querySelector('.log-box')!);
};

describe('the Log as it opens', () => {
  it('tells kindly that nothing was baked yet, and offers nothing to find it by', async () => {
    const { onBack } = await open([]);
    expect(headline()).toBe('Nothing baked yet');
    expect(screen.queryByRole('searchbox')).toBeNull();
    expect(screen.getAllByRole('button')).toHaveLength(1);
    press(/^That’s it/);
    expect(onBack).toHaveBeenCalledOnce();
  });

  it('has each bake with its mark, bread, date, loaves and note, the latest first', async () => {
    await open(bakes(3));
    expect(headline()).toBe('3 bakes');
    expect(rows()[0]).toMatch(/^DoneCherry and hazelnut\d+ May 2031 · 2 loaves$/);
    expect(rows()[1]).toMatch(/^GoodBarley tin/);
    expect(rows()[2]).toMatch(/^DoneLane wheat.*Less water next time$/);
    const marks = [...document.querySelectorAll('.turned-mark')];
    expect(marks.map((mark) => mark.getAttribute('data-turned'))).toEqual(['done', 'good', 'done']);
    expect(new Set(marks.map((mark) => mark.innerHTML)).size).toBe(2);
  });

  it('draws only those in sight, and tells ears how many there are', async () => {
    await open(bakes(400));
    expect(headline()).toBe('400 bakes');
    const items = screen.getAllByRole('listitem');
    expect(items.length).toBeLessThan(12);
    expect(items[0]!.getAttribute('aria-posinset')).toBe('1');
    for (const item of items) expect(item.getAttribute('aria-setsize')).toBe('400');
  });

  it('opens a bake, and all bakes as pictures', async () => {
    const { opened } = await open(bakes(3));
    press(/Barley tin/);
    press(/^All my bakes$/);
    expect(opened).toEqual([{ at: 'bake', start: 'f2' }, { at: 'plots' }]);
  });

  it('is read on by presses alone, a boxful at a time, and back', async () => {
    await open(bakes(8));
    expect(screen.getByRole('button', { name: 'Newer' }).ariaDisabled).toBe('true');
    press(/^Older$/);
    scrolled();
    const box = document.querySelector('.log-box')!;
    expect(box.scrollTop).toBe(HIGH);
    press(/^Older$/);
    scrolled();
    // The last boxful is a whole one.
    expect(box.scrollTop).toBe(5 * 165);
    expect(screen.getByRole('button', { name: 'Older' }).ariaDisabled).toBe('true');
    press(/^Newer$/);
    scrolled();
    expect(box.scrollTop).toBe(2 * 165);
  });

  it('keeps the rows that are drawn when a bake begins, and the press that is under way', async () => {
    const all = bakes(4);
    const { setRecords } = await open(all.slice(0, 6));
    const before = [...document.querySelectorAll('.log-bake')];
    setRecords(all);
    const after = [...document.querySelectorAll('.log-bake')];
    expect(after).toHaveLength(4);
    expect(after.slice(1)).toEqual(before);
    expect(after[1]).toBe(before[0]);
  });

  it('goes from row to row by arrows, and keeps the focused row drawn', async () => {
    await open(bakes(40));
    const first = document.querySelectorAll<HTMLElement>('.log-bake')[0]!;
    first.focus();
    fireEvent.keyDown(first, { key: 'ArrowDown' });
    expect(document.activeElement?.closest('li')?.ariaPosInSet).toBe('2');
    fireEvent.keyDown(document.activeElement!, { key: 'End' });
    expect(document.activeElement?.closest('li')?.ariaPosInSet).toBe('40');
    fireEvent.keyDown(document.activeElement!, { key: 'ArrowDown' });
    expect(document.activeElement?.closest('li')?.ariaPosInSet).toBe('40');
    fireEvent.keyDown(document.activeElement!, { key: 'Home' });
    expect(document.activeElement?.closest('li')?.ariaPosInSet).toBe('1');
  });
});

describe('a search in the Log', () => {
  it('finds as one types, whatever the accents, tells how many, and clears by one press', async () => {
    const { finding } = await open(bakes(6), {
      abouts: { f0: about({ note: 'Crème, très bon' }) },
    });
    type('CREME');
    expect(headline()).toBe('1 of 6 bakes');
    expect(rows()).toHaveLength(1);
    press(/^Show all$/);
    expect(headline()).toBe('6 bakes');
    expect(screen.getByRole<HTMLInputElement>('searchbox').value).toBe('');
    expect(finding.isAsked()).toBe(false);
  });

  it('tells kindly where nothing is found, with the words still there to be changed', async () => {
    await open(bakes(3));
    type('quince');
    expect(headline()).toBe('No bake is like that');
    expect(screen.getByRole<HTMLInputElement>('searchbox').value).toBe('quince');
    type('tin');
    expect(headline()).toBe('1 of 3 bakes');
    expect(rows()).toHaveLength(1);
  });

  it('chooses by bread, tag, month and how it was, only what there is', async () => {
    await open(bakes(6), { abouts: { f2: about({ tags: ['gift', 'for the mill'] }) } });
    press(/^Find$/);
    expect(headline()).toBe('Which bakes?');
    press(/^How it was/);
    expect(screen.getAllByRole('button').map((one) => one.textContent)).toEqual(
      expect.arrayContaining(['Any', 'Good2 bakes', 'Nothing said4 bakes']),
    );
    press(/^Good ?2 bakes$/);
    expect(screen.getByText('2 of 6 bakes')).toBeTruthy();
    press(/^Bread/);
    // The other breads have none that was good.
    expect(screen.queryByRole('button', { name: /Lane wheat/ })).toBeNull();
    press(/^Barley tin ?2 bakes$/);
    press(/^Tag/);
    press(/^A gift ?1 bake$/);
    expect(screen.getByText('1 of 6 bakes')).toBeTruthy();
    press(/^Month/);
    press(/^May 2031 ?1 bake$/);
    press(/^That’s it/);
    expect(headline()).toBe('1 of 6 bakes');
    expect(rows()[0]).toContain('A gift · for the mill');
    press(/^Find$/);
    press(/^Tag\s*A gift/);
    press(/^Any$/);
    expect(screen.getByText('2 of 6 bakes')).toBeTruthy();
    press(/^Show all$/);
    expect(screen.getByText('6 bakes')).toBeTruthy();
  });

  it('leaves hidden ones out until they are wanted', async () => {
    const { log } = await open(bakes(3), { abouts: { f2: about({ hidden: true }) } });
    expect(headline()).toBe('2 bakes');
    press(/^Find$/);
    press(/^Hidden bakes\s*Not shown/);
    press(/^That’s it/);
    expect(headline()).toBe('3 bakes');
    expect(rows()[1]).toMatch(/Barley tin.*Hidden$/);
    await log.say('f2', { hidden: false });
    expect(rows()[1]).not.toMatch(/Hidden/);
  });

  it('says so where all are hidden, and has the way to them', async () => {
    await open(bakes(1), { abouts: { f0: about({ hidden: true }) } });
    expect(headline()).toBe('All bakes are hidden');
    press(/^Find$/);
    press(/^Hidden bakes/);
    press(/^That’s it/);
    expect(headline()).toBe('1 bake');
  });

  it('is as it was left after a look at a bake', async () => {
    const finding = makeFinding();
    await open(bakes(30), {}, finding);
    type('tin');
    press(/^Older$/);
    scrolled();
    cleanup();
    await open(bakes(30), {}, finding);
    expect(headline()).toBe('10 of 30 bakes');
    expect(document.querySelector('.log-box')!.scrollTop).toBe(HIGH);
  });
});
