import { inTongue } from '../tongue.ts';

/** What is done with a loaf that is near its end, where others wait. */
export const doorWords = inTongue('door', 'doorWords', {
  bakeFirst: { label: 'Bake this one first', then: 'from cold, shallow cut' },
  flat: { label: 'Bake it flat', then: 'in an oiled tray, now' },
  goesLast: { label: 'Not yet', then: 'it goes last' },
} as const);

/** What the poke at the oven's door says, beside its signs the dough clock. */
export const doorBecause = inTongue('door', 'doorBecause', {
  goesLast: 'Not there yet: it goes last.',
  ready: 'Ready by its signs. Bake it now.',
  byClock: 'Ready by the clock. Bake it now.',
  coldDent: 'A cold dent alone says little. Bake it now.',
  disagree: 'Signs and clock disagree. Bake it now.',
  unsure: 'No sign says wait, so bake it now.',
  bakeFirst: 'It is near its end. Bake it before the others.',
  bakeSoon: 'It is near its end, so bake it now.',
  switchGoal: 'Gone over, by signs and clock. Far gone: bake it flat.',
} as const);
