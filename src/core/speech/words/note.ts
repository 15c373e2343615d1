import { inTongue } from '../tongue.ts';

/** Notes that one press leaves for the next bake; the baker's own words come in the log. */
export const notes = inTongue('note', 'notes', [
  { value: 'good', label: 'It was good' },
  { value: 'under', label: 'It was under' },
  { value: 'over', label: 'It was over' },
  { value: 'dark', label: 'Crust too dark' },
  { value: 'pale', label: 'Crust too pale' },
] as const);

/** What the log keeps of a note. */
export type NoteValue = (typeof notes)[number]['value'];

export const noNote = inTongue('note', 'noNote', {
  label: 'No note',
  then: 'and this bake is done',
} as const);
