/** What a day's orders are held against, and what they come to. */
export const roomPage = {
  title: 'Room left',
  headline: 'See what room is left',
  empty: 'Nobody has an order of this day yet.',
  askHours: 'Say when the oven bakes, and it counts too.',
  nothingSaid: 'Nothing is said that limits this day.',
  alt: 'What of {date} is taken. {words}',
  used: { oven: '{time} of {until}', fridge: '{count} of {of} places', bowls: '{count} of {of}' },
  unsaid: 'not said',
  name: { oven: 'Oven hours', pots: 'Pots', fridge: 'Fridge', bowls: 'Bowls' },
  full: 'full',
  over: 'too much',
  free: 'free',
  table: 'As a table',
  bars: 'As bars',
  breads: 'Bread by bread',
  loads: 'Load by load',
  hours: 'Oven hours',
  columns: {
    what: 'What',
    taken: 'Taken',
    of: 'Of',
    left: 'Left',
    state: 'State',
    bread: 'Bread',
    ordered: 'Ordered',
    more: 'Room for',
    binds: 'Ends with',
    load: 'Load',
    in: 'In',
    out: 'Out',
    cool: 'Fetch from',
  },
  noLimit: 'no limit said',
  anyMany: 'any',
  nowhere: 'No pot here takes: {name}.',
  unknown: 'Not in the Book any more: {count}. Not counted.',
} as const;

/** What the oven of a day comes to. */
export const loadsPage = {
  headline: 'Bake them in this turn',
  detail: 'Last out {until}. All cool from {time}.',
  none: 'Nothing to bake on this day yet.',
  noHours: 'Say when the oven bakes to see hours.',
  past: 'That is past the oven’s hours: they end at {until}.',
  early: 'Fetched before it is cool: {count} of these orders.',
  care: 'Hot pots and iron. A grown-up loads the oven.',
} as const;

/** Why a day does not take more, by what it has not enough of. */
export const boundWords = {
  oven: 'The oven’s hours end.',
  pots: 'No pot here takes that loaf.',
  fridge: 'The fridge has no place left.',
  bowls: 'The bowls hold no more dough.',
} as const;

/** Told at an order, before a day is full and when it is. */
export const roomWords = {
  more: '{name}: room for {loaves} more.',
  noLimit: '{name}: no limit is said.',
  none: '{name}: no room left on that day.',
  cool: 'Fetch from {time}.',
  refused: 'That day is too full',
  still: 'Still go: {loaves} of {name}.',
  goesNone: 'None of it still goes.',
  goesOn: 'With the oven on until {until} it can be fetched from {time}.',
  next: 'All of it goes on {date}.',
  nextNone: 'No bake day ahead takes all of it.',
  warm: 'Still warm at {time}. Cool from {until}.',
  setting: 'Not ready to cut at {time}. Ready from {until}.',
  openBag: 'Fetched warm, its bag stays open.',
  onDay: '{time} on {date}',
} as const;

/** When the oven of a bake day bakes, and until when orders are taken. */
export const hoursPage = {
  title: 'Oven hours',
  headline: 'Say when the oven bakes',
  detail: 'From the first loading to the last loaf out.',
  nextDay: 'It goes on past midnight.',
  from: 'First loading',
  to: 'Last loaf out',
  closes: 'Orders close',
  fromAsk: 'When is the first loading?',
  toAsk: 'When is the last loaf out?',
  closesAsk: 'How long before do orders close?',
  closesAtAsk: 'At what time of that day?',
  unsaid: 'not said',
  never: 'never',
  span: '{time}–{until}',
  closesValue: '{date}, {time}',
  sameDay: 'The same day',
  dayBefore: 'The day before',
  daysBefore: '{count} days before',
  forget: 'No set hours',
  neverClose: 'They never close',
  takeBack: 'Take that back',
  now: 'Now {time}.',
} as const;
