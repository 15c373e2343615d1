import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import type { Answer, Question } from '../../src/adapters/planner/messages.ts';
import { askedBake, askWorld, dayAsk, SATURDAY_NOON } from '../fakes/laid-day.ts';
import { runningDay } from '../fakes/running-day.ts';
import { HOUR } from '../../src/core/units.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type App } from './harness/open-app.ts';

const { hand } = runningDay('levain.ripening', 120);
hand.turn(30);

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

/** The same for a plan that runs: its levain late, something of it has to move. */
const LIVE: Question = {
  kind: 'live',
  question: {
    plan: hand.kitchen.plan!,
    world: askWorld({
      now: hand.now,
      running: {
        places: hand.fold.positionOf(hand.kitchen),
        bakes: Object.entries(hand.kitchen.bakes).map(([bake, { context }]) => ({
          bake,
          recipe: context.recipe,
          loaves: context.loaves,
        })),
      },
    }),
    asks: {
      kind: 'trouble',
      trouble: { trouble: 'away', from: hand.now, to: hand.now + 8 * HOUR },
    },
  },
};

/** An open page as slow as a tablet, whose watch sees what it is there for; and the thread's file. */
async function slowPage(): Promise<{ readonly app: App; readonly path: string }> {
  const app = await openApp({ clock: 'real' });
  await expect.poll(() => app.page.locator('#loafward > :not(.shell)').count()).toBeGreaterThan(0);
  const assets = readdirSync(join(inject('site'), 'assets'));
  const file = assets.find((name) => /^worker-.*\.js$/.test(name));
  expect(file, 'the planner’s thread is a file of the build').toBeDefined();
  const session = await app.context.newCDPSession(app.page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  expect(await toldOf(app.page, 4 * FELT)).toBeGreaterThan(FELT);
  return { app, path: `/assets/${file}` };
}

/** Asks the thread from the page: its answers, the page's frames meanwhile and its longest task, ms. */
const ask = (page: Page, path: string, question: Question) =>
  page.evaluate(
    async ([file, asked]) => {
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
        const worker = new Worker(file, { type: 'module' });
        worker.onerror = ({ message }) => reject(new Error(message));
        worker.onmessage = ({ data }: MessageEvent<Answer>) => {
          told.push(data);
          if (data.kind !== 'plan' || data.plan.isLast) resolve(told);
        };
        worker.postMessage(asked);
      });
      isOver = true;
      const took = performance.now() - began;
      await new Promise((next) => requestAnimationFrame(next));
      tasks.push(...watch.takeRecords().map(({ duration }) => duration));
      watch.disconnect();
      return { answers, frames, took, longest: Math.max(0, ...tasks) };
    },
    [path, question] as const,
  );

type Run = Awaited<ReturnType<typeof ask>>;

/** Runs until one had no long task, for others use the machine too. */
async function runsOf(page: Page, path: string, question: Question): Promise<readonly Run[]> {
  const runs: Run[] = [];
  while (runs.length < RUNS && !runs.some(({ longest }) => longest <= FELT))
    runs.push(await ask(page, path, question));
  expect(Math.min(...runs.map(({ longest }) => longest))).toBeLessThanOrEqual(FELT);
  // It was really on another thread: the page went on drawing while it searched.
  for (const { frames, took } of runs) expect(frames).toBeGreaterThan(took / 200);
  return runs;
}

it('plans on its own thread under the content policy, and blocks no frame of a slow page', async () => {
  const { app, path } = await slowPage();
  for (const { answers } of await runsOf(app.page, path, QUESTION)) {
    expect(answers.length).toBeGreaterThan(1);
    const last = answers.at(-1)!;
    if (last.kind !== 'plan') throw new Error(JSON.stringify(last));
    expect(last.plan).toMatchObject({ result: { fits: true, atMostFromBest: 0 } });
    expect(last.plan.result).toMatchObject({
      ready: [{ at: SATURDAY_NOON }, { at: SATURDAY_NOON }],
    });
  }
  expectNoFaults(app.faults);
});

it('asks a plan that runs anew there too, down to making a question of it', async () => {
  const { app, path } = await slowPage();
  for (const { answers, took } of await runsOf(app.page, path, LIVE)) {
    expect(answers).toMatchObject([{ kind: 'live', answer: { kind: 'trouble' } }]);
    const [told] = answers;
    if (told?.kind !== 'live' || told.answer.kind !== 'trouble') throw new Error('No answer.');
    expect(told.answer.ways.length).toBeGreaterThan(0);
    // On the page it would have been felt.
    expect(took).toBeGreaterThan(FELT);
  }
  expectNoFaults(app.faults);
});
