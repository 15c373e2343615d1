import type * as english from '../words/sheet.ts';
import type { InTongue } from '../tongue.ts';

export const sheet: InTongue<typeof english.sheet> = {
  title: 'Streu Feld für Feld',
  edge: '3 cm bleiben frei',
  share: '{got} {name}',
  between: '{least} oder {most} {name}',
  each: 'In jedes von {count} Feldern:',
  one: 'Alles in ein Feld:',
  alt: 'Ein Teigblatt mit {count} Feldern, 3 cm Rand frei. In jedem Feld: {name}.',
};
