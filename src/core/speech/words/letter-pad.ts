import { inTongue } from '../tongue.ts';

/** On the keys that write words, and beside them. Shown, never said. */
export const letterPad = inTongue('letter-pad', 'letterPad', {
  label: 'Letters',
  blank: 'Blank',
  erase: 'Erase',
  eraseWord: 'Erase word',
  putBack: 'Put back',
  /** To figures, stops and the letters of other tongues. */
  signs: '123 é',
  letters: 'abc',
  more: 'More',
  less: 'Less',
  /** The next letter is a capital. */
  capital: 'Aa',
  line: 'New line',
  done: 'Done',
  /** To the keyboard that the device brings, and back to these keys. */
  tablet: 'Tablet’s keys',
  big: 'Big keys',
} as const);

/** What a key is called, for ears, where its face alone is not read out. */
export const letterNames = inTongue('letter-pad', 'letterNames', {
  capital: 'Aa: a capital letter',
  signs: '123 é: figures, stops and more letters',
  letters: 'abc: letters a to z',
  more: 'More: letters and signs',
  less: 'Less: figures and stops',
  comma: 'Comma',
  stop: 'Full stop',
  apostrophe: 'Apostrophe',
  hyphen: 'Hyphen',
  question: 'Question mark',
  exclamation: 'Exclamation mark',
  colon: 'Colon',
  semicolon: 'Semicolon',
  open: 'Open bracket',
  close: 'Close bracket',
  slash: 'Slash',
  percent: 'Percent',
  plus: 'Plus',
  and: 'And',
  degree: 'Small circle',
} as const);
