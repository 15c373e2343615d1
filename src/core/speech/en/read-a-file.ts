/** Taking in a log that was saved as a file. */
export const readAFile = {
  title: 'Read a saved file',
  detail: 'It brings back the log and what the kitchen holds.',
  choose: 'Choose the file',
  found: 'Bakes in it: {count}. Last entry: {date}.',
  none: 'It holds no bake, only the kitchen.',
  /** Where it holds some of the circle. */
  circle: 'Of its circle comes in what is not here.',
  hold: 'Hold to take it in',
  holding: 'Taking it in',
  then: 'all of it, in one go',
  newer: 'Line {line} is from a newer version. Load that version first.',
  unreadable:
    'Line {line} cannot be read at {path}: {expected} was wanted, {got} came. Nothing was taken in.',
  another: 'This kitchen has a log of its own. Read the file in an empty one.',
  differs: 'Its steps do not agree at row {seq}. Nothing was taken in.',
  failed: 'It could not be written. Make room on the tablet, then try again.',
} as const;
