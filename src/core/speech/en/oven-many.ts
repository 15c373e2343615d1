import type { Vessel } from '../../formula/formula.ts';
import type { OvenStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';

type Many = Readonly<Partial<Record<OvenStage, Partial<StageWords>>>>;

const OUT = { headline: 'Take the loaves out', slab: 'All are out' } as const;
const SCORED = { headline: 'Score the loaves', slab: 'All are scored' } as const;

/** What a step of the oven says otherwise where more than one loaf goes in, or comes out, at once. */
export const manyWords: Readonly<Record<Vessel, Many>> = {
  pot: {
    score: {
      ...SCORED,
      detail: 'Turn each out. One quick cut, 1 cm deep.',
      then: 'then into the pots',
    },
    load: {
      headline: 'Load the pots, lids on',
      detail: 'One by one: lid on, door shut. Oven to {bakeHeat}.',
      slab: 'All are in',
      spoken: 'Lower each in, lid on, door shut. Children, stand back.',
    },
    lidded: {
      headline: 'Leave the lids on',
      detail: 'Lids off at {time}. Have dry mitts ready.',
      slab: 'Lids are off',
      then: 'if they came off early',
      spoken: '{time} is when the lids come off. Have dry mitts ready.',
    },
    lift: {
      headline: 'Lift the lids off',
      slab: 'Lids are off',
      then: 'press when all are down',
      spoken: 'Lift each lid off, away from you. Children, stand back.',
    },
    unload: {
      ...OUT,
      detail: 'One by one: pot down, loaf to the rack.',
      spoken: 'Take the loaves out, one pot at a time. Children, stand back.',
    },
  },
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
};
