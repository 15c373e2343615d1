import { inTongue } from '../tongue.ts';
import type { PotName } from '../../kitchen/pots.ts';
import type { BakeStage, OvenStage } from '../../records/stage.ts';

/** Short names of the steps: on the ruled edge, in calls, on the return card and beside other bakes. */
export const bakeNames: Readonly<Record<BakeStage, string>> = inTongue('names', 'bakeNames', {
  'read.plan': 'Read through',
  'read.list': 'Checklist',
  'levain.feed': 'Feed',
  'levain.ripening': 'Levain rises',
  'levain.look': 'Look at the levain',
  'levain.ripe': 'Keep starter back',
  'mix.weigh': 'Weigh',
  'mix.first': 'First mix',
  'mix.rest': 'Dough rests',
  'mix.salt': 'Salt',
  'mix.work': 'Work it in',
  'mix.temperature': 'Dough temperature',
  'bulk.between': 'Dough rises',
  'bulk.fold': 'Fold',
  'bulk.spread': 'Spread',
  'bulk.scatter': 'Filling',
  'bulk.roll': 'Roll up',
  'bulk.proving': 'Dough rises',
  'bulk.look': 'Look at the dough',
  'shape.divide': 'Divide',
  'shape.preshape': 'Preshape',
  'shape.benchRest': 'Bench rest',
  'shape.finalShape': 'Final shape',
  'shape.basket': 'Baskets',
  'shape.scoop': 'Into the tin',
  'proof.counter': 'On the counter',
  'proof.toFridge': 'To the fridge',
  'proof.retard': 'In the fridge',
  'proof.look': 'Look at the loaves',
  'proof.warm': 'Loaves rise',
  'proof.soon': 'Loaves rise',
  'proof.poke': 'Press a dent',
  'oven.queued': 'With the oven',
  'cool.cooling': 'Loaves cool',
  'cool.handOver': 'Hand over',
  'cool.note': 'Note',
  'rescue.tray': 'Flat bread',
  done: 'Done',
  ended: 'Ended early',
});

export const ovenNames: Readonly<Record<OvenStage, string>> = inTongue('names', 'ovenNames', {
  off: 'Oven off',
  turnOn: 'Oven on',
  preheating: 'Pot heats up',
  holding: 'Oven is hot',
  poke: 'Check the loaf',
  standing: 'Loaf on the counter',
  before: 'Before the oven',
  score: 'Score',
  load: 'Load the pot',
  tray: 'Flat bread',
  baking: 'Bread bakes',
  lidded: 'Lid on',
  lift: 'Lift the lid',
  steaming: 'Steam',
  vent: 'Steam out',
  open: 'Lid off',
  judge: 'Look at the crust',
  unload: 'Take out',
  recover: 'Pot heats up again',
  turnOff: 'Turn it off',
});

/** What the steps are called otherwise where no single pot heats: the screen tells them so, and the voice. */
export const ovenNamesIn = inTongue('names', 'ovenNamesIn', {
  pots: { preheating: 'Pots heat up' },
  stone: {
    preheating: 'Stone heats up',
    load: 'Load the stone',
    open: 'Crust colours',
    recover: 'Stone heats up again',
  },
  tin: {
    preheating: 'Oven heats up',
    load: 'Load the tins',
    open: 'Crust colours',
    recover: 'Oven heats up again',
  },
  tray: { open: 'Crust colours' },
  rack: { open: 'Crust colours' },
} as const satisfies Readonly<Record<string, Readonly<Partial<Record<OvenStage, string>>>>>);

/** Parts of a bake, before the point of its stage. */
export const partNames = inTongue('names', 'partNames', {
  read: 'Read',
  levain: 'Levain',
  mix: 'Mix',
  bulk: 'Bulk',
  shape: 'Shape',
  proof: 'Proof',
  oven: 'Oven',
  cool: 'Cool',
  rescue: 'Rescue',
  done: 'Done',
  ended: 'Ended',
} as const);

/** The line above the countdown: where the baker stands. */
export const places = inTongue('names', 'places', {
  stage: '{part} · {name}',
  touch: 'Bulk · {touch} of {touches}',
  oven: 'Oven · load {load} of {loads}',
  loaf: 'Oven · loaf {load} of {loads}',
  pot: '{pot} · loaf {load} of {loads}',
  empty: '{pot} · empty',
  at: '{pot} · {name}',
} as const);

/** Pots by lane, as the lid call names them. */
export const pots: Readonly<Record<PotName, string>> = inTongue('names', 'pots', {
  pot: 'the pot',
  left: 'the left pot',
  middle: 'the middle pot',
  right: 'the right pot',
  backLeft: 'the back-left pot',
  backRight: 'the back-right pot',
  frontLeft: 'the front-left pot',
  frontRight: 'the front-right pot',
  first: 'the first pot',
  second: 'the second pot',
  third: 'the third pot',
  fourth: 'the fourth pot',
  fifth: 'the fifth pot',
  sixth: 'the sixth pot',
});

/** The same where the name stands by itself: on a lane, or before what it is at. */
export const potTitles: Readonly<Record<PotName | 'tray', string>> = inTongue(
  'names',
  'potTitles',
  {
    tray: 'Tray',
    pot: 'Pot',
    left: 'Left pot',
    middle: 'Middle pot',
    right: 'Right pot',
    backLeft: 'Back-left pot',
    backRight: 'Back-right pot',
    frontLeft: 'Front-left pot',
    frontRight: 'Front-right pot',
    first: 'First pot',
    second: 'Second pot',
    third: 'Third pot',
    fourth: 'Fourth pot',
    fifth: 'Fifth pot',
    sixth: 'Sixth pot',
  },
);
