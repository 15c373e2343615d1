import { afterEach, expect, it, vi } from 'vitest';
import { askToKeep } from '../../src/adapters/keep.ts';

const storage = (persisted: boolean, persist: () => Promise<boolean>) =>
  ({ persisted: async () => persisted, persist: vi.fn(persist) }) as unknown as StorageManager;

afterEach(() => vi.unstubAllGlobals());

it.each([true, false])('says what the browser answers: %s', async (answer) => {
  expect(await askToKeep(storage(false, async () => answer))).toBe(answer);
});

it('does not ask again what was promised', async () => {
  const kept = storage(true, async () => false);
  expect(await askToKeep(kept)).toBe(true);
  expect(kept.persist).not.toHaveBeenCalled();
});

it('says unavailable where it cannot be asked', async () => {
  expect(await askToKeep({} as StorageManager)).toBe('unavailable');
  const failing = storage(false, () => Promise.reject(new TypeError('not here')));
  expect(await askToKeep(failing)).toBe('unavailable');
  vi.stubGlobal('navigator', {});
  expect(await askToKeep()).toBe('unavailable');
});
