import type * as english from '../words/note.ts';
import type { InTongue } from '../tongue.ts';

export const notes: InTongue<typeof english.notes> = [
  { value: 'good', label: 'Es war gut' },
  { value: 'under', label: 'Untergare' },
  { value: 'over', label: 'Übergare' },
  { value: 'dark', label: 'Kruste zu dunkel' },
  { value: 'pale', label: 'Kruste zu blass' },
] as const;

export const noNote: InTongue<typeof english.noNote> = {
  label: 'Keine Notiz',
  then: 'und dieses Backen ist fertig',
};
