import { sounding } from '../../../machines/attention/attention.ts';
import { advance } from '../../../machines/kitchen/advance.ts';
import { apply } from '../../../machines/kitchen/apply.ts';
import { JOINABLE } from '../../../machines/kitchen/deliver.ts';
import { deadlineOf, wanted } from '../../../machines/kitchen/dues.ts';
import { judgeFact } from '../../../machines/kitchen/judge-fact.ts';
import { emptyKitchen, MACHINE_VERSION, MACHINES } from '../../../machines/kitchen/kitchen.ts';
import { kitchenAt, positionOf } from '../../../machines/kitchen/position.ts';
import { machineOf } from '../../../machines/kitchen/machine-of.ts';
import { replay } from '../../../machines/kitchen/replay.ts';
import { callsOf } from '../../../machines/kitchen/settle.ts';
import { metaOf, stageOf } from '../../../machines/kitchen/stage-of.ts';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';

/** Everything a test folds a log with, in one hand: so that an altered fold can be put in its place. */
export const FOLD = {
  advance,
  apply,
  callsOf,
  deadlineOf,
  emptyKitchen,
  JOINABLE,
  judgeFact,
  kitchenAt,
  machineOf,
  MACHINES,
  MACHINE_VERSION,
  metaOf,
  positionOf,
  replay,
  sounding,
  stageOf,
  takeBackTarget,
  wanted,
};

export type Fold = typeof FOLD;
