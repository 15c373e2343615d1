import type { EarPhrase } from '../core/ear/phrases.ts';
import type { PadKey } from './typed.ts';

/** What is said for each key; *no* is the answer to a number that was read back wrong. */
export const KEY_SAID: Readonly<Record<PadKey, EarPhrase>> = {
  '0': 'zero',
  '1': 'one',
  '2': 'two',
  '3': 'three',
  '4': 'four',
  '5': 'five',
  '6': 'six',
  '7': 'seven',
  '8': 'eight',
  '9': 'nine',
  '.': 'point',
  clear: 'no',
};
