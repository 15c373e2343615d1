import type * as english from '../words/sheet.ts';
import type { InTongue } from '../tongue.ts';

export const sheet: InTongue<typeof english.sheet> = {
  title: 'Garnissez case par case',
  edge: '3 cm restent nus',
  share: '{name} : {got}',
  between: '{name} : {least} ou {most}',
  each: 'Dans chacune des {count} cases :',
  one: 'Le tout dans une case :',
  alt: 'Une pâte étirée de {count} cases, un bord nu de 3 cm. Chaque case a {name}.',
};
