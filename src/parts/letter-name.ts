import { letterNames } from '../core/speech/words/letter-pad.ts';
import type { LetterKey } from './letter-keys.ts';

const NAMED: Readonly<Record<LetterKey, keyof typeof letterNames>> = {
  capital: 'capital',
  ',': 'comma',
  '.': 'stop',
  "'": 'apostrophe',
  '-': 'hyphen',
  '?': 'question',
  '!': 'exclamation',
  ':': 'colon',
  ';': 'semicolon',
  '(': 'open',
  ')': 'close',
  '/': 'slash',
  '%': 'percent',
  '+': 'plus',
  '&': 'and',
  '°': 'degree',
};

/** What a key is called for ears; nothing where its face is read out as it stands. */
export const letterName = (key: LetterKey): string | undefined => {
  const name = NAMED[key];
  return name && letterNames[name];
};
