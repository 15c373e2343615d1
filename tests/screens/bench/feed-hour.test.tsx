import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench, lastFact } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const text = (selector: string): string =>
  document.querySelector(selector)?.textContent.replaceAll('\u00a0', ' ') ?? `no ${selector}`;
const wait = (check: () => void) => vi.waitFor(check, 10_000);
const grams = (words: string): number => Number(/([\d.]+) g starter/.exec(words)?.[1]);

it('tells when the feed is ripe, offers another for another hour, and goes on with its grams', async () => {
  const at = await atBench('levain.feed');
  await wait(() =>
    expect(text('.target')).toMatch(/^\d\d:(00|15|30|45) ripe about then fed 1 : 5 : 5/),
  );
  const own = grams(text('.act-headline'));
  await at.press('Other time');
  await screen.findByRole('dialog', { name: 'When do you want to mix?' }, { timeout: 10_000 });
  expect(text('.feed-hour')).toContain('Fed 1 : 5 : 5, it is ripe by then.');
  for (let n = 0; n < 8; n++) await at.press('Later');
  await wait(() =>
    expect(text('.feed-hour')).toContain('Fed 1 : 5 : 5, it is past its best by then.'),
  );
  const offered = grams(text('.feed-hour ul'));
  expect(offered).toBeLessThan(own);
  const flour = /([\d.]+) g strong wheat flour/.exec(text('.feed-hour ul'))?.[1];
  await at.press(/starter is in$/);
  const fact = await lastFact(at, 'press');
  expect(fact).toMatchObject({ act: 'answer', item: 'seed', value: String(offered) });
  await wait(() => expect(text('.act-headline')).toBe(`${flour} g strong wheat flour`));
  expect(document.querySelector('.feed-hour')).toBeNull();
});

it('asks for the hour on the bench while the starter is not weighed, and reaches one half a day on in few presses', async () => {
  const at = await atBench('levain.feed');
  const words = () => text('.act-detail');
  await wait(() => expect(words()).toContain('Mixing at another time? Say so before you weigh.'));
  await at.press('Other time');
  await screen.findByRole('dialog', { name: 'When do you want to mix?' }, { timeout: 10_000 });
  const minutes = (): number => {
    const [, h, m] = /(\d+):(\d+)/.exec(text('.feed-hour-at'))!;
    return Number(h) * 60 + Number(m);
  };
  const before = minutes();
  for (let n = 0; n < 3; n++) await at.press(/^3.h later/);
  await at.press(/^3.h earlier/);
  await at.press('Earlier');
  expect((minutes() - before + 1440) % 1440).toBe(6 * 60 - 30);
  await at.press(/starter is in$/);
  await lastFact(at, 'press');
  await wait(() => expect(words()).not.toContain('Mixing at another time?'));
});

it('offers nothing so soon that no feed is ripe', async () => {
  const at = await atBench('levain.feed');
  await wait(() => expect(text('.target')).toContain('ripe about then'));
  await at.press('Other time');
  await screen.findByRole('dialog', { name: 'When do you want to mix?' }, { timeout: 10_000 });
  for (let n = 0; n < 24 && screen.queryByRole('button', { name: /starter is in$/ }); n++)
    await at.press('Earlier');
  await wait(() => expect(text('.feed-hour')).toContain('No feed is ripe by then.'));
  expect(text('.feed-hour')).toContain('it is not ripe by then.');
  expect(screen.queryByRole('button', { name: /starter is in$/ })).toBeNull();
});
