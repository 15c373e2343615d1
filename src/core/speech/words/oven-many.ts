import { inTongue } from '../tongue.ts';
import type { Vessel } from '../../formula/formula.ts';
import type { OvenStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';

type Many = Readonly<Partial<Record<OvenStage, Partial<StageWords>>>>;

const OUT = { headline: 'Take the loaves out', slab: 'All are out' } as const;
const SCORED = { headline: 'Score the loaves', slab: 'All are scored' } as const;

/** What a step of the oven says otherwise where more than one loaf goes in, or comes out, at once. */
export const manyWords: Readonly<Record<Vessel, Many>> = inTongue('oven-many', 'manyWords', {
  // Each pot is loaded and emptied by itself; they heat and cool together (`potsWords`).
  pot: {},
  stone: {
    score: { ...SCORED, detail: 'Turn each out on a floured board. One quick cut.' },
    load: {
      detail: 'Slide them on. Boiling water in the tray, door shut.',
      slab: 'All are in',
      spoken: 'Slide them on, boiling water in the tray, door shut. Children, stand back.',
    },
    unload: {
      ...OUT,
      detail: 'All from the stone straight to the rack. Door shut.',
      spoken: 'Take the loaves out, straight to the rack. Children, stand back.',
    },
  },
  tin: {
    score: {
      headline: 'Score the loaves, or leave them',
      detail: 'One long cut each. Rye loaves crack by themselves.',
    },
    load: { slab: 'All are in' },
    unload: {
      ...OUT,
      detail: 'Tip each out of its tin, onto the rack. Door shut.',
      spoken: 'Take the loaves out, tip each onto the rack. Children, stand back.',
    },
  },
});

/** What heats and cools with several pots in it. */
export const potsWords: Readonly<Partial<Record<OvenStage, Partial<StageWords>>>> = inTongue(
  'oven-many',
  'potsWords',
  {
    turnOn: {
      headline: 'Heat the oven, pots and lids in',
      then: 'then the pots heat up',
      spoken: '{potHeat}. All pots and lids in.',
    },
    preheating: {
      headline: 'Let the pots get hot',
      spoken: '{time} is when the pots are hot. Loaves stay where they are.',
    },
    turnOff: {
      detail: 'The pots stay inside to cool.',
      spoken: 'Turn the oven off. The pots stay inside to cool.',
    },
  },
);
