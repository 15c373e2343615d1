import { inTongue } from '../tongue.ts';

/** Said as the last item of a checklist is answered, before what comes next. */
const listComplete = 'List complete.';

/**
 * What to do about an answer that is not as it should be, by list, item and value. Answers that
 * leave their item open (core/records/lists) are asked again once it is mended.
 */
type Heed = Readonly<Record<string, Readonly<Record<string, string>>>>;

export const heed: Readonly<Record<'beforeStart' | 'beforeOven' | 'levainSigns', Heed>> = inTongue(
  'heed',
  'heed',
  {
    beforeStart: {
      starter: { fridge: 'It wakes slowly from the cold. A second feed helps.' },
      flour: { short: 'Get more flour, or bake fewer loaves.' },
      filling: {
        toPrepare: 'Toast, drain and dry it while the levain rises.',
        toastedDry: 'No fresh cheese, meat, cooked food or garlic in oil.',
      },
      pot: {
        metalKnob: 'Does its maker allow cold dough in the hot pot? Check first.',
        plasticKnob: 'Take the knob off before the pot heats.',
        clayOrGlass: 'Cold dough can crack it. Use bare iron, or a tin.',
      },
      scale: {
        notZero: 'Press zero with the empty bowl on it.',
        noScale: 'Spoons and cups are not exact. Borrow a scale if you can.',
      },
      hands: { notYet: 'Wash your hands, then answer.' },
      fridge: {
        full: 'Clear a shelf before the loaves are shaped.',
        warm: 'Turn it colder now, and check it tonight.',
      },
    },
    beforeOven: {
      child: {
        close: 'Give the child a task 1 m away. Then answer.',
        withGrownUp: 'Both stay 1 m back, please.',
      },
      floor: {
        cluttered: 'Clear the floor by the oven. Then answer.',
        wet: 'Dry the floor by the oven. Then answer.',
      },
      mitts: {
        wet: 'Get dry mitts: a wet one burns. Then answer.',
        missing: 'Find two dry mitts. Then answer.',
      },
      landing: { notYet: 'Clear two spots that can take the heat.' },
      parchment: {
        unknown: 'Leave it out, or find the heat on its box.',
        rated: 'Cut it close: long edges scorch.',
      },
      knob: {
        plastic: 'Oven off. Take the knob off once the pot is cold.',
        plasticOff: 'Lift the lid with a mitt under its edge.',
      },
      blade: { notYet: 'Cover the blade and lay it within reach. Then answer.' },
    },
    levainSigns: {
      colour: { pinkOrMould: 'Throw it all away. Do not bake with it.' },
    },
  },
);

/** Of these, what is said by itself. */
export const heedLines = inTongue('heed', 'heedLines', {
  listComplete,
});
