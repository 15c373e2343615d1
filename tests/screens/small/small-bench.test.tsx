import { cleanup, fireEvent, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { smallWords } from '../../../src/core/small/small-words.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { onBench, type OnBench } from '../bench/on-bench.tsx';
import { down, place, up } from '../parts/touching.ts';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const SLOW = { timeout: 10_000 };
const turned = async (at: OnBench): Promise<void> => {
  at.house.choose({ small: '4-6' });
  await screen.findByText('You', undefined, SLOW);
};
const heading = (name: string) => screen.findByRole('heading', { name }, SLOW);
const words = (step: 'mix.first' | 'mix.rest' | 'shape.divide') => smallWords('4-6', step);

describe('a bench with small hands', () => {
  it('is switched under More, at any time, and back by one press', async () => {
    const at = await onBench('mix.first');
    await at.press(/^More/);
    await at.press(/^Small hands/);
    await at.press(/^4 to 6/);
    await heading(words('mix.first').act);
    expect(screen.getByText(words('mix.first').say)).toBeTruthy();
    expect(screen.getByText(words('mix.first').task)).toBeTruthy();
    expect(document.querySelectorAll('.slab')).toHaveLength(1);
    await at.press(/^Baker’s view/);
    await heading('Mix until no flour is dry');
    expect(at.house.ways().small).toBe('off');
  }, 30_000);

  it('has a slab that does what the baker’s does, and tells what was done once', async () => {
    const heard: string[] = [];
    const world = makeFakeWorld();
    const say: typeof world.speaker.say = (told) => {
      heard.push(told);
      return world.speaker.say(told);
    };
    const at = await onBench('mix.first', {
      world: { ...world, speaker: { ...world.speaker, say } },
    });
    await turned(at);
    at.touch(await screen.findByRole('button', { name: /use your whole hand/ }, SLOW));
    await heading(words('mix.rest').act);
    expect(at.facts().at(-1)).toMatchObject({ kind: 'press', act: 'mixed' });
    expect(screen.getAllByText(words('mix.first').praise)).toHaveLength(1);
    // It is said before the next step's words, and not for ever beside them.
    await vi.waitFor(
      () =>
        expect(heard.join(' ')).toContain(
          `${words('mix.first').praise} ${words('mix.rest').act}. ${words('mix.rest').say}`,
        ),
      SLOW,
    );
    at.turn(3);
    await vi.waitFor(() => expect(screen.queryByText(words('mix.first').praise)).toBeNull());
  }, 30_000);

  it('shows a wait by a path, without a digit of time in a child’s words', async () => {
    const at = await onBench('mix.first');
    await turned(at);
    await at.house.take({ kind: 'press', who: at.bake, act: 'mixed' });
    const path = await screen.findByRole('img', { name: 'The wait has begun.' }, SLOW);
    expect(path.getAttribute('data-passed')).toBe('0');
    const { deadline } = { deadline: at.house.kitchen().bakes[at.bake]!.context.marks['due'] };
    expect(deadline === undefined || deadline > at.house.now()).toBe(true);
    at.turn(15);
    await vi.waitFor(() =>
      expect(
        Number(document.querySelector('.wait-path')!.getAttribute('data-passed')),
      ).toBeGreaterThan(3),
    );
    expect(document.querySelector('.times-number')).toBeNull();
    const childs = document.querySelectorAll('.small-words, .small-task');
    for (const el of childs) expect(el.textContent).not.toMatch(/\d/);
  }, 30_000);

  it('counts by taps, and goes on without them', async () => {
    const at = await onBench('shape.divide');
    await turned(at);
    const pieces = await screen.findByRole('group', { name: 'Tap one for each piece' }, SLOW);
    expect(pieces.querySelectorAll('button')).toHaveLength(2);
    const before = at.facts().length;
    await at.press(/^First$/);
    expect(screen.getByRole('button', { name: 'First' }).getAttribute('aria-pressed')).toBe('true');
    expect(at.facts()).toHaveLength(before);
    at.touch(screen.getByRole('button', { name: /use your whole hand/ }));
    await vi.waitFor(() => expect(at.facts().at(-1)).toMatchObject({ act: 'divided' }));
  }, 30_000);

  it('has a sheet to scatter over, and each filling’s weight for the baker', async () => {
    const at = await onBench('bulk.scatter');
    await turned(at);
    await heading(smallWords('4-6', 'bulk.scatter').act);
    const { loaves, recipe } = at.house.kitchen().bakes[at.bake]!.context;
    const [first, second] = recipe.lines.filling;
    const shown = () =>
      document.querySelector('.small-baker')!.textContent.replaceAll('\u00a0', ' ');
    const shares = () =>
      [...document.querySelectorAll('.small-sheet text')].map((text) =>
        Number.parseFloat(text.textContent),
      );
    const sum = () => shares().reduce((all, one) => all + one, 0);
    expect(shown()).toContain(`${first!.grams} g ${first!.name}`);
    expect(shares()).toHaveLength(loaves.length);
    expect(sum()).toBe(first!.grams);
    at.touch(screen.getByRole('button', { name: /use your whole hand/ }));
    await vi.waitFor(() => expect(shown()).toContain(`${second!.grams} g ${second!.name}`), SLOW);
    expect(sum()).toBe(second!.grams);
    expect(at.facts().at(-1)).toMatchObject({ act: 'answer', item: first!.item });
  }, 30_000);

  it('keeps the marks that children pick, and shows them where loaves are shaped', async () => {
    const world = makeFakeWorld();
    const at = await onBench('shape.divide', { world });
    await turned(at);
    for (const act of ['divided', 'preshaped'] as const)
      await at.house.take({ kind: 'press', who: at.bake, act });
    at.turn(60);
    at.house.hush();
    await at.press(/^Pick your mark/);
    await at.press(/^Fish/);
    await at.press(/^Boat/);
    await at.press(/^Fish/);
    expect(at.house.ways().marks).toEqual(['boat']);
    await at.press(/^Close/);
    expect(await screen.findByText('Put your mark by your loaf.', undefined, SLOW)).toBeTruthy();
    expect(screen.getByRole('img', { name: 'Boat' })).toBeTruthy();
  }, 30_000);

  it('reminds of raw dough once', async () => {
    const at = await onBench('mix.first');
    await turned(at);
    expect(screen.getAllByText(/^Raw dough can make us ill/)).toHaveLength(1);
    // Beside it the baker is not told the same once more.
    expect(document.querySelectorAll('.act-heed')).toHaveLength(1);
    await at.house.take({ kind: 'press', who: at.bake, act: 'mixed' });
    await heading(words('mix.rest').act);
    expect(screen.queryByText(/^Raw dough can make us ill/)).toBeNull();
  }, 30_000);
});

describe('the gate with small hands', () => {
  const atGate = async (): Promise<{ at: OnBench; slab: HTMLElement }> => {
    const at = await onBench('oven.queued');
    await turned(at);
    const slab = await screen.findByRole('button', { name: /^Hold to open/ }, SLOW);
    await screen.findByText('Stand back', undefined, SLOW);
    place(slab, 880, 240, 376, 536);
    at.clock.at += 1_100;
    return { at, slab };
  };
  const isShut = () =>
    expect(screen.queryByRole('button', { name: /^Hold to open/ })).not.toBeNull();
  const IN = { clientX: 1000, clientY: 500 };

  it('has the child’s task, and no two taps', async () => {
    await atGate();
    expect(screen.getByText(smallWords('4-6', 'turnOn').task)).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'First here' })).toBeNull();
    expect(screen.getByRole('button', { name: /^Baker’s view/ })).toBeTruthy();
  }, 30_000);

  it('is not passed by a press, two presses, a click, a key, or three fingers', async () => {
    const { at, slab } = await atGate();
    const before = at.facts().length;
    for (let n = 0; n < 2; n += 1) {
      down(slab, IN);
      up(slab, IN);
      at.clock.at += 200;
    }
    slab.click();
    fireEvent.keyDown(slab, { key: 'Enter' });
    for (const pointerId of [1, 2, 3])
      down(slab, { ...IN, pointerId, clientX: 900 + 100 * pointerId });
    for (const pointerId of [1, 2, 3]) up(slab, { ...IN, pointerId });
    isShut();
    expect(at.facts()).toHaveLength(before);
  }, 30_000);

  it('opens to a hold, and has the task still', async () => {
    const { slab } = await atGate();
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    down(slab, IN);
    vi.advanceTimersByTime(1_300);
    up(slab, IN);
    vi.useRealTimers();
    await vi.waitFor(() =>
      expect(screen.queryByRole('button', { name: /^Hold to open/ })).toBeNull(),
    );
    expect(await screen.findByText(smallWords('4-6', 'turnOn').task, undefined, SLOW)).toBeTruthy();
    expect(document.querySelectorAll('.slab')).toHaveLength(1);
  }, 30_000);
});
