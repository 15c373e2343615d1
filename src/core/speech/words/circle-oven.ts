import { inTongue } from '../tongue.ts';

/** What room a day has left. */
export const roomPage = inTongue('circle-oven', 'roomPage', {
  title: 'Room left',
  headline: 'See room left on {date}',
  empty: 'Nobody has ordered for this day yet.',
  askHours: 'Say when the oven bakes, and it counts too.',
  alt: 'What of {date} is taken. {words}',
  name: { oven: 'Oven', fridge: 'Fridge', bowls: 'Bowls' },
  used: {
    oven: '{time} of {until}',
    fridge: '{count} of {of} places',
    bowls: '{count} of {of} bowls',
  },
  unsaid: {
    oven: '{time}, hours not said',
    fridge: '{count}, places not said',
    bowls: '{count}, bowls not said',
  },
  state: { free: 'free', full: 'full', over: 'too much' },
  line: '{name}: {value}, {words}.',
  lineUnsaid: '{name}: {value}.',
  table: 'As a table',
  bars: 'As bars',
  columns: { what: 'What', taken: 'Taken', of: 'Of', left: 'Left', state: 'State' },
  nowhere: 'No pot here takes: {name}.',
  unknown: 'Not counted, no longer in the Book: {count} of the loaves.',
} as const);

/** How many more of each bread a day takes. */
export const breadsPage = inTongue('circle-oven', 'breadsPage', {
  press: 'Bread by bread',
  headline: 'See what goes on {date}',
  columns: { bread: 'Bread', ordered: 'Ordered', more: 'Room for', binds: 'Limit' },
  noLimit: 'no limit',
  binds: { oven: 'the oven', pots: 'no pot', fridge: 'the fridge', bowls: 'the bowls' },
} as const);

/** The oven of a day, load by load. */
export const loadsPage = inTongue('circle-oven', 'loadsPage', {
  press: 'Load by load',
  headline: 'See the loads of {date}',
  detail: 'Last out {until}. All can be fetched from {time}.',
  none: 'Nothing to bake on this day yet.',
  noHours: '{count} in {time}. Say when the oven bakes to see hours.',
  columns: { in: 'In', out: 'Out', what: 'What', cool: 'Cool from' },
  load: '{count} {name}',
  size: '{name}, {grams}',
  more: '{count} loads more.',
  past: 'But the oven’s hours end at {until}.',
  early: 'Fetched before it is cool: {count} of the orders.',
} as const);

/** Why a day does not take more, by what it has not enough of. */
export const boundWords = inTongue('circle-oven', 'boundWords', {
  oven: 'The oven’s hours are too short.',
  pots: 'No pot here takes that loaf.',
  fridge: 'The fridge has too few places.',
  bowls: 'The bowls hold too little dough.',
} as const);

/** Told at an order, before a day is full and when it is. */
export const roomWords = inTongue('circle-oven', 'roomWords', {
  more: '{name}: room for {loaves} more.',
  noLimit: '{name}: no limit.',
  none: '{name}: no room left.',
  full: 'No room left.',
  still: 'There is room for {loaves} of {name}.',
  goesNone: 'There is room for none of it.',
  goesOn: 'With the oven on until {until} it can be fetched from {time}.',
  next: 'All of it fits on {date}.',
  nextNone: 'No bake day ahead takes all of it.',
  warm: 'Still warm at {time}. Cool from {until}.',
  setting: 'Not ready to cut at {time}. Ready from {until}.',
  openBag: 'Fetched warm, its bag stays open.',
  onDay: '{time} on {date}',
} as const);

/** When the oven of a bake day bakes, and until when orders are taken. */
export const hoursPage = inTongue('circle-oven', 'hoursPage', {
  title: 'Oven hours',
  headline: 'Say when the oven bakes',
  nextDay: 'It goes on past midnight.',
  from: 'First loading',
  to: 'Last loaf out',
  closes: 'Orders close',
  fromAsk: 'When is the first loading?',
  toAsk: 'When is the last loaf out?',
  closesAsk: 'How long before do orders close?',
  closesAtAsk: 'At what time of that day?',
  never: 'never',
  closesValue: '{date}, {time}',
  sameDay: 'same day',
  dayBefore: 'day before',
  daysBefore: '{count} days before',
  forget: 'No set hours',
  neverClose: 'They never close',
  now: 'Set to {time}.',
} as const);
