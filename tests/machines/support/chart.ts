import { LISTS } from '../../../src/core/records/lists.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { ListName } from '../../../src/core/records/stage.ts';
import type { CallKind } from '../../../machines/ports.ts';

/**
 * How a bake walks, written down a second time and plainly: stage, act, next stage. `IN` is where a load of its kind bakes first, `TOUCH` is the
 * next touch, `ONWARD` the next wait of the bulk, `SHAPED` and `PROVED` the way its process goes on,
 * `AGAIN` back to a warm proof, `HOT` a hot oven, `AWAY` the end of a bake.
 */
export const BAKE_CHART: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'read.plan': { readThrough: 'read.list' },
  'levain.ripening': { due: 'levain.look', levainSeen: 'levain.look', levainRipe: 'levain.ripe' },
  'levain.look': {
    levainRipe: 'levain.ripe',
    levainNotYet: 'levain.ripening',
    levainOver: 'levain.ripe',
  },
  'levain.ripe': { starterKept: 'mix.weigh' },
  'mix.first': { mixed: 'mix.rest' },
  'mix.rest': { due: 'mix.salt', rested: 'mix.salt' },
  'mix.work': { workedIn: 'mix.temperature' },
  'mix.temperature': { unmeasured: 'ONWARD' },
  'bulk.between': { due: 'TOUCH', touchNow: 'TOUCH' },
  'bulk.fold': { folded: 'ONWARD' },
  'bulk.spread': { spread: 'bulk.scatter' },
  'bulk.scatter': { scattered: 'bulk.roll' },
  'bulk.roll': { rolled: 'ONWARD' },
  'bulk.proving': { due: 'bulk.look', doughSeen: 'bulk.look', bulkReady: 'SHAPED' },
  'bulk.look': { bulkReady: 'SHAPED', bulkNotYet: 'bulk.proving', bulkOver: 'rescue.tray' },
  'shape.divide': { divided: 'shape.preshape' },
  'shape.preshape': { preshaped: 'shape.benchRest' },
  'shape.benchRest': { due: 'shape.finalShape', benchRested: 'shape.finalShape' },
  'shape.finalShape': { shaped: 'shape.basket' },
  'shape.basket': { inBaskets: 'PROVED' },
  'shape.scoop': { scooped: 'PROVED' },
  'proof.counter': { due: 'proof.toFridge', counterDone: 'proof.toFridge' },
  'proof.toFridge': { inFridge: 'proof.retard' },
  'proof.retard': { due: 'proof.look', loafSeen: 'proof.look', loafReady: 'oven.queued' },
  'proof.look': {
    loafReady: 'oven.queued',
    loafNotYet: 'proof.retard',
    loafOver: 'oven.queued',
    standOut: 'proof.warm',
    loafFlat: 'rescue.tray',
  },
  'proof.warm': { due: 'proof.soon', loafSeen: 'proof.poke', loafReady: 'oven.queued' },
  'proof.soon': { due: 'proof.poke', loafSeen: 'proof.poke', loafReady: 'oven.queued' },
  'proof.poke': {
    loafReady: 'oven.queued',
    loafNotYet: 'AGAIN',
    loafOver: 'oven.queued',
    loafFlat: 'rescue.tray',
  },
  'cool.cooling': { due: 'cool.handOver', cooled: 'cool.handOver' },
  'cool.handOver': { handedOver: 'cool.note' },
  'cool.note': { noted: 'AWAY' },
  'rescue.tray': { trayBaked: 'cool.note' },
};

export const OVEN_CHART: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  turnOn: { ovenOn: 'preheating' },
  preheating: { due: 'HOT', ovenHot: 'HOT' },
  poke: { pokeReady: 'before', pokeNotYet: 'standing', pokeOver: 'before', pokeFlat: 'before' },
  standing: { due: 'poke', pokeNow: 'poke' },
  score: { scored: 'load' },
  load: { loaded: 'IN' },
  tray: { loaded: 'IN' },
  lidded: { due: 'lift', lidOff: 'open' },
  lift: { lidOff: 'open' },
  steaming: { due: 'vent', steamOut: 'open' },
  vent: { steamOut: 'open' },
  open: { due: 'judge', colourSeen: 'judge' },
  judge: {
    crustReady: 'unload',
    crustNotYet: 'open',
    crustOver: 'unload',
    crustOnRack: 'open',
  },
  unload: { unloaded: 'NEXT' },
  recover: { due: 'HOT', ovenHot: 'HOT' },
  turnOff: { ovenOff: 'off' },
};

