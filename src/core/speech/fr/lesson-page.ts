import type * as english from '../words/lesson-page.ts';
import type { InTongue } from '../tongue.ts';

export const lessonPage: InTongue<typeof english.lessonPage> = {
  label: 'Leçon',
  newWord: 'Un mot nouveau',
  sign: 'Un signe à connaître',
  toAct: 'Montrez comment',
  next: 'Continuer',
  of: '{n} sur {count}',
  leave: 'Sans leçons',
  back: 'Un pas en arrière',
  open: 'Pourquoi, et à quoi cela ressemble',
  first: 'Mon premier pain',
  said: '{word} : {means}',
};
