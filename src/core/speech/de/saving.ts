import type * as english from '../words/saving.ts';
import type { InTongue } from '../tongue.ts';

export const rehearsal: InTongue<typeof english.rehearsal> = {
  mark: 'Probe: schnelle Uhr',
  faster: '{rate}-mal so schnell',
  end: 'Probe beenden',
  note: 'Nichts hier kommt ins Tagebuch.',
};
export const saving: InTongue<typeof english.saving> = {
  notSaved: 'noch nicht gespeichert',
  unsaved: '{count} noch nicht gespeichert',
  retry: 'Noch mal speichern',
  saved: 'gespeichert',
};
