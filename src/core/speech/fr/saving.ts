import type * as english from '../words/saving.ts';
import type { InTongue } from '../tongue.ts';

export const rehearsal: InTongue<typeof english.rehearsal> = {
  mark: 'Essai : heure rapide',
  faster: '{rate} fois plus vite',
  end: 'Finir l’essai',
  note: 'Rien ici n’est gardé au journal.',
};

export const saving: InTongue<typeof english.saving> = {
  notSaved: 'pas encore gardé',
  unsaved: '{count} pas encore gardés',
  retry: 'Réessayer',
  saved: 'gardé',
};
