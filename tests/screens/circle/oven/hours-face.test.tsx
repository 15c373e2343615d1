import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Circle } from '../../../../src/core/circle/circle.ts';
import { HoursFace } from '../../../../src/screens/circle/oven/HoursFace.tsx';
import type { House } from '../../../../src/screens/house.ts';
import type { NotWritten } from '../../../../src/screens/house-circle.ts';
import { openBaking, serveFormulas } from '../../../fakes/baking.ts';
import { fakeCircle } from '../../../fakes/circle.ts';
import { makeFakeWorld } from '../../../fakes/world.ts';
import { tap, turnedClock } from '../../parts/touching.ts';
import { showFace } from './show-face.tsx';

const clock = turnedClock();

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = async (name: RegExp): Promise<void> => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
  for (let i = 0; i < 6; i += 1) await Promise.resolve();
};
const has = (name: RegExp): boolean => screen.queryByRole('button', { name }) !== null;
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const text = () => document.body.textContent.replaceAll('\u00a0', ' ');

const open = async (
  ways: Partial<Circle['ways']> = {},
  fails?: () => NotWritten | null,
): Promise<{ house: House; circle: ReturnType<typeof fakeCircle>; backs: number[] }> => {
  const { house } = await openBaking(makeFakeWorld());
  const none = fakeCircle().circle().ways;
  const circle = fakeCircle({ ways: { ...none, ...ways } }, fails);
  const backs: number[] = [];
  showFace(
    () => (
      <HoursFace
        house={house}
        circle={circle}
        back="Circle"
        onOpen={() => undefined}
        onBack={() => backs.push(1)}
      />
    ),
    clock,
  );
  return { house, circle, backs };
};
const said = (circle: ReturnType<typeof fakeCircle>) => circle.circle().ways;

describe('the oven’s hours', { timeout: 30_000 }, () => {
  it('are said in two: nothing is written before both are', async () => {
    const { circle, backs } = await open();
    expect(has(/^Last loaf out\s*–/)).toBe(true);
    await press(/^First loading\s*–/);
    await press(/^08:00/);
    expect(circle.written).toEqual([]);
    expect(headline()).toBe('When is the last loaf out?');
    await press(/^12:00/);
    expect(said(circle).oven).toEqual({ from: 480, to: 720 });
    expect(has(/^First loading\s*08:00/)).toBe(true);
    expect(has(/^Last loaf out\s*12:00/)).toBe(true);
    await press(/^That’s it/);
    expect(backs).toEqual([1]);
  });

  it('are moved by half hours, one press a change, and each is taken back', async () => {
    const { circle } = await open({ oven: { from: 480, to: 720 } });
    await press(/^Last loaf out/);
    await press(/^Half an hour later/);
    await press(/^Half an hour later/);
    expect(said(circle).oven).toEqual({ from: 480, to: 780 });
    expect(text()).toContain('Set to 13:00.');
    await press(/^That’s it/);
    await press(/^Take that back/);
    expect(said(circle).oven).toEqual({ from: 480, to: 750 });
  });

  it('may go on past midnight, which is told, and never begin and end at the same minute', async () => {
    const { circle } = await open({ oven: { from: 8 * 60, to: 10 * 60 + 30 } });
    await press(/^Last loaf out/);
    for (let i = 0; i < 5; i += 1) await press(/^Half an hour earlier/);
    expect(said(circle).oven).toEqual({ from: 480, to: 450 });
    await press(/^That’s it/);
    expect(text()).toContain('It goes on past midnight.');
  });

  it('are forgotten by one press', async () => {
    const { circle } = await open({ oven: { from: 480, to: 720 } });
    await press(/^No set hours/);
    expect(said(circle).oven).toBeNull();
    expect(has(/^First loading\s*–/)).toBe(true);
    await press(/^Take that back/);
    expect(said(circle).oven).toEqual({ from: 480, to: 720 });
  });

  it('stay on their page where they could not be written, and that is told', async () => {
    const { circle, house } = await open({}, () => 'full');
    await press(/^First loading/);
    await press(/^08:00/);
    await press(/^12:00/);
    await vi.waitFor(() => expect(house.told().some(({ id }) => id === 'circle')).toBe(true));
    expect(said(circle).oven).toBeNull();
    expect(headline()).toBe('When is the last loaf out?');
  });
});

describe('when orders close', { timeout: 30_000 }, () => {
  it('is said in days before and an hour, changed in either, and taken off', async () => {
    const { circle } = await open();
    await press(/^Orders close\s*never/);
    await press(/^2 days before/);
    expect(circle.written).toEqual([]);
    await press(/^18:00/);
    expect(said(circle).closes).toEqual({ days: 2, at: 1080 });
    expect(has(/^Orders close\s*2 days before, 18:00/)).toBe(true);

    await press(/^Orders close/);
    await press(/^day before/);
    expect(said(circle).closes).toEqual({ days: 1, at: 1080 });
    await press(/^Half an hour later/);
    await press(/^That’s it/);
    expect(said(circle).closes).toEqual({ days: 1, at: 1110 });

    await press(/^Orders close/);
    await press(/^They never close/);
    expect(said(circle).closes).toBeNull();
  });

  it('reads on the clock that this tablet is read by', async () => {
    const { house } = await open({ closes: { days: 0, at: 1080 } });
    house.choose({ clock: '12' });
    expect(has(/^Orders close\s*same day, 6:00\s*pm/)).toBe(true);
  });
});
