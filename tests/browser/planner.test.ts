import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import type { Answer, Question } from '../../src/adapters/planner/messages.ts';
import { askedBake, askWorld, dayAsk, SATURDAY_NOON } from '../fakes/laid-day.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';

/** How much slower than this machine a kitchen tablet is taken to be. Judgement. */
const SLOWER = 6;
/** A frame that waits longer than this is felt, ms: a long task as the W3C counts it. */
const FELT = 50;
/** Runs, for another program on a shared machine may take the page's turn. */
const RUNS = 3;

/** Two retarded bakes for the same noon: a search of many plans. */
const QUESTION: Question = {
  kind: 'ask',
  ask: dayAsk({ bakes: ['a', 'b'].map((name) => askedBake({ name, due: SATURDAY_NOON })) }),
  world: askWorld(),
};

/** The longest task that a page which works for so many ms tells: the watch sees what it is there for. */
const toldOf = (page: Page, work: number) =>
  page.evaluate(async (ms) => {
    const told = new Promise<number>((resolve) =>
      new PerformanceObserver((list) => resolve(list.getEntries()[0]!.duration)).observe({
        type: 'longtask',
      }),
    );
    await new Promise((next) => setTimeout(next));
    const until = performance.now() + ms;
    while (performance.now() < until);
    return told;
  }, work);

it('plans on its own thread under the content policy, and blocks no frame of a slow page', async () => {
  const app = await openApp({ clock: 'real' });
  const { page } = app;
  await expect.poll(() => page.locator('#loafward > :not(.shell)').count()).toBeGreaterThan(0);
  const assets = readdirSync(join(inject('site'), 'assets'));
  const file = assets.find((name) => /^worker-.*\.js$/.test(name));
  expect(file, 'the planner’s thread is a file of the build').toBeDefined();
  const session = await app.context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  expect(await toldOf(page, 4 * FELT)).toBeGreaterThan(FELT);
  const run = () =>
    page.evaluate(
      async ([path, question]) => {
        const tasks: number[] = [];
        let frames = 0;
        const watch = new PerformanceObserver((list) =>
          tasks.push(...list.getEntries().map(({ duration }) => duration)),
        );
        watch.observe({ type: 'longtask' });
        let isOver = false;
        const frame = () => {
          frames += 1;
          if (!isOver) requestAnimationFrame(frame);
        };
        requestAnimationFrame(frame);
        const began = performance.now();
        const answers = await new Promise<Answer[]>((resolve, reject) => {
          const told: Answer[] = [];
          const worker = new Worker(path, { type: 'module' });
          worker.onerror = ({ message }) => reject(new Error(message));
          worker.onmessage = ({ data }: MessageEvent<Answer>) => {
            told.push(data);
            if (data.kind === 'failed' || data.plan.isLast) resolve(told);
          };
          worker.postMessage(question);
        });
        isOver = true;
        const took = performance.now() - began;
        await new Promise((next) => requestAnimationFrame(next));
        tasks.push(...watch.takeRecords().map(({ duration }) => duration));
        watch.disconnect();
        return { answers, frames, took, longest: Math.max(0, ...tasks) };
      },
      [`/assets/${file}`, QUESTION] as const,
    );
  const runs: Awaited<ReturnType<typeof run>>[] = [];
  while (runs.length < RUNS && !runs.some(({ longest }) => longest <= FELT)) runs.push(await run());
  for (const { answers } of runs) {
    expect(answers.length).toBeGreaterThan(1);
    const last = answers.at(-1)!;
    if (last.kind === 'failed') throw new Error(last.message);
    expect(last.plan).toMatchObject({ result: { fits: true, atMostFromBest: 0 } });
    expect(last.plan.result).toMatchObject({
      ready: [{ at: SATURDAY_NOON }, { at: SATURDAY_NOON }],
    });
  }
  expect(Math.min(...runs.map(({ longest }) => longest))).toBeLessThanOrEqual(FELT);
  // It was really on another thread: the page went on drawing while it searched.
  for (const { frames, took } of runs) expect(frames).toBeGreaterThan(took / 200);
  expectNoFaults(app.faults);
});
