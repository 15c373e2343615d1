import type { BakeAct, OvenAct } from '../../core/records/fact.ts';
import type { BakeStage, OvenStage } from '../../core/records/stage.ts';
import type { VerdictOn } from '../../core/speech/words/verdicts.ts';

/** The one act a stage's slab stands for, where it is a plain press. */
export const ACTS: Readonly<Partial<Record<BakeStage | OvenStage, BakeAct | OvenAct>>> = {
  'read.plan': 'readThrough',
  'levain.ripening': 'levainSeen',
  'levain.ripe': 'starterKept',
  'mix.first': 'mixed',
  'mix.rest': 'rested',
  'mix.work': 'workedIn',
  'mix.temperature': 'unmeasured',
  'bulk.between': 'touchNow',
  'bulk.fold': 'folded',
  'bulk.spread': 'spread',
  'bulk.scatter': 'scattered',
  'bulk.roll': 'rolled',
  'bulk.proving': 'doughSeen',
  'shape.divide': 'divided',
  'shape.preshape': 'preshaped',
  'shape.benchRest': 'benchRested',
  'shape.finalShape': 'shaped',
  'shape.basket': 'inBaskets',
  'shape.scoop': 'scooped',
  'proof.counter': 'counterDone',
  'proof.toFridge': 'inFridge',
  'proof.retard': 'loafSeen',
  'proof.warm': 'loafSeen',
  'proof.soon': 'loafSeen',
  'cool.cooling': 'cooled',
  'cool.handOver': 'handedOver',
  'cool.note': 'noted',
  'rescue.tray': 'trayBaked',
  turnOn: 'ovenOn',
  preheating: 'ovenHot',
  standing: 'pokeNow',
  score: 'scored',
  load: 'loaded',
  tray: 'loaded',
  lidded: 'lidOff',
  lift: 'lidOff',
  steaming: 'steamOut',
  vent: 'steamOut',
  open: 'colourSeen',
  unload: 'unloaded',
  recover: 'ovenHot',
  turnOff: 'ovenOff',
};

/** Acts that come more than once in a bake: a press of them carries what the baker saw. */
export const REPEATABLE: readonly (BakeAct | OvenAct)[] = [
  'folded',
  'rolled',
  'spread',
  'scattered',
];

/** The three answers of a look; cold loaves have two more (question-view.ts). */
export const VERDICT_ACTS: Readonly<
  Record<VerdictOn, Readonly<Record<'ready' | 'notYet' | 'over', BakeAct | OvenAct>>>
> = {
  levain: { ready: 'levainRipe', notYet: 'levainNotYet', over: 'levainOver' },
  bulk: { ready: 'bulkReady', notYet: 'bulkNotYet', over: 'bulkOver' },
  warm: { ready: 'loafReady', notYet: 'loafNotYet', over: 'loafOver' },
  loaf: { ready: 'loafReady', notYet: 'loafNotYet', over: 'loafOver' },
  poke: { ready: 'pokeReady', notYet: 'pokeNotYet', over: 'pokeOver' },
};
