import type * as english from '../words/letter-pad.ts';
import type { InTongue } from '../tongue.ts';

export const letterPad: InTongue<typeof english.letterPad> = {
  label: 'Lettres',
  blank: 'Blanc',
  erase: 'Ôter',
  eraseWord: 'Ôter mot',
  putBack: 'Ren\u00ADdre',
  signs: '123 é',
  letters: 'abc',
  more: 'Plus',
  less: 'Moins',
  capital: 'Aa',
  line: 'À la ligne',
  done: 'Fini',
  tablet: 'Clavier tablette',
  big: 'Grosses touches',
};

export const letterNames: InTongue<typeof english.letterNames> = {
  capital: 'Aa : une majuscule',
  signs: '123 é : chiffres, points et autres lettres',
  letters: 'abc : lettres de a à z',
  more: 'Plus : lettres et signes',
  less: 'Moins : chiffres et points',
  comma: 'Virgule',
  stop: 'Point',
  apostrophe: 'Apostrophe',
  hyphen: 'Trait d’union',
  question: 'Point d’interrogation',
  exclamation: 'Point d’exclamation',
  colon: 'Deux-points',
  semicolon: 'Point-virgule',
  open: 'Parenthèse ouvrante',
  close: 'Parenthèse fermante',
  slash: 'Barre oblique',
  percent: 'Pour cent',
  plus: 'Plus',
  and: 'Et',
  degree: 'Petit rond',
};
