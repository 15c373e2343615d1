import { inTongue } from '../tongue.ts';

/** Taking in what was saved as a file. */
export const readAFile = inTongue('read-a-file', 'readAFile', {
  title: 'Read a saved file',
  detail: 'You see what it holds first. Then hold to take it in.',
  choose: 'Choose the file',
  /** What will happen, told before anything is written. */
  all: 'All of it comes in',
  goesOn: 'It goes on from here',
  beside: 'A log of another tablet',
  already: 'It is all here already',
  found: 'Bakes in it: {count}. Last entry: {date}.',
  none: 'It holds no bake, only the kitchen.',
  comes: 'Bakes that come in: {count}. Last entry: {date}.',
  besideYours: 'Bakes that come beside yours: {count}. Yours stay.',
  nothing: 'No bake in it is new. The log does not change.',
  /** Where it holds what is kept beside the log. */
  circle: 'From its circle, what is not here yet comes in.',
  keepsakes: 'From its notes and photos, what is not here yet comes in.',
  both: 'From its circle, notes and photos, what is not here yet comes in.',
  hold: 'Hold to take it in',
  holding: 'Taking it in',
  then: 'all of it, in one go',
  newer: 'Line {line} is from a newer version. Load that version first.',
  unreadable:
    'Line {line} cannot be read at {path}: {expected} was wanted, {got} came. Nothing was taken in.',
  cut: 'The file is cut off: {got} of {expected} lines came. Nothing was taken in.',
  changed: 'The file was changed since it was saved. Nothing was taken in.',
  clash: 'Its row {seq} differs from the same row here. Nothing was taken in.',
  differs: 'Its steps do not agree at row {seq}. Nothing was taken in.',
  failed: 'It could not be written. Make room on the tablet, then try again.',
  meanwhile: 'Something was noted here meanwhile. Choose the file once more.',
  closed: 'What is here cannot be read just now. Choose the file once more.',
  /** A log of another tablet that lies here. */
  otherLeftOut:
    'A log of another tablet is left out. Its row {seq} cannot be read at {path}: {expected} was wanted, {got} came.',
} as const);
