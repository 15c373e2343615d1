/** The stages of a bake, in the order they come. A stage is a part and a state: `part.state`. */
export const BAKE_STAGES = [
  'read.plan', // what it needs, how long, when it ends
  'read.list', // checklist before the start
  'levain.feed', // weigh seed, flour, water
  'levain.ripening', // wait: look
  'levain.look', // signs
  'levain.ripe', // keep starter back
  'mix.weigh', // flours, first water, levain
  'mix.first', // first mix by hand
  'mix.rest', // wait: end
  'mix.salt', // weigh salt and second water
  'mix.work', // work them in
  'mix.temperature', // measure the dough
  'bulk.between', // wait: touch
  'bulk.fold',
  'bulk.spread', // lamination: spread the sheet
  'bulk.scatter', // lamination: scatter the filling
  'bulk.roll', // lamination: roll up
  'bulk.proving', // wait: look
  'bulk.look', // signs
  'shape.divide',
  'shape.preshape',
  'shape.benchRest', // wait: end
  'shape.finalShape',
  'shape.basket',
  'shape.scoop', // a high-rye dough, spooned into its tin
  'proof.counter', // wait: end
  'proof.toFridge',
  'proof.retard', // wait: look
  'proof.look', // signs
  'proof.warm', // wait: turn, the oven going on or a look before it
  'proof.soon', // wait: look, the oven is wanted hot by then
  'proof.poke', // signs
  'oven.queued', // the oven machine has the loaves
  'cool.cooling', // wait: end
  'cool.handOver',
  'cool.note',
  'rescue.tray', // gone over: flat bread in a tray now (hot)
  'done',
  'ended', // given up or cleared away by the baker
] as const;
export type BakeStage = (typeof BAKE_STAGES)[number];

/** Stages a bake may be joined at: those a baker can find the dough in. */
export const JOINS = [
  'levain.feed',
  'levain.ripe',
  'mix.weigh',
  'bulk.proving',
  'shape.divide',
  'shape.scoop',
  'proof.retard',
  'proof.warm',
  'oven.queued',
] as const satisfies readonly BakeStage[];
export type Join = (typeof JOINS)[number];

/** The stages of a lane: one pot from its load on, or all that is on the stone or in tins at once. */
export const LANE_STAGES = [
  'lidded', // wait: lid
  'lift', // hot call
  'steaming', // on a stone: wait: vent
  'vent', // hot call: let the steam out
  'open', // wait: colour
  'judge', // crust colour, core
  'unload', // hot
  'recover', // pot heats up again: wait: hot
] as const;
export type LaneStage = (typeof LANE_STAGES)[number];

/** The stages of the oven and of its lanes, in the order a loaf passes them. One kitchen has one oven. */
export const OVEN_STAGES = [
  'off',
  'turnOn', // pot in, oven on
  'preheating', // wait: hot
  'holding', // hot, and no loaf has come yet
  'poke', // is the loaf ready
  'standing', // loaf stands out a little: wait: poke
  'before', // checklist before the oven
  'score', // blade
  'load', // hot
  'tray', // hot: a loaf that went over, flat in a tray
  'baking', // nothing can go in now: the lanes have their own stages
  ...LANE_STAGES,
  'turnOff',
] as const;
export type OvenStage = (typeof OVEN_STAGES)[number];

/**
 * Lists whose lines are the recipe's, each ticked. `filling`: scattered over a sheet; `worked`: what no
 * sheet takes in, before its loaf is shaped or spooned.
 */
export type TickedList = 'feed' | 'first' | 'second' | 'filling' | 'worked';

/**
 * Checklists, weigh cards and what goes in: a stage that has one is left by its last answer, by a verdict
 * or, once all of it is in, by its own act.
 */
export type ListName =
  | TickedList
  | 'beforeStart'
  | 'levainSigns'
  | 'bulkSigns'
  | 'loafSigns'
  | 'pokeSigns'
  | 'warmSigns'
  | 'beforeOven'
  | 'crustSigns';

/** What can happen at a step, and what to guard against. */
export type Hazard = 'none' | 'hot' | 'blade' | 'machine' | 'heavy' | 'raw';
