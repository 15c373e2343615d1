import { inTongue } from '../tongue.ts';

/** Why an order is not taken, by the notice's key; each says what can be. */
export const orderRefused = inTongue('orders', 'orderRefused', {
  orderNoDay: 'There is no such day. Choose another one.',
  orderPast: 'That day is over. Choose today or a later one.',
  orderNobody: 'Nobody by that name is in the circle. Choose who it is for.',
  orderNoHour: 'There is no such time. Choose another one.',
  orderEmpty: 'No bread is on it yet. Choose one.',
  orderNoBread: 'That bread is not in the Book. Choose another one.',
  orderCount: 'That many cannot be taken. Take {least} to {most} of a bread.',
  orderWeight: 'No loaf of that weight can be taken. Choose {least} to {most}.',
} as const);

/** What is asked before an order is taken, by the notice's key. */
export const orderAsked = inTongue('orders', 'orderAsked', {
  watchNamed: '{name} has {allergens} in it. It is on their list.',
  watchOpen: '{name} may have {allergens} in it. Look at the packet.',
  watchUnknown: '{name}: not known what is in {filling}. Read the packet.',
  orderClosed: 'Orders for that day closed at {time} on {date}.',
  orderHourPast: 'That time is past already.',
  orderTwice: 'They have an order for that day already.',
} as const);

/** Bake days and one of them. */
export const orderPage = inTongue('orders', 'orderPage', {
  noneHere: 'No bread is ordered for this day yet.',
  title: 'Bake for {date}',
  titled: 'Bake {loaves} for {date}',
  totals: 'Loaves of each bread',
  orders: 'Orders',
  add: 'Add an order',
  more: 'More of this day',
  dayAsk: 'Bake on which day?',
  anyHour: 'any time',
  paid: 'paid',
  handed: 'handed over',
  nobody: 'No name',
  who: 'Who is it for?',
  whoNone: 'Nobody is in the circle yet.',
  newWho: 'Somebody new',
  lastTime: 'Last: {line}',
  what: 'What does {name} want?',
  same: 'As last time',
} as const);

/** One order. */
export const orderFace = inTongue('orders', 'orderFace', {
  title: '{name}, {date}',
  another: 'Another bread',
  fetched: 'Fetched',
  paid: 'Paid',
  yes: 'yes',
  no: 'not yet',
  off: 'Take it off',
  skip: 'Skip this day',
  end: 'End it here',
  weekly: 'Every {date}',
  scope: 'Every {date}: change',
  onlyHere: 'this day only',
  fromHere: 'from here on',
  gone: 'This order is off',
  goneDetail: 'One press brings back what was taken off.',
  hourAsk: 'Fetched at what time?',
  hourSaid: 'Set to {time}.',
  earlier: 'Half an hour earlier',
  later: 'Half an hour later',
} as const);

/** One bread of an order. */
export const orderLine = inTongue('orders', 'orderLine', {
  loaves: '{count} {name}',
  several: '{loaves} of {count} breads',
  size: '{count} of {grams}',
  sized: '{name} ({line})',
  cutShort: 'sliced',
  gone: 'a bread not in the Book',
  count: 'Loaves',
  keyIn: 'Key it in',
  countAsk: 'How many loaves?',
  whole: 'Whole',
  cut: 'Sliced',
  cutAsk: 'Whole or sliced',
  weight: 'Weight when cool',
  asPiece: 'as in the recipe',
  asPieceLong: 'As in the recipe',
  gramsAsk: 'Weight when cool?',
  only: 'Only {range}',
  now: 'Now {value}',
} as const);

/** Before an order is taken. */
export const orderAsk = inTongue('orders', 'orderAsk', {
  look: 'Look at this first',
  refused: 'It cannot be taken',
  yes: 'Take it anyway',
  no: 'No, leave it',
  addTo: 'Add to it',
  second: 'A second one',
  choose: 'Choose again',
  care: 'Ask the neighbour too. When in doubt, leave it.',
} as const);

/** Orders that come every week. */
export const standingWords = inTongue('orders', 'standingWords', {
  title: 'Standing orders',
  none: 'None yet. Open an order, then press “Every …” beside it.',
  told: 'Every {date}, {line}',
  weekday: 'On which weekday?',
  weekdayShort: 'Weekday',
  from: 'From',
  until: 'Until',
  untilAsk: 'Until which day?',
  fromAsk: 'From which day?',
  on: 'no end',
  what: 'What and when',
  left: 'Left out',
  later: 'Later days',
  sooner: 'Sooner days',
  begins: 'from {date}',
  ends: 'until {date}',
} as const);
