// @vitest-environment jsdom
import { expect, it } from 'vitest';
import { isNight, openWays, readWays } from '../../src/app/ways.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';

const PLAIN = {
  theme: 'light',
  hands: 'right',
  text: 'plain',
  clock: '24',
  heat: 'C',
  weight: 'g',
  night: 'off',
  tongue: 'en',
  small: 'off',
  learner: 'off',
  met: [],
  marks: [],
  pxPerMm: null,
};

const settled = () => new Promise<void>((resolve) => setTimeout(resolve));
const DAY = { hour: () => 12, every: () => () => undefined };

it.each([[null], [undefined], ['dark'], [7], [{}], [[]]])('reads %j as the plain ways', (kept) => {
  expect(readWays(kept)).toEqual(PLAIN);
});

it('keeps the lessons that were met, where they can be read', () => {
  expect(readWays({ met: ['bulk.fold', 'score'] }).met).toEqual(['bulk.fold', 'score']);
  for (const met of ['score', [1], { 0: 'score' }, null]) expect(readWays({ met }).met).toEqual([]);
});

it('keeps what it knows, and what it does not falls back by itself', () => {
  expect(readWays({ theme: 'dark', heat: 'K', weight: 'oz', clock: 12, pxPerMm: 5.5 })).toEqual({
    ...PLAIN,
    theme: 'dark',
    weight: 'oz',
    pxPerMm: 5.5,
  });
});

it.each([[2.9], [12.1], [0], [-5], [Number.NaN], [Infinity], ['6'], [null]])(
  'refuses %s pixels a millimetre',
  (pxPerMm) => {
    expect(readWays({ pxPerMm }).pxPerMm).toBeNull();
  },
);

it('stands in the tablet’s own tongue until one is chosen, and the page opens anew where it is', async () => {
  const settings = makeMemorySettings();
  const root = document.createElement('div');
  let reloads = 0;
  const world = { ...DAY, tongue: 'fr', reload: () => void (reloads += 1) } as const;
  const first = await openWays(settings, root, world);
  expect(first.ways().tongue).toBe('fr');
  first.choose({ theme: 'dark' });
  await settled();
  expect(reloads).toBe(0);
  first.choose({ tongue: 'de' });
  await settled();
  expect(reloads).toBe(1);
  expect((await openWays(settings, root, world)).ways()).toMatchObject({ tongue: 'de' });
});

it('keeps a choice for the next time, beside what was chosen before', async () => {
  const settings = makeMemorySettings();
  const root = document.createElement('div');
  const first = await openWays(settings, root, DAY);
  first.choose({ heat: 'F' });
  first.choose({ clock: '12', text: 'bigger' });
  expect(first.ways()).toMatchObject({ heat: 'F', clock: '12', text: 'bigger', weight: 'g' });
  expect(root.dataset['text']).toBe('bigger');
  const second = await openWays(settings, document.createElement('div'), DAY);
  expect(second.ways()).toEqual(first.ways());
});

it('dims by hand at once, and by itself when the night begins, and the theme comes back', async () => {
  let hour = 21;
  const beats: (() => void)[] = [];
  const root = document.createElement('div');
  const { choose } = await openWays(makeMemorySettings(), root, {
    hour: () => hour,
    every: (_, then) => {
      beats.push(then);
      return () => undefined;
    },
  });
  const at = (h: number): string | undefined => {
    hour = h;
    for (const beat of beats) beat();
    return root.dataset['theme'];
  };
  choose({ theme: 'dark', night: 'dim' });
  expect(at(12)).toBe('dim');
  choose({ night: 'hours' });
  expect([21, 22, 3, 6].map(at)).toEqual(['dark', 'dim', 'dim', 'dark']);
  choose({ night: 'off' });
  expect(at(3)).toBe('dark');
  expect([0, 5, 6, 21, 22, 23].map(isNight)).toEqual([true, true, false, false, true, true]);
});

it('measures by the bank card, and by the size of the window again', async () => {
  const root = document.createElement('div');
  const { choose, ways } = await openWays(makeMemorySettings(), root, DAY);
  const scale = () => root.style.getPropertyValue('--px-per-mm');
  choose({ pxPerMm: 6.5 });
  expect(scale()).toBe('6.5');
  expect(root.dataset['held']).toBe('');
  choose({ pxPerMm: 40 });
  expect(ways().pxPerMm).toBeNull();
  expect(scale()).toBe('');
  expect(root.dataset['held']).toBeUndefined();
});

it('keeps the marks that were picked, each once and in their order', () => {
  const kept = ['boat', 'star', 'boat', 'cat', 7];
  expect(readWays({ marks: kept }).marks).toEqual(['boat', 'star']);
  expect(readWays({ marks: 'boat' }).marks).toEqual([]);
});
