import type * as english from '../words/note.ts';
import type { InTongue } from '../tongue.ts';

export const notes: InTongue<typeof english.notes> = [
  { value: 'good', label: 'C’était bon' },
  { value: 'under', label: 'Manque d’apprêt' },
  { value: 'over', label: 'Trop poussé' },
  { value: 'dark', label: 'Croûte trop foncée' },
  { value: 'pale', label: 'Croûte trop pâle' },
];

export const noNote: InTongue<typeof english.noNote> = {
  label: 'Pas de note',
  then: 'et cette fournée est finie',
};
