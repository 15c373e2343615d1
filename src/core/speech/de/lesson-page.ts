import type * as english from '../words/lesson-page.ts';
import type { InTongue } from '../tongue.ts';

export const lessonPage: InTongue<typeof english.lessonPage> = {
  label: 'Lektion',
  newWord: 'Ein neues Wort',
  sign: 'Ein Zeichen zum Merken',
  toAct: 'Zeig mir jetzt, wie',
  next: 'Weiter',
  of: '{n} von {count}',
  leave: 'Keine Lek\u00ADtionen mehr',
  back: 'Eins zurück',
  open: 'Warum, und wie es aussieht',
  first: 'Mein erstes Brot',
  said: '{word}: {means}',
};
