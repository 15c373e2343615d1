import { inTongue } from '../tongue.ts';
import type { LaneStage } from '../../records/stage.ts';

/** A minute before a hot call, behind the question whether both hands are free. */
export const headsUp = inTongue('heads-up', 'headsUp', {
  lidded: 'In one minute the lid comes off {pot}.',
  steaming: 'In one minute the steam goes out.',
} as const satisfies Partial<Record<LaneStage, string>>);
