import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { AGES } from '../../../src/core/small/ages.ts';
import { onBench, type OnBench } from '../bench/on-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const SLOW = { timeout: 10_000 };
const RIGHT = ['bowl', 'barley', 'pears', 'green', 'train'];
const isRight = (tile: HTMLElement): boolean => RIGHT.includes(tile.textContent!);

/** What there is to choose from beside what is to be read. */
const answers = async (): Promise<HTMLElement[]> => {
  await screen.findByRole('heading', { name: 'For a grown-up' }, SLOW);
  return [...document.querySelectorAll<HTMLElement>('.sheet .tile')];
};
const right = async (): Promise<HTMLElement> => (await answers()).find(isRight)!;
const wrong = async (): Promise<HTMLElement> => (await answers()).find((one) => !isRight(one))!;

/** A press under More, while a child of this age helps. */
const opens = async (name: RegExp, ages: (typeof AGES)[number] = '4-6'): Promise<OnBench> => {
  const at = await onBench('mix.first');
  at.house.choose({ small: ages });
  await screen.findByText('You', undefined, SLOW);
  await at.press(/^More/);
  await at.press(name);
  return at;
};

describe('the end of a bake with small hands', () => {
  const end = /^End this bake/;

  it('stands behind something to read, and opens to its answer', async () => {
    const at = await opens(end);
    const answer = await right();
    expect(screen.queryByRole('button', { name: /Hold to end it/ })).toBeNull();
    at.touch(answer);
    await screen.findByRole('button', { name: /Hold to end it/ }, SLOW);
  }, 30_000);

  it('shuts for a while when it was answered wrong twice', async () => {
    const at = await opens(end);
    for (let n = 0; n < 2; n += 1) at.touch(await wrong());
    await screen.findByText(/^That is enough for now/, undefined, SLOW);
    await at.press(/^Back$/);
    await at.press(end);
    await screen.findByText(/^That is enough for now/, undefined, SLOW);
    expect(document.querySelector('.sheet .tile')).toBeNull();
    at.turn(6);
    await vi.waitFor(async () => expect(await answers()).toHaveLength(4));
  }, 30_000);

  it('is simply there in the baker’s view', async () => {
    const at = await onBench('mix.first');
    await at.press(/^More/);
    await at.press(end);
    await screen.findByRole('button', { name: /Hold to end it/ }, SLOW);
  }, 30_000);
});

describe('fewer loaves with small hands', () => {
  const fewer = /^Fewer loaves/;
  const less = () => screen.queryByRole('button', { name: 'One less' });
  const loaves = (at: OnBench) => at.house.kitchen().bakes[at.bake]!.context.loaves.length;

  it.each(AGES)(
    'stand behind something to read beside children of %s, each time anew',
    async (ages) => {
      const at = await opens(fewer, ages);
      const answer = await right();
      expect(less()).toBeNull();
      expect(screen.queryByRole('button', { name: /^That many/ })).toBeNull();
      at.touch(answer);
      await at.press(/^One less/);
      await at.press(/^That many/);
      await vi.waitFor(() => expect(at.facts().at(-1)).toMatchObject({ act: 'fewer' }));
      expect(loaves(at)).toBe(1);
      // One loaf is left: there is nothing to give up, until that is taken back.
      await at.press(/^Take that back/);
      await vi.waitFor(() => expect(loaves(at)).toBe(2));
      await at.press(/^More/);
      await at.press(fewer);
      expect(await answers()).toHaveLength(4);
      expect(less()).toBeNull();
    },
    30_000,
  );

  it('do not open to a wrong answer, and are left for what else there is by one press', async () => {
    const at = await opens(fewer);
    const before = at.facts().length;
    at.touch(await wrong());
    await screen.findByText(/^Not that one/, undefined, SLOW);
    expect(less()).toBeNull();
    await at.press(/^Back$/);
    await screen.findByRole('button', { name: fewer }, SLOW);
    expect([at.facts().length, loaves(at)]).toEqual([before, 2]);
  }, 30_000);

  it('are shut with the end of the bake, for it is the same gate', async () => {
    const at = await opens(/^End this bake/);
    for (let n = 0; n < 2; n += 1) at.touch(await wrong());
    await screen.findByText(/^That is enough for now/, undefined, SLOW);
    await at.press(/^Back$/);
    await at.press(fewer);
    await screen.findByText(/^That is enough for now/, undefined, SLOW);
    expect([document.querySelector('.sheet .tile'), less()]).toEqual([null, null]);
  }, 30_000);

  it('are simply there in the baker’s view', async () => {
    const at = await opens(fewer);
    await answers();
    at.house.choose({ small: 'off' });
    await vi.waitFor(() => expect(less()).not.toBeNull(), SLOW);
    expect(loaves(at)).toBe(2);
  }, 30_000);
});
