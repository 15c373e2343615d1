// @vitest-environment jsdom
import { afterEach, expect, it, vi } from 'vitest';
import { makeShowing } from '../../src/adapters/showing.ts';

const see = (state: 'visible' | 'hidden') => {
  vi.spyOn(document, 'visibilityState', 'get').mockReturnValue(state);
  document.dispatchEvent(new Event('visibilitychange'));
};
afterEach(() => vi.restoreAllMocks());

it('is one showing until the page is hidden, none while it is, and then another', () => {
  see('visible');
  const showing = makeShowing();
  const first = showing();
  expect(first).not.toBeNull();
  expect(showing()).toBe(first);
  see('hidden');
  expect(showing()).toBeNull();
  see('visible');
  expect(showing()).not.toBe(first);
  expect(showing()).not.toBeNull();
});