/** Where the oven goes when nobody waits or comes any more, and when somebody begins to. */
export const NONE_WAIT: Readonly<Record<string, string>> = {
  turnOn: 'off',
  preheating: 'turnOff',
  holding: 'turnOff',
  poke: 'turnOff',
  standing: 'turnOff',
  before: 'turnOff',
  score: 'turnOff',
  load: 'turnOff',
  tray: 'turnOff',
  recover: 'turnOff',
};
export const SOME_WAIT: Readonly<Record<string, string>> = { off: 'turnOn', turnOff: 'preheating' };
/** Where it goes when those who waited are gone and others come soon. */
export const NONE_YET: Readonly<Record<string, string>> = {
  poke: 'holding',
  standing: 'holding',
  before: 'holding',
  score: 'holding',
  load: 'holding',
  tray: 'holding',
};

/** Lists: those that lead on by their last answer, and the signs of a look, which do not. */
export const LIST_AT: Readonly<Record<string, { list: ListName; next: string | null }>> = {
  'read.list': { list: 'beforeStart', next: 'levain.feed' },
  'levain.feed': { list: 'feed', next: 'levain.ripening' },
  'levain.look': { list: 'levainSigns', next: null },
  'mix.weigh': { list: 'first', next: 'mix.first' },
  'mix.salt': { list: 'second', next: 'mix.work' },
  'bulk.scatter': { list: 'filling', next: 'bulk.roll' },
  'shape.finalShape': { list: 'worked', next: null },
  'shape.scoop': { list: 'worked', next: null },
  'bulk.look': { list: 'bulkSigns', next: null },
  'proof.look': { list: 'loafSigns', next: null },
  'proof.poke': { list: 'warmSigns', next: null },
  poke: { list: 'pokeSigns', next: null },
  before: { list: 'beforeOven', next: 'SCORED' },
  judge: { list: 'crustSigns', next: null },
};

const UNASKED = { pot: [''], stone: ['knob'], tin: ['knob', 'parchment'] };

/** A filling is on the sheet where there is one, else in the loaf; what it soaked in is in it. */
const fillingsOf = ({ lines, process, fillingAtOnce }: Recipe, list: string): readonly string[] => {
  const place = process.touches.some(({ kind }) => kind === 'laminate') ? 'filling' : 'worked';
  const all = lines.filling.map(({ item }) => item).filter((item) => /^filling:/.test(item));
  return place === list && fillingAtOnce === undefined ? all : [];
};

export const itemsOf = (list: ListName, recipe: Recipe): readonly string[] => {
  if (list === 'filling' || list === 'worked') return fillingsOf(recipe, list);
  if (list === 'feed' || list === 'first' || list === 'second')
    return recipe.lines[list].map(({ item }) => item);
  return list === 'beforeOven'
    ? LISTS[list].filter((item) => !UNASKED[recipe.process.vessel].includes(item))
    : LISTS[list];
};

/** Whether an act has to wait till each filling is in, or is not what brings it in. */
export const waitsForFilling = (
  act: string,
  recipe: Recipe,
  answers: Readonly<Record<string, string>>,
): boolean =>
  act === 'scattered'
    ? itemsOf('filling', recipe).length > 0
    : (act === 'shaped' || act === 'scooped') &&
      itemsOf('worked', recipe).some((item) => !(item in answers));

/** What a stage calls, when time led into it. */
export const CALL_AT: Readonly<Record<string, CallKind>> = {
  'levain.look': 'look',
  'mix.salt': 'act',
  'bulk.fold': 'act',
  'bulk.spread': 'act',
  'bulk.look': 'look',
  'shape.finalShape': 'act',
  'proof.toFridge': 'act',
  'proof.look': 'look',
  'proof.poke': 'look',
  turnOn: 'act',
  'cool.handOver': 'look',
  poke: 'act',
  lift: 'hot',
  vent: 'hot',
  judge: 'hot',
  turnOff: 'act',
};
