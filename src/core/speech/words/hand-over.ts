import { inTongue } from '../tongue.ts';

/** Bread that is fetched: the list, its paper and a text to copy. Shown, never said. */
export const handOver = inTongue('hand-over', 'handOver', {
  open: 'Hand over',
  title: 'Hand over the bread',
  list: 'The list',
  none: 'Nobody has ordered for this day.',
  toCome: 'Hand over: {count} to come',
  allGone: 'All is handed over',
  loaf: '1 loaf',
  loaves: '{count} loaves',
  any: 'any time',
  nobody: 'No name',
  unknownBread: 'a bread no longer in the Book',
  paid: 'Paid',
  toPay: 'To pay: {value}.',
  handed: 'Gone {time}',
  /** For ears: whose payment it is. */
  payment: 'Paid: {name}',
  watch: 'Must not eat: {allergens}.',
  holds: '{bread} has {allergens}.',
  unread: 'Not all packets are read.',
  warm: 'Still warm: leave the bag open.',
  coolAt: 'Cool at {time}.',
  stillHere: 'Still to come',
  everyone: 'Show all',
} as const);

/** Loaves by bread. */
export const handTotals = inTongue('hand-over', 'handTotals', {
  open: 'All loaves',
  title: 'Count the loaves',
  bread: 'Bread',
  all: 'In all',
  cut: 'To slice',
  handed: 'Handed',
  left: 'Still here',
} as const);

/** The list on paper. */
export const handPrint = inTongue('hand-over', 'handPrint', {
  title: 'Print the list',
  detail: 'By hour, with a box to tick for each.',
  names: 'Names are on it.',
  print: 'Print it',
  then: 'A4 or Letter',
  list: 'Pick-up list',
  when: 'When',
  who: 'Who',
  what: 'What',
  handed: 'Handed',
  paid: 'Paid',
  private: 'Names are on it. Let no one keep it.',
  caution: 'Read the packets for what is in a bread: labels change.',
  warm: 'A warm loaf’s bag stays open until it is cool.',
  made: 'Printed {time}. Where they differ, go by the tablet.',
} as const);

/** The page of a text to copy. */
export const handMessage = inTongue('hand-over', 'handMessage', {
  open: 'Tell them',
  another: 'For another',
  title: 'Copy a message',
  ask: 'For whom is it?',
  detail: 'This tablet sends nothing.',
  everyone: 'For all',
  names: 'Names are in it. This tablet sends nothing.',
  copy: 'Copy it',
  then: 'then paste it',
  copied: 'It is copied. Paste it where you like.',
  notCopied: 'It could not be copied. Mark the text by hand.',
} as const);

/** What such a text says. */
export const message = inTongue('hand-over', 'message', {
  at: 'Your bread on {date}, at {time}:',
  anyTime: 'Your bread on {date}, at any time:',
  all: 'Bread on {date}:',
  hour: 'At {time}',
  any: 'At any time',
  line: '{count} × {name}',
  cut: 'sliced',
  whose: '{name}: {lines}',
  nobody: 'No name',
  toPay: 'To pay: {value}.',
  warm: 'If the loaf is warm, leave its bag open until it is cool.',
} as const);
