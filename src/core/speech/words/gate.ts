import { inTongue } from '../tongue.ts';
import type { Hazard } from '../../records/stage.ts';

/** Hazards that stand behind a gate. Voice never opens one. */
export type Gated = Extract<Hazard, 'hot' | 'blade' | 'machine'>;

/** Words of the gate. "Stand back" belongs to it alone: no control says it. */
export const gate = inTongue('gate', 'gate', {
  grownUp: 'A grown-up does this',
  standBack: 'Stand back',
  ring: 'Children stay 1 m away.',
  hold: 'Hold to open',
  holding: 'Keep holding',
  /** For those who cannot hold: two taps, far apart. */
  twoTaps: 'Or tap twice',
  first: 'First here',
  second: 'then here',
  spoken: 'A grown-up does this. Children, stand back.',
  bothHands: 'Both hands free? Children, stand back.',
} as const);

export const gateHazards: Readonly<Record<Gated, string>> = inTongue('gate', 'gateHazards', {
  hot: 'Hot iron and steam',
  blade: 'Sharp blade',
  machine: 'Hot oven',
});

/**
 * A task of the child's own meanwhile, away from what is hot, sharp or raw; for a child of 4 to 12,
 * also where the dough is raw, since under-fives stay off it.
 */
export const childTasks: Readonly<Record<Hazard, readonly string[]>> = inTongue(
  'gate',
  'childTasks',
  {
    none: ['Draw how the dough looks now.', 'Read the big number out loud.'],
    hot: [
      'Sit on the far chair. Count to 20.',
      'Draw the loaf. How dark will it be?',
      'Call out when the door is shut.',
    ],
    blade: ['Draw the cut you want to see.', 'Sit down. Count the dry baskets.'],
    machine: ['Sit down. Watch for the oven light.', 'Draw the oven, its door shut.'],
    heavy: ['Hold the door wide.', 'Clear a spot on the table.'],
    raw: ['Press the big button for the baker.', 'Read out what the scale shows.'],
  },
);
