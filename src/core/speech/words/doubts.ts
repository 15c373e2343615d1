import { inTongue } from '../tongue.ts';
import type { Doubt } from '../../clock/doubt.ts';

/** Why a window is in doubt, in one sentence; in the fridge no minute is foretold anyway. */
export const doubts: Readonly<Record<Exclude<Doubt, 'coldProof'>, string>> = inTongue(
  'doubts',
  'doubts',
  {
    kitchenUnknown: 'Nobody said how warm it is here.',
    kitchenCold: 'So cold that this is a rough guess.',
    kitchenHot: 'So hot that this is a rough guess.',
    tooCold: 'Too cold to say when: warm it.',
    above28: 'Doughs this warm differ: look early.',
    pff: 'Its share of levain makes this a rough guess.',
    salt: 'Its salt makes this a rough guess.',
    rye: 'So much rye: this is a rough guess.',
    hydration: 'A dough this stiff or wet: a rough guess.',
    rise: 'A rise this high: a rough guess.',
    oddReading: 'It rests on an odd reading: a rough guess.',
    laterThanModel: 'Longer than foreseen: trust your eyes.',
  },
);

/** What a warm place would make of a sluggish dough. */
export const warmPlace = 'In a warm place, {celsius}: ready about {time}.';

/** Of cold loaves whose whole window lies before their next look. */
const readyByThen = 'They are likely ready by then.';

/** Of these, what is said by itself. */
export const doubtsLines = inTongue('doubts', 'doubtsLines', {
  warmPlace,
  readyByThen,
});
