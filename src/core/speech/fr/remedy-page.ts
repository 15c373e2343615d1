import type * as english from '../words/remedy-page.ts';
import type { InTongue } from '../tongue.ts';

export const remedyPage: InTongue<typeof english.remedyPage> = {
  open: 'Quelque chose ne va pas',
  ask: 'Que voyez-vous ?',
  detail: 'Choisissez ce qui ressemble le plus.',
  now: 'Maintenant',
  next: 'La prochaine fois',
  nothingNow: 'Rien à faire maintenant.',
  others: 'Autres signes',
};
