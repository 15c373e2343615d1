import { inTongue } from '../tongue.ts';
import { BURN, MITTS } from './care.ts';
import type { LaneStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';

/** A loaf that went over and bakes flat, in a tray beside the pots. */
export const trayWords: Readonly<Partial<Record<LaneStage, Partial<StageWords>>>> = inTongue(
  'oven-tray',
  'trayWords',
  {
    open: {
      headline: 'Let the flat bread colour',
      care: `${MITTS} ${BURN}`,
    },
    unload: {
      headline: 'Take the flat bread out',
      detail: 'Tray down first. Then the bread to the rack.',
      spoken: 'Take the flat bread out, tray down first. Children, stand back.',
    },
  },
);
