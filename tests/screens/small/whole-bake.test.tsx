import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Ages } from '../../../src/core/small/ages.ts';
import type { SmallStep } from '../../../src/core/small/small-words.ts';
import { speakIn, type Tongue } from '../../../src/core/speech/tongue.ts';
import { controls } from '../../../src/core/speech/words/controls.ts';
import { crustActs } from '../../../src/core/speech/words/crust.ts';
import { small } from '../../../src/core/speech/words/small.ts';
import { softWords } from '../../../src/parts/soft-words.ts';
import { unbroken } from '../../../src/parts/unbroken.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { onBench, type OnBench } from '../bench/on-bench.tsx';
import { down, place, up } from '../parts/touching.ts';
import { expectTongue, WORDS, type Kind } from './in-its-tongue.ts';

afterEach(() => {
  vi.useRealTimers();
  cleanup();
  speakIn('en');
  vi.unstubAllGlobals();
});

/** A press by its words, in whichever tongue stands. */
const named = (words: string): RegExp =>
  new RegExp(
    `^${softWords(words)
      .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
      .replace(/\s/g, '\\s')}`,
  );

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

const begins = (el: Element, words: string): boolean =>
  [unbroken(words), softWords(words)].some((one) => el.textContent.startsWith(one));

/** The slab; of a crust that is to have longer, the grown-up's other press: it would never end. */
const onward = (): HTMLElement => {
  const notYet = begins(slab()!, crustActs.crustNotYet.label);
  const tiles = [...document.querySelectorAll<HTMLElement>('.tile')];
  return (notYet && tiles.find((tile) => begins(tile, crustActs.crustReady.label))) || slab()!;
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
  /** How much of what was shown stands in other words than the English. */
  readonly differs: Record<Kind, number>;
}

/** To the bake's end: the slab or a hold wherever it does something, else time, else the baker's view. */
async function walk(at: OnBench, ages: Ages, tongue: Tongue): Promise<Walked> {
  const walked: Walked = {
    stages: new Set(),
    byBaker: new Set(),
    held: new Set(),
    differs: { headline: 0, act: 0, task: 0, praise: 0 },
  };
  let pressed: SmallStep | null = null;
  const running = () => at.house.kitchen().bakes[at.bake] !== undefined;
  for (let steps = 0; running(); steps += 1) {
    const focus = focusOn(at.house.kitchen(), at.bake);
    const stage = String(Object.keys(focus?.machine.context.entered ?? {}).at(-1));
    if (steps > 400) throw new Error(`It does not end: ${stage}, ${seen(at)}.`);
    if (at.house.ringing() !== null) at.house.hush();
    await vi.waitFor(() => {
      if (running() && slab() === null) throw new Error(`${stage} has no slab.`);
    }, 10_000);
    // A keypad, or a page of it, is the grown-up's: closed it leads to their own view.
    await byBaker(at, walked, stage, ages);
    const back = () => screen.queryByRole('button', { name: named(small.back) });
    await vi.waitFor(() => {
      if (running() && back() === null) throw new Error(`${stage} has no way back: ${seen(at)}.`);
    }, 10_000);
    if (!running()) break;
    const told = await vi.waitFor(() => expectTongue(at, tongue, ages, pressed), 10_000);
    walked.stages.add(told.step);
    for (const kind of told.differs) walked.differs[kind] += 1;
    const before = seen(at);
    // A gate that is opened is no press of its step.
    if (document.querySelector('.small-stand') === null) pressed = told.step;
    const isGate = slab()!.classList.contains('hold');
    if (isGate) {
      walked.held.add(told.step);
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
  await at.press(named(controls.backToBench));
  await at.press(named(small.back));
  walked.byBaker.add(stage);
  await vi.waitFor(() =>
    expect(screen.queryByRole('button', { name: named(small.back) })).toBeNull(),
  );
  const facts = at.facts().length;
  await at.press(named(controls.noProbe));
  await vi.waitFor(() => expect(at.facts().length).toBeGreaterThan(facts));
  await at.press(named(controls.smallHands));
  expect(at.house.ways().small).toBe(ages);
}

/** At each age in English, and at two of them in the others: all nine would cost too much. */
const WALKS: readonly (readonly [Tongue, Ages])[] = [
  ['en', '4-6'],
  ['en', '7-9'],
  ['en', '10-12'],
  ['fr', '4-6'],
  ['de', '10-12'],
];

/** Where a grown-up holds, at every age and in every tongue; all else, dough too, is a child's own press. */
const HELD = [
  'cool.cooling',
  'judge',
  'lidded',
  'load',
  'open',
  'preheating',
  'recover',
  'score',
  'turnOff',
  'turnOn',
  'unload',
];

describe('a whole bake with small hands', () => {
  it.each(WALKS)(
    'comes to its end in %s for children of %s, a grown-up at its gates',
    async (tongue, ages) => {
      speakIn(tongue, WORDS[tongue]);
      const at = await onBench('mix.first', { spoken: false });
      at.house.choose({ small: ages });
      await screen.findByText(small.you, undefined, { timeout: 10_000 });
      const walked = await walk(at, ages, tongue);
      expect(walked.stages.size).toBeGreaterThan(30);
      expect([...walked.held].toSorted()).toEqual(HELD);
      const { headline, act, task, praise } = walked.differs;
      if (tongue === 'en') expect([headline, act, task, praise]).toEqual([0, 0, 0, 0]);
      else {
        expect(Math.min(headline, task)).toBeGreaterThan(60);
        expect(act).toBeGreaterThan(30);
        expect(praise).toBeGreaterThan(10);
      }
      expect([...walked.byBaker]).toEqual(['mix.temperature']);
      expect(at.house.kitchen().bakes[at.bake]).toBeUndefined();
    },
    120_000,
  );
});
