import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { crustActs } from '../../../src/core/speech/words/crust.ts';
import { AGES } from '../../../src/core/small/ages.ts';
import type { Ages } from '../../../src/core/small/ages.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { onBench, type OnBench } from '../bench/on-bench.tsx';
import { down, place, up } from '../parts/touching.ts';

afterEach(() => {
  vi.useRealTimers();
  cleanup();
  vi.unstubAllGlobals();
});

const IN = { clientX: 1000, clientY: 500 };
const slab = () => document.querySelector<HTMLElement>('.slab');
/** What a walker sees: another step, another line of it, another face. */
const seen = (at: OnBench): string =>
  `${at.facts().length} ${document.querySelector('.act-headline')?.textContent} ${slab()?.className} ${slab()?.textContent}`;

/** Whether it changed within a moment. */
const changed = async (at: OnBench, before: string): Promise<boolean> => {
  for (let n = 0; n < 12; n += 1) {
    if (seen(at) !== before) return true;
    await new Promise((then) => setTimeout(then, 5));
  }
  return false;
};

/** The slab; of a crust that is to have longer, the grown-up's other press: it would never end. */
const onward = (): HTMLElement => {
  const notYet = slab()!.textContent.startsWith(crustActs.crustNotYet.label);
  const tiles = [...document.querySelectorAll<HTMLElement>('.tile')];
  return (
    (notYet && tiles.find((tile) => tile.textContent.startsWith(crustActs.crustReady.label))) ||
    slab()!
  );
};

const hold = (at: OnBench): void => {
  const gate = slab()!;
  place(gate, 880, 240, 376, 536);
  at.clock.at += 1_100;
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  down(gate, IN);
  vi.advanceTimersByTime(1_300);
  up(gate, IN);
  vi.useRealTimers();
};

interface Walked {
  readonly stages: Set<string>;
  /** Steps that went on by the baker's view alone. */
  readonly byBaker: Set<string>;
  readonly held: Set<string>;
}

/** To the bake's end: the slab or a hold wherever it does something, else time, else the baker's view. */
async function walk(at: OnBench, ages: Ages): Promise<Walked> {
  const walked: Walked = { stages: new Set(), byBaker: new Set(), held: new Set() };
  const running = () => at.house.kitchen().bakes[at.bake] !== undefined;
  for (let steps = 0; running(); steps += 1) {
    const focus = focusOn(at.house.kitchen(), at.bake);
    const stage = String(Object.keys(focus?.machine.context.entered ?? {}).at(-1));
    if (steps > 400) throw new Error(`It does not end: ${stage}, ${seen(at)}.`);
    if (at.house.ringing() !== null) at.house.hush();
    await vi.waitFor(() => {
      if (running() && slab() === null) throw new Error(`${stage} has no slab.`);
    }, 10_000);
    walked.stages.add(stage);
    // A keypad, or a page of it, is the grown-up's: closed it leads to their own view.
    await byBaker(at, walked, stage, ages);
    const back = () => screen.queryByRole('button', { name: /^Baker’s view/ });
    await vi.waitFor(() => {
      if (running() && back() === null) throw new Error(`${stage} has no way back: ${seen(at)}.`);
    }, 10_000);
    if (!running()) break;
    const before = seen(at);
    const isGate = slab()!.classList.contains('hold');
    if (isGate) {
      walked.held.add(stage);
      hold(at);
    } else at.touch(onward());
    if (await changed(at, before)) continue;
    at.turn(10);
    if (await changed(at, before)) continue;
    throw new Error(`${stage} is a dead end: ${seen(at)}.`);
  }
  return walked;
}

/** A keypad that opened: a grown-up puts it away and has no probe, in their own view. */
async function byBaker(at: OnBench, walked: Walked, stage: string, ages: Ages): Promise<void> {
  if (document.querySelector('.pad') === null) return;
  await at.press(/^Back to the bench/);
  await at.press(/^Baker’s view/);
  walked.byBaker.add(stage);
  await vi.waitFor(() =>
    expect(screen.queryByRole('button', { name: /^Baker’s view/ })).toBeNull(),
  );
  const facts = at.facts().length;
  await at.press(/^No probe/);
  await vi.waitFor(() => expect(at.facts().length).toBeGreaterThan(facts));
  at.house.choose({ small: ages });
}

describe('a whole bake with small hands', () => {
  it.each(AGES)(
    'comes to its end for children of %s, a grown-up at its gates',
    async (ages) => {
      const at = await onBench('mix.first', { spoken: false });
      at.house.choose({ small: ages });
      await screen.findByText('You', undefined, { timeout: 10_000 });
      const walked = await walk(at, ages);
      expect(walked.stages.size).toBeGreaterThan(30);
      for (const stage of ['turnOn', 'score', 'load', 'unload', 'turnOff'])
        expect([...walked.held], stage).toContain(stage);
      // Hands on dough, and what is dry, is a child's own press.
      for (const stage of ['bulk.fold', 'shape.divide', 'cool.handOver'])
        expect([...walked.held], stage).not.toContain(stage);
      expect([...walked.byBaker]).toEqual(['mix.temperature']);
      expect(at.house.kitchen().bakes[at.bake]).toBeUndefined();
    },
    120_000,
  );
});
