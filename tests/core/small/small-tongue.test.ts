import { afterEach, expect, test } from 'vitest';
import { smallWords } from '../../../src/core/small/small-words.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';

afterEach(() => {
  speakIn('en');
});

test('words put together from several files come in the tongue that stands', () => {
  const english = smallWords('7-9', 'lift').say;
  speakIn('de', {
    'small-7-9-oven': { small79Oven: { lift: { say: 'Jemand Großes hebt den Deckel.' } } },
  });
  expect(smallWords('7-9', 'lift').say).toBe('Jemand Großes hebt den Deckel.');
  expect(smallWords('10-12', 'lift').say).toBe(english);
  speakIn('en');
  expect(smallWords('7-9', 'lift').say).toBe(english);
});
