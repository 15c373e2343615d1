import { afterEach, expect, it } from 'vitest';
import { showMegabytes } from '../../../src/core/speech/show-megabytes.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';

afterEach(() => speakIn('en'));

it.each([
  ['en', '6.1\u00a0MB'],
  ['fr', '6,1\u00a0Mo'],
  ['de', '6,1\u00a0MB'],
] as const)('weighs what comes over the network in the tongue’s own way: %s', (tongue, text) => {
  speakIn(tongue);
  expect(showMegabytes(6_060_000)).toBe(text);
});

it('has nothing behind the sign where there is nothing', () => {
  expect(showMegabytes(6_000_000)).toBe('6\u00a0MB');
});
