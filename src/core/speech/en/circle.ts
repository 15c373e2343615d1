/** The circle: who has bread, and what of it. Shown, never said. */
export const circle = {
  title: 'Circle',
  edge: 'Those who have bread of you',
  opening: 'One moment',
  more: 'More',
  /** Where it cannot be had. */
  closed: 'The circle cannot be opened',
  closedDetail: 'Nothing of it was changed. Open this page once more.',
} as const;

/** What is told of it, without a name. */
export const circleTold = {
  misread:
    '{count} of the circle cannot be read and is left out. First: {path}, expected {expected}, got {got}.',
  full: 'The tablet is full. Nothing was changed: make room, then press again.',
  closed: 'It could not be written. Nothing was changed: press again.',
} as const;

/** Those who have bread. */
export const neighbourWords = {
  title: 'Neighbours',
  none: 'Nobody yet. Add the first one.',
  add: 'Add one',
  nameAsk: 'Who has bread of you?',
  nameDetail: 'A first name or a mark. It stays on this tablet.',
} as const;
