import { inTongue } from '../tongue.ts';
import type { LaneStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';
import { BURN, HOT_IRON, RING } from './care.ts';

const HOT_RACK = 'Hot rack: dry mitts, both hands, face back.';

/** A loaf that left its pot and finishes on the bare rack. */
export const rackWords: Readonly<Partial<Record<LaneStage, Partial<StageWords>>>> = inTongue(
  'oven-rack',
  'rackWords',
  {
    open: {
      headline: 'Let it finish on the rack',
      detail: 'No pot any more. Look at {time}.',
      spoken: '{time} is the next look. It finishes on the bare rack.',
      care: `${HOT_IRON} ${BURN}`,
    },
    judge: {
      care: `${HOT_RACK} ${RING}`,
    },
    unload: {
      detail: 'From the bare rack to the cooling rack. Door shut.',
      spoken: 'Take the loaf off the hot rack. Children, stand back.',
      care: `${HOT_RACK} ${RING}`,
    },
  },
);
