import { expect, it } from 'vitest';
import { makeHalfTyped } from '../../src/app/half-typed.ts';
import { MINUTE } from '../../src/core/units.ts';
import { makeMemorySettings, type MemorySettings } from '../fakes/memory-settings.ts';

const NOW = Date.UTC(2031, 4, 3, 6);

/** A page opened on what the tablet kept, once that is read. */
const open = async (settings: MemorySettings, now = NOW, keeps = true) => {
  const half = makeHalfTyped(settings, () => now, keeps);
  await Promise.resolve();
  await Promise.resolve();
  return half;
};

it('is there again after a reload, for its own question alone', async () => {
  const settings = makeMemorySettings();
  (await open(settings))('dough').keep('24.');
  const again = await open(settings);
  expect(again('dough').read()).toBe('24.');
  expect(again('kitchen').read()).toBe('');
});

it('is gone once it was taken or cleared', async () => {
  const settings = makeMemorySettings();
  const half = await open(settings);
  half('dough').keep('24');
  half('dough').keep('');
  expect(half('dough').read()).toBe('');
  expect((await open(settings))('dough').read()).toBe('');
});

it('is another reading’s after half an hour', async () => {
  const settings = makeMemorySettings();
  (await open(settings))('dough').keep('24');
  expect((await open(settings, NOW + 30 * MINUTE))('dough').read()).toBe('24');
  expect((await open(settings, NOW + 31 * MINUTE))('dough').read()).toBe('');
});

it('keeps the latest eight questions and no more', async () => {
  const half = await open(makeMemorySettings());
  for (let n = 0; n < 12; n += 1) half(`q${n}`).keep(String(n));
  expect(half('q11').read()).toBe('11');
  expect(half('q0').read()).toBe('');
});

it('reads nothing out of a setting that is none, and writes nothing where it may not', async () => {
  const settings = makeMemorySettings({
    halfTyped: [{ question: 'dough', text: '<b>', at: NOW }, 7],
  });
  expect((await open(settings))('dough').read()).toBe('');
  const before = settings.values.get('halfTyped');
  (await open(settings, NOW, false))('dough').keep('2');
  expect(settings.values.get('halfTyped')).toEqual(before);
});

it.each([
  ['a number for a text', 24],
  ['what no text can be made of', { toString: 1, valueOf: 1 }],
  ['a list', ['24']],
])('reads nothing out of %s, and what stands beside it all the same', async (_, text) => {
  const good = { question: 'kitchen', text: '21', at: NOW };
  const settings = makeMemorySettings({
    halfTyped: [{ question: 'dough', text, at: NOW }, { ...good, at: Number.NaN }, good],
  });
  const half = await open(settings);
  expect(half('dough').read()).toBe('');
  expect(half('kitchen').read()).toBe('21');
});
