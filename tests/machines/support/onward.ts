import { beforeOvenItems, LISTS } from '../../../src/core/records/lists.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { itemsOf } from './chart.ts';
import type { Hand } from './hand.ts';

/** The one act that takes a stage on the usual way; stages not named here wait or are lists. */
export const USUAL: Readonly<Record<string, string>> = {
  'read.plan': 'readThrough',
  'levain.look': 'levainRipe',
  'levain.ripe': 'starterKept',
  'mix.first': 'mixed',
  'mix.work': 'workedIn',
  'mix.temperature': 'unmeasured',
  'bulk.fold': 'folded',
  'bulk.spread': 'spread',
  'bulk.scatter': 'scattered',
  'bulk.roll': 'rolled',
  'bulk.look': 'bulkReady',
  'shape.divide': 'divided',
  'shape.preshape': 'preshaped',
  'shape.finalShape': 'shaped',
  'shape.basket': 'inBaskets',
  'shape.scoop': 'scooped',
  'proof.toFridge': 'inFridge',
  'proof.look': 'loafReady',
  'proof.poke': 'loafReady',
  'cool.handOver': 'handedOver',
  'cool.note': 'noted',
  'rescue.tray': 'trayBaked',
  turnOn: 'ovenOn',
  poke: 'pokeReady',
  score: 'scored',
  lift: 'lidOff',
  vent: 'steamOut',
  judge: 'crustReady',
  unload: 'unloaded',
  turnOff: 'ovenOff',
};

/** The list that is the whole act of a stage, or what goes in before its own act; null: there is none. */
export const listAt = (
  stage: string,
  recipe: Recipe,
  answers: Readonly<Record<string, string>>,
): readonly string[] | null => {
  const { feed, first, second } = recipe.lines;
  if (stage === 'read.list') return LISTS.beforeStart;
  if (stage === 'levain.feed') return feed.map(({ item }) => item);
  if (stage === 'mix.weigh') return first.map(({ item }) => item);
  if (stage === 'mix.salt') return second.map(({ item }) => item);
  const list = stage === 'bulk.scatter' ? 'filling' : 'worked';
  if (list === 'worked' && stage !== 'shape.finalShape' && stage !== 'shape.scoop') return null;
  const open = itemsOf(list, recipe).filter((item) => !(item in answers));
  return open.length > 0 ? open : null;
};

/** One usual step of a bake or the oven: its act, its list, its load, or its wait to the end. */
export const stepOn = (hand: Hand, who: string): boolean => {
  const stage = hand.stage(who);
  if (stage === null) return false;
  const deadline = hand.deadline(who);
  if (deadline !== null) {
    hand.turnTo(Math.max(hand.now, deadline));
    return hand.stage(who) !== stage;
  }
  const { waiting, vessel } = hand.kitchen.oven.context;
  if (stage === 'load') return hand.press('oven', 'loaded', { loaves: waiting.slice(0, 1) });
  const bake = hand.kitchen.bakes[who]?.context;
  const items = bake
    ? listAt(stage, bake.recipe, bake.answers)
    : stage === 'before'
      ? beforeOvenItems(vessel)
      : null;
  if (items) return items.every((item) => hand.press(who, 'answer', { item, value: 'ready' }));
  const act = USUAL[stage];
  return act !== undefined && hand.press(who, act);
};

/** Whose turn it is: a bake at the oven waits for the oven. */
const turnOf = (hand: Hand, bake: string): string =>
  hand.stage(bake) === 'oven.queued' ? 'oven' : bake;

/**
 * Goes on the usual way until `who` stands at `stage`.
 * @throws where the way ends before.
 */
export const walkTo = (hand: Hand, who: string, stage: string, bake = 'a'): Hand => {
  for (let steps = 0; hand.stage(who) !== stage; steps += 1) {
    const at = turnOf(hand, bake);
    if (steps > 200 || !stepOn(hand, at)) {
      throw new Error(`The way to ${stage} ends at ${at} ${hand.stage(at)}.`);
    }
  }
  return hand;
};

/** Goes on until a bake is over and the oven is off. */
export const walkToEnd = (hand: Hand, bake = 'a'): Hand => {
  for (let steps = 0; steps < 300; steps += 1) {
    if (hand.stage(bake) !== null) {
      if (!stepOn(hand, turnOf(hand, bake))) break;
    } else if (hand.stage('oven') !== 'off') {
      if (!stepOn(hand, 'oven')) break;
    } else return hand;
  }
  throw new Error(`The way ends at ${hand.stage(bake)}, oven ${hand.stage('oven')}.`);
};

/** A bake of the given loaves that stands at a stage, on the usual way from where it joined. */
export const at = (hand: Hand, stage: string, from = 'mix.first'): Hand => {
  hand.start('a', from);
  return walkTo(hand, stage.includes('.') ? 'a' : 'oven', stage);
};
