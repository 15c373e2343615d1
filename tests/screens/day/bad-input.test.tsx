import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { ANY_POT, EVERY_DAY } from '../../../src/core/kitchen/equipment.ts';
import { onDay } from './on-day.tsx';

vi.setConfig({ testTimeout: 60_000 });
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const slabSays = (): string => document.querySelector('.slab-then')!.textContent;
const offers = (): string[] =>
  [...document.querySelectorAll('.day-offers button')].map((el) =>
    el.textContent.replace(/\s/g, ' '),
  );

it('says that an hour is past, and lays nothing', async () => {
  const at = await onDay();
  await at.press(/^Ready when/);
  await at.press(/^Today/);
  await at.press(/^08:00/);
  expect(slabSays()).toBe('That time is past. Pick a later one.');
  await at.press(/^Make a plan/);
  expect(at.headline()).toBe('Plan a day');
});

it('says of bread that is wanted in minutes when it can be ready, and takes that by one press', async () => {
  const at = await onDay();
  await at.ask(/^Today/, /^18:00/);
  expect(at.headline()).toBe('Nothing fits for 18:00.');
  expect(screen.getByText('This would do:')).toBeTruthy();
  expect(offers()).toEqual(['Cherry and hazelnut: ready Fri 21:10, 27 h 10 later.']);
  await at.press(/ready Fri\s21:10, 27\sh\s10\slater/);
  expect(at.headline()).toMatch(/^Ready (Fri|Sat) \d\d:\d\d$/);
});

it('names the hours that stand in the way where all are blocked', async () => {
  const away = { name: 'out', weekdays: EVERY_DAY, from: 0, to: 24 * 60 - 5, canBend: false };
  const at = await onDay({ equip: { week: [away] } });
  await at.ask();
  expect(at.headline()).toBe('Nothing fits for Sat 12:00.');
  expect(screen.getByText(/^In the way: out\.$/)).toBeTruthy();
  await at.press(/^Change it/);
  expect(at.headline()).toBe('Plan a day');
});

it('offers fewer loaves where one pot has too many to bake, and lays those', async () => {
  const at = await onDay({ equip: { pots: [ANY_POT] } });
  await at.press(/^How many loaves/);
  for (let n = 2; n < 36; n += 1) await at.press(/^One more/);
  await at.press(/^That’s it/);
  await at.ask();
  expect(at.headline()).toBe('Nothing fits for Sat 12:00.');
  const fewer = offers().find((words) => /: \d+ loaves only\.$/.test(words))!;
  const loaves = Number(/(\d+) loaves/.exec(fewer)![1]);
  expect(loaves).toBeLessThan(36);
  await at.press(new RegExp(`: ${loaves} loaves only`));
  expect(at.headline()).toBe('Ready Sat 12:00');
  expect(screen.getByText(new RegExp(`, ${loaves} loaves; kitchen`))).toBeTruthy();
});

it('keeps hours away by the week and once, and lays around them', async () => {
  const at = await onDay();
  await at.press(/^Asleep or out/);
  expect(screen.getByRole('button', { name: /^asleep, every day22:30–06:30$/ })).toBeTruthy();
  await at.press(/^Add weekly/);
  await at.press(/^What is it/);
  await at.press(/^at work/);
  await at.press(/^From when/);
  await at.press(/^Half an hour later/);
  await at.press(/^That’s it/);
  await at.press(/^That’s it/);
  expect(screen.getByRole('button', { name: /^at work, Mon – Fri08:30–16:00$/ })).toBeTruthy();
  await at.press(/^That’s it/);
  await at.ask();
  const work = at.house.equipment().week.find(({ name }) => name === 'at work')!;
  expect([work.from, work.to]).toEqual([8.5 * 60, 16 * 60]);
  const hours = [...document.querySelectorAll('.tape-touch')].map((el) => el.textContent);
  const friday = [...document.querySelectorAll('.tape-row')].find((row) =>
    row.textContent.startsWith('Fri'),
  )!;
  for (const box of friday.querySelectorAll('.tape-touch'))
    expect(box.textContent < '08:30' || box.textContent >= '16:00', hours.join()).toBe(true);
});
