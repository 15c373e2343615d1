import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { makeLastKitchen } from '../../src/app/last-kitchen.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';

const read = async (kept: unknown): Promise<number | null> => {
  const settings = makeMemorySettings({ lastKitchen: kept });
  const last = createRoot(() => makeLastKitchen(settings));
  for (let n = 0; n < 4; n += 1) await Promise.resolve();
  return last.lastKitchen();
};

it('is the temperature that was told last', async () => {
  expect(await read(21.5)).toBe(21.5);
  expect(await read(undefined)).toBeNull();
});

it.each([Number.NaN, Number.POSITIVE_INFINITY, '21', { celsius: 21 }, null, 12n])(
  'is not yet told where %s was kept',
  async (kept) => {
    expect(await read(kept)).toBeNull();
  },
);
