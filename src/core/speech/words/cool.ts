import { inTongue } from '../tongue.ts';
import { RING } from './care.ts';
import type { StageWords } from '../words.ts';

const COOL = {
  'oven.queued': {
    headline: 'Follow the oven now',
    detail: 'Loaves wait where they are until their load.',
    slab: 'To the oven',
    then: 'it says what comes next',
    spoken: 'Follow the oven now. Loaves wait where they are.',
  },
  'cool.cooling': {
    headline: 'Let the loaves cool',
    detail: 'On a rack until {time}. Do not bag them warm.',
    slab: 'They’re cool',
    then: 'then hand them over',
    spoken: '{time} is when they should be cool. Leave them on a rack.',
    care: 'Fresh loaves and pots burn: children stand back. Bag under {bagHeat}.',
  },
  'cool.handOver': {
    headline: 'Label the loaves, hand them over',
    detail: 'Name, date and what is in it. Leave warm bags open.',
    slab: 'Handed over',
    then: 'then one note',
    spoken: 'Label the loaves, then hand them over. Leave warm bags open.',
    care: 'Name every allergen; wheat and rye are not gluten-free. Selling: check your local rules.',
  },
  'cool.note': {
    headline: 'Note how it turned out',
    detail: 'One line for the next bake.',
    slab: 'It’s noted',
    then: 'and this bake is done',
    spoken: 'Note how it turned out. One line for the next bake.',
  },
  // Common practice, no source: a flat bread two fingers thick.
  'rescue.tray': {
    headline: 'Bake it flat in a tray',
    detail: 'New goal: oven to {trayHeat}. Spread it in an oiled tray, 20 to 25 minutes.',
    slab: 'Tray is out',
    then: 'then one note',
    spoken: '{trayHeat} now. Oiled tray, twenty to twenty-five minutes.',
    care: `Plain dough is fine; unsure of a filling, throw it out. ${RING}`,
  },
  done: {
    headline: 'Wash up: this bake is done',
    detail: 'It is in the log, with your note.',
    slab: 'To the start',
    then: 'plan the next one',
    spoken: 'This bake is done. It is in the log.',
  },
  ended: {
    headline: 'Clear up: this bake has ended',
    detail: 'What you did so far is in the log.',
    slab: 'To the start',
    then: 'plan the next one',
    spoken: 'This bake has ended. What you did is in the log.',
  },
} satisfies Record<string, StageWords>;

export const cool = inTongue('cool', 'cool', COOL);

/** A dense rye is cut no sooner: its crumb is still gum (seen in print: 12 to 24 h). */
export const denseCooling: StageWords = inTongue('cool', 'denseCooling', {
  ...COOL['cool.cooling'],
  detail: 'On a rack until {time}. Dense rye needs 12 to 24 hours.',
  then: 'then hand them over',
  spoken: '{time} is when they should be set. Dense rye needs twelve to twenty-four hours.',
});
