/** Touches on the tape: as short as they can be told. {count} is which of several. */
export const tapeNames = {
  'feed levain': 'Feed',
  mix: 'Mix',
  'salt and water': 'Salt',
  fold: 'Fold {count}',
  lamination: 'Sheet',
  divide: 'Divide',
  shape: 'Shape',
  spoon: 'Into tin',
  'to fridge': 'Fridge',
  'oven on': 'Oven on',
  load: 'Load {count}',
  ready: 'Ready',
} as const;

/** Waits on the tape, a line each. */
export const tapeNotes = {
  levain: ['{length}, ripe', '{time} – {until}'],
  bulk: ['bulk, ready', '{time} – {until}'],
  proof: ['proof, ready', '{time} – {until}'],
  cold: ['{length} cold'],
  cool: ['{length} to cool'],
  away: '{name} till {time}',
  lid: 'lid {time}, out {until}',
  vent: 'vent {time}, out {until}',
  out: 'out {time}',
} as const;

/** The pages of the Day. */
export const dayPage = {
  title: 'Plan a day',
  edge: 'The hours of a day',
  ready: 'Ready {date} {time}',
  readyAbout: 'Ready about {date} {time}',
  alt: 'The day on a tape. {count} times for your hands, ready {date} {time}.',
} as const;
