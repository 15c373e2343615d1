import { inTongue } from '../tongue.ts';

/** Touches of a plan by their name; {count} is which of several. */
export const planTouches = inTongue('plan', 'planTouches', {
  'feed levain': 'Feed the levain',
  mix: 'Mix flour and water',
  'salt and water': 'Work in salt and water',
  fold: 'Fold {count}',
  lamination: 'Sheet fold with the filling',
  divide: 'Divide',
  shape: 'Shape',
  spoon: 'Spoon into the tin',
  'to fridge': 'Into the fridge',
  'oven on': 'Oven on',
  load: 'Load {count}',
  'lid lift': 'Lids off, load {count}',
  vent: 'Let the steam out, load {count}',
  unload: 'Out of the oven, load {count}',
} as const);

/** What a wait is, by the touch before it. */
export const planWaits = inTongue('plan', 'planWaits', {
  mix: 'rest',
  'salt and water': 'bulk rise',
  divide: 'bench rest',
  shape: 'proof',
  spoon: 'proof',
  'to fridge': 'time in the fridge',
  'oven on': 'heating',
} as const);

/** Beside a touch, and in a calendar. {time} has its clock, {length} its unit. */
export const planSlack = inTongue('plan', 'planSlack', {
  fine: 'Fine until {time}.',
  last: 'Not after {time}.',
} as const);

/** Where nothing fits: each of these alone would do. */
export const planChanges = inTongue('plan', 'planChanges', {
  title: 'Nothing fits for {time}.',
  titleFrom: 'Nothing fits from {time} on.',
  cannot: 'This cannot be planned',
  anyOne: 'Any one of these would do:',
  together: 'Only these together would do:',
  one: 'This would do:',
  none: 'No small change would do.',
  because: 'In the way: {name}.',
  planFrom: 'too little time is left',
  blockedEnd: '{name} only until {time}, {length} less.',
  blockedStart: '{name} only from {time}, {length} later.',
  due: '{bake}: ready {time}, {length} later.',
  start: '{bake}: begin {time}, {length} later.',
  longer: '{bake}: {length} more {part}. The bread may suffer.',
  shorter: '{bake}: {length} less {part}. The bread may suffer.',
  hotOven: '{bake}: keep the oven hot {length} longer.',
  fewerLoads: '{bake}: {count} loads only. More pots, or fewer loaves.',
  oneLoad: '{bake}: one load only. More pots, or fewer loaves.',
  dropTouch: '{bake}: leave out {touch}.',
  unpin: '{bake}: let “{touch}” move from {time}.',
  ovenTimer: '{bake}: let the oven’s timer turn it on.',
} as const);

/** A filling that spoils and has no plan, before anything is mixed; then what would do. */
export const planFilling = inTongue('plan', 'planFilling', {
  perishableRetarded: '{filling} spoils in a long cold rise.',
  perishableLaminated: '{filling} spoils in the bulk rise.',
  perishableLoads: '{filling} must be in the oven in {length}. The last load would be late.',
  perishableSlow: '{filling} must be in the oven in {length}. The proof takes longer.',
  leaveOut: 'Leave it out.',
  sameDay: 'Bake on the same day.',
  atShaping: 'Add it cold, at the final shape.',
  oneLoad: 'Bake it in one load.',
  coolerKitchen: 'Bake on a cooler day.',
} as const);
