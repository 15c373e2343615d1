import { inTongue } from '../tongue.ts';
import { BURN, MITTS, RING } from './care.ts';
import type { OvenStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';

const HOT_TIN = 'The tin is hot iron now: dry mitts, children 1 m back.';

/** What the oven says otherwise where loaves bake in an open tin: no lid, no steam. */
export const tinWords: Readonly<Partial<Record<OvenStage, StageWords>>> = inTongue(
  'oven-tin',
  'tinWords',
  {
    turnOn: {
      headline: 'Heat the oven, rack low',
      detail: '{bakeHeat}. The tins stay out till they are full.',
      slab: 'Oven is on',
      then: 'then it heats up',
      spoken: '{bakeHeat}, rack low. The tins stay out.',
      care: RING,
    },
    preheating: {
      headline: 'Let the oven get hot',
      detail: 'Hot at {time}. Loaves stay covered.',
      slab: 'It’s hot now',
      then: 'then check the first loaf',
      spoken: '{time} is when the oven is hot. Loaves stay covered.',
      care: 'The oven is hot. Children stay 1 m back.',
    },
    before: {
      headline: 'Get ready for the oven',
      detail: 'One line at a time. Say how it really is.',
      slab: 'That’s done',
      then: 'then score the loaf',
      spoken: 'Get ready for the oven. Children, stand back.',
      care: RING,
    },
    score: {
      headline: 'Score the loaf, or leave it',
      detail: 'One long cut. A rye loaf cracks by itself.',
      slab: 'Scored or left',
      then: 'then into the oven',
      spoken: 'One long cut, or none for rye. Then cover the blade.',
      care: `Blade: cut away from your hand, then cover it. ${RING}`,
    },
    load: {
      headline: 'Load the oven with the tins',
      detail: 'Low rack, a gap between tins. Door shut.',
      slab: 'It’s in',
      then: 'press when the door is shut',
      spoken: 'Low rack, a gap between tins, door shut. Children, stand back.',
      care: `${MITTS} ${RING}`,
    },
    open: {
      headline: 'Let the crust colour',
      detail: 'Look at {time}. Oven at {bakeHeat}; golden, not black.',
      slab: 'Look now',
      then: 'and say what you see',
      spoken: '{time} is the next look. Golden, not black.',
      care: `${HOT_TIN} ${BURN}`,
    },
    judge: {
      headline: 'Look at the crust',
      detail: 'Tip one out in dry mitts. Look at its sides.',
      slab: 'I’ve looked',
      then: 'then choose what to do',
      spoken: 'Look at the crust and the sides. Children, stand back.',
      care: `${MITTS} ${RING}`,
    },
    unload: {
      headline: 'Take the loaf out',
      detail: 'Tip it out of its tin, onto the rack. Door shut.',
      slab: 'It’s out',
      then: 'press when your hands are free',
      spoken: 'Take the loaf out, tip it onto the rack. Children, stand back.',
      care: `${MITTS} ${RING}`,
    },
    recover: {
      headline: 'Let the oven reheat',
      detail: 'Door shut. Hot at {time}.',
      slab: 'It’s hot now',
      then: 'then check the next loaf',
      spoken: '{time} is when the oven is hot again. Door shut.',
      care: `${HOT_TIN} ${BURN}`,
    },
    turnOff: {
      headline: 'Turn the oven off',
      detail: 'The empty tins cool on the stove, out of reach.',
      slab: 'Oven is off',
      then: 'the last load is out',
      spoken: 'Turn the oven off. The tins cool out of reach.',
      care: 'The tins stay hot a while. Children stay 1 m back.',
    },
  },
);
