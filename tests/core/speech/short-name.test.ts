import { afterEach, expect, it } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { shortName } from '../../../src/core/speech/short-name.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';

afterEach(() => speakIn('en'));

it.each([
  ['fr', 'Pain au levain', 'Pain'],
  ['fr', 'Pain du meunier', 'Pain'],
  ['fr', 'Noix et figues', 'Noix'],
  ['fr', 'Pain noir', 'Pain noir'],
  ['de', 'Brot aus dem Topf', 'Brot'],
] as const)('ends on no joining word in %s: %s', (tongue, name, short) => {
  speakIn(tongue, { de, fr }[tongue]);
  expect(shortName(name)).toBe(short);
});
