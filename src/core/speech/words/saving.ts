import { inTongue } from '../tongue.ts';

export const rehearsal = inTongue('saving', 'rehearsal', {
  mark: 'Rehearsal: fast clock',
  faster: '{rate} times as fast',
  end: 'End the rehearsal',
  note: 'Nothing here is kept in the log.',
} as const);

/** Whether a press is on the disk. */
export const saving = inTongue('saving', 'saving', {
  notSaved: 'not saved yet',
  unsaved: '{count} not saved yet',
  retry: 'Save again',
  saved: 'saved',
} as const);
