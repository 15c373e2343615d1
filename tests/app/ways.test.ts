import { expect, it } from 'vitest';
import { openWays, readWays } from '../../src/app/ways.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';

const PLAIN = {
  theme: 'light',
  hands: 'right',
  text: 'plain',
  clock: '24',
  heat: 'C',
  weight: 'g',
  night: 'off',
  pxPerMm: null,
};

it.each([[null], [undefined], ['dark'], [7], [{}], [[]]])('reads %j as the plain ways', (kept) => {
  expect(readWays(kept)).toEqual(PLAIN);
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

it('keeps a choice for the next time, beside what was chosen before', async () => {
  const settings = makeMemorySettings();
  const root = document.createElement('div');
  const first = await openWays(settings, root);
  first.choose({ heat: 'F' });
  first.choose({ clock: '12', text: 'bigger' });
  expect(first.ways()).toMatchObject({ heat: 'F', clock: '12', text: 'bigger', weight: 'g' });
  expect(root.dataset['text']).toBe('bigger');
  const second = await openWays(settings, document.createElement('div'));
  expect(second.ways()).toEqual(first.ways());
});
