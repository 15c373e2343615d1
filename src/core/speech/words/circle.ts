import { inTongue } from '../tongue.ts';

/** The circle: who has bread, and what of it. Shown, never said. */
export const circle = inTongue('circle', 'circle', {
  title: 'Circle',
  edge: 'Those who get your bread',
  opening: 'One moment',
  more: 'More',
  newOrder: 'New order',
  newOrderThen: 'for which day?',
  days: 'The next days',
  laterDays: 'Later days',
  firstDays: 'The next days',
  /** Before there is anything to show. */
  first: 'Add your neighbours first. Their orders then show here.',
  none: 'No bread is ordered yet.',
  loaves: '{loaves}',
  /** Where it cannot be had. */
  closed: 'The circle cannot be opened',
  closedDetail: 'Nothing was changed. Open this page again.',
} as const);

/** What is told of it, without a name. */
export const circleTold = inTongue('circle', 'circleTold', {
  misread:
    '{count} of the circle cannot be read and is left out. First: {path}, expected {expected}, got {got}.',
  /** Of the file that is saved. */
  leftOut: 'The circle could not be read. The saved file holds all but it.',
  full: 'The tablet is full. Nothing was changed: make room, then press again.',
  shows: 'This page only shows the kitchen. Change it in the other one.',
  closed: 'It could not be written. Nothing was changed: press again.',
} as const);

/** Those who have bread. */
export const neighbourWords = inTongue('circle', 'neighbourWords', {
  title: 'Neighbours',
  none: 'Nobody yet. Add the first one.',
  add: 'Add one',
  nameAsk: 'Who gets your bread?',
  nameDetail: 'A first name or a mark. It stays on this tablet.',
  already: 'There is a {name} already. This one is written as {other}.',
  name: 'Name',
  gone: 'Gone',
  goneDetail: 'Nothing about them is here.',
  watch: 'Must not eat',
  /** Under a name: they have a list. */
  watches: 'mind what is in it',
  watchNone: 'nothing said',
  watchAsk: 'What {name} must not eat',
  watchDetail: 'Ask again now and then.',
  yes: 'not for them',
  all: 'all of them',
  allKinds: { gluten: 'All grains', nuts: 'All tree nuts' },
  later: 'Further on',
  first: 'From the top',
  erase: 'Erase for good',
  eraseAsk: 'Erase {name} for good?',
  eraseDetail: 'Past orders stay, without a name. There is no way back.',
  /** What goes with them. */
  eraseOrders: 'Coming orders go too: {count}. Standing orders: {n}.',
  eraseHold: 'Hold to erase',
  eraseHolding: 'Keep holding',
  eraseTwo: 'Or two taps, far apart',
  eraseFirst: 'Tap here first',
  eraseSecond: 'Then tap here',
  keep: 'Keep them',
} as const);
