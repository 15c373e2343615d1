import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { lessonPages } from '../../../src/core/lessons/lesson-pages.ts';
import { smallWords } from '../../../src/core/small/small-words.ts';
import { bench } from '../../../src/core/speech/words/bench.ts';
import { controls } from '../../../src/core/speech/words/controls.ts';
import { lessonPage } from '../../../src/core/speech/words/lesson-page.ts';
import { shape } from '../../../src/core/speech/words/shape.ts';
import { atBench, lastFact, type AtBench } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const headline = () =>
  document.querySelector('.act-headline')?.textContent.replaceAll('\u00a0', ' ');
/** The pages are a chunk of their own, compiled at its first use. */
const isTitled = (title: string) =>
  vi.waitFor(() => expect(headline()).toBe(title), { timeout: 10_000 });
const ACT = 'Divide into 900 g pieces';
const slab = () => document.querySelector('.slab')!.textContent;

const learning = async (): Promise<AtBench> => {
  const at = await atBench('shape.divide');
  at.house.choose({ learner: 'on' });
  return at;
};

it('stands before a step that is met for the first time, page by page, and leads to the act', async () => {
  const at = await learning();
  const [why, word] = lessonPages('shape.divide');
  await isTitled(why!.title);
  expect(slab()).toBe(`${lessonPage.next}1 of 2`);
  // What stands there as it is said is not told a second time.
  expect(document.querySelector('.caption')?.textContent ?? '').not.toContain(why!.title);
  const before = at.facts().length;
  await at.press(lessonPage.next);
  await isTitled(word!.title);
  expect(screen.getByText(lessonPage.newWord)).toBeTruthy();
  expect(at.said.at(-1)).toBe(word!.spoken);
  await at.press(lessonPage.back);
  await isTitled(why!.title);
  await at.press(lessonPage.next);
  await at.press(lessonPage.toAct);
  await isTitled(ACT);
  expect(at.house.ways().met).toEqual(['shape.divide']);
  // What is learned is no fact of the bake.
  expect(at.facts()).toHaveLength(before);
  await at.press(shape['shape.divide'].slab);
  await lastFact(at, 'press');
  await isTitled(lessonPages('shape.preshape')[0]!.title);
});

it('is left for good by one press, and comes back where it is asked for', async () => {
  const at = await learning();
  await isTitled(lessonPages('shape.divide')[0]!.title);
  await at.press(lessonPage.leave);
  await isTitled(ACT);
  expect(at.house.ways()).toMatchObject({ learner: 'off', met: [] });
});

it('is not there for who is no learner, or met it', async () => {
  const at = await atBench('shape.divide');
  await isTitled(ACT);
  for (const ways of [
    { learner: 'off', met: [] },
    { learner: 'on', met: ['shape.divide'] },
  ] as const) {
    at.house.choose(ways);
    await Promise.resolve();
    expect(headline()).toBe(ACT);
  }
});

it('has no page while small hands help, neither shown nor said, and comes back behind them', async () => {
  const at = await learning();
  const [why] = lessonPages('shape.divide');
  await isTitled(why!.title);
  at.house.choose({ small: '4-6' });
  await isTitled(smallWords('4-6', 'shape.divide').act);
  expect(document.querySelector('.lesson')).toBeNull();
  at.heard.length = 0;
  at.said.length = 0;
  await at.press(shape['shape.divide'].slab);
  await isTitled(smallWords('4-6', 'shape.preshape').act);
  await vi.waitFor(
    () => expect(at.heard.join(' ')).toContain(smallWords('4-6', 'shape.preshape').say),
    { timeout: 10_000 },
  );
  const told = [...at.heard, ...at.said].join(' ');
  for (const { title, text } of [
    ...lessonPages('shape.divide'),
    ...lessonPages('shape.preshape'),
  ]) {
    expect(told).not.toContain(title);
    expect(told).not.toContain(text);
  }
  // What was not told was not met.
  expect(at.house.ways().met).toEqual([]);
  at.house.choose({ small: 'off' });
  await isTitled(lessonPages('shape.preshape')[0]!.title);
});

it('is opened again under More by whoever asks, page by page, and leads back to the act', async () => {
  const at = await atBench('shape.divide');
  await isTitled(ACT);
  const before = at.facts().length;
  const [why, word] = lessonPages('shape.divide');
  const title = () => document.querySelector('.sheet-title')?.textContent;
  await at.press(bench.more);
  await at.press(lessonPage.open);
  await vi.waitFor(() => expect(title()).toBe(why!.title), { timeout: 10_000 });
  expect(at.said.at(-1)).toBe(why!.spoken);
  await at.press(lessonPage.next);
  expect(title()).toBe(word!.title);
  expect(at.said.at(-1)).toBe(word!.spoken);
  expect(screen.getByText(lessonPage.newWord)).toBeTruthy();
  // There is no page behind the last one.
  await at.press(lessonPage.next);
  expect(title()).toBe(word!.title);
  await at.press(lessonPage.back);
  expect(title()).toBe(why!.title);
  at.said.length = 0;
  await at.press(controls.sayAgain);
  expect(at.said).toEqual([why!.spoken]);
  await at.press(controls.backToBench);
  expect(document.querySelector('.sheet')).toBeNull();
  expect(headline()).toBe(ACT);
  // What was being said is not said on over the act.
  expect(at.said.at(-1)).toBe('');
  // It was met by nobody, and is no fact.
  expect(at.house.ways()).toMatchObject({ learner: 'off', met: [] });
  expect(at.facts()).toHaveLength(before);
});

it('is not offered under More where the step has none', async () => {
  expect(lessonPages('proof.counter')).toEqual([]);
  const at = await atBench('proof.counter');
  await at.press(bench.more);
  await screen.findByRole('button', { name: controls.backToBench }, { timeout: 10_000 });
  expect(screen.queryByRole('button', { name: lessonPage.open })).toBeNull();
});
