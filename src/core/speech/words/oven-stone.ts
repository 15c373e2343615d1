import { inTongue } from '../tongue.ts';
import { BURN, MITTS, RING, STEAM } from './care.ts';
import type { OvenStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';

const HOT_STONE = 'Stone and tray stay hot: children stay 1 m back.';

/** What the oven says otherwise where loaves bake free on a hot stone, with steam from a tray. */
export const stoneWords: Readonly<Partial<Record<OvenStage, StageWords>>> = inTongue(
  'oven-stone',
  'stoneWords',
  {
    turnOn: {
      headline: 'Heat the oven, stone and tray in',
      detail: '{potHeat}, or as hot as it goes. Empty tray below.',
      slab: 'Oven is on',
      then: 'then the stone heats up',
      spoken: '{potHeat}. Stone in, and an empty tray below it.',
      care: `Much parchment takes only {parchmentHeat}. ${RING}`,
    },
    preheating: {
      headline: 'Let the stone get hot',
      detail: 'Hot at {time}. Loaves stay where they are.',
      slab: 'It’s hot now',
      then: 'then check the first loaf',
      spoken: '{time} is when the stone is hot. Loaves stay where they are.',
      care: 'The oven is hot. Children stay 1 m back.',
    },
    before: {
      headline: 'Get ready for the hot stone',
      detail: 'One line at a time. Say how it really is.',
      slab: 'That’s done',
      then: 'then score the loaf',
      spoken: 'Get ready for the hot stone. Children, stand back.',
      care: RING,
    },
    score: {
      headline: 'Score the loaf',
      detail: 'Turn it out on a floured board. One quick cut.',
      slab: 'It’s scored',
      then: 'then onto the stone',
      spoken: 'One centimetre deep, one quick cut. Then cover the blade.',
      care: `Blade: cut away from your hand, then cover it. ${RING}`,
    },
    load: {
      headline: 'Load the stone, water in the tray',
      detail: 'Slide it on. Boiling water in the tray, door shut.',
      slab: 'It’s in',
      then: 'press when the door is shut',
      spoken: 'Slide it on, boiling water in the tray, door shut. Children, stand back.',
      care: `${STEAM} ${RING}`,
    },
    open: {
      headline: 'Let the crust colour',
      detail: 'Look at {time}. Oven at {bakeHeat}; golden, not black.',
      slab: 'Look now',
      then: 'and say what you see',
      spoken: '{time} is the next look. Golden, not black.',
      care: `${HOT_STONE} ${BURN}`,
    },
    unload: {
      headline: 'Take the loaf out',
      detail: 'From the stone straight to the rack. Door shut.',
      slab: 'It’s out',
      then: 'press when your hands are free',
      spoken: 'Take the loaf out, straight to the rack. Children, stand back.',
      care: `${MITTS} ${RING}`,
    },
    recover: {
      headline: 'Let the stone reheat',
      detail: 'Empty tray back in. Hot at {time}.',
      slab: 'It’s hot now',
      then: 'then check the next loaf',
      spoken: '{time} is when the stone is hot again. Empty tray in.',
      care: `${HOT_STONE} ${BURN}`,
    },
    turnOff: {
      headline: 'Turn the oven off',
      detail: 'Stone and tray stay inside to cool.',
      slab: 'Oven is off',
      then: 'the last load is out',
      spoken: 'Turn the oven off. Stone and tray stay inside to cool.',
      care: 'The stone stays hot for hours. Children stay 1 m back.',
    },
  },
);
