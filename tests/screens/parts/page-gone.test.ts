// @vitest-environment jsdom
import { afterEach, expect, it, vi } from 'vitest';
import { giveBack } from '../../../src/parts/focus-owed.ts';

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

it('gives the focus back in a page that is gone without asking for the page', () => {
  vi.useFakeTimers();
  const button = document.body.appendChild(document.createElement('button'));
  giveBack([button]);
  vi.stubGlobal('document', undefined);
  vi.stubGlobal('HTMLElement', undefined);
  vi.advanceTimersByTime(40);
  vi.unstubAllGlobals();
  expect(document.activeElement).toBe(button);
  button.remove();
});
