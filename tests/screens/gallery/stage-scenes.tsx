import { createResource, Show, type Component } from 'solid-js';
import { waitFor } from '../../../src/core/day/waits.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { openHouse } from '../../../src/app/open-house.ts';
import { App } from '../../../src/app/App.tsx';
import { MINUTE } from '../../../src/core/units.ts';
import { makeMemoryStore } from '../../fakes/memory-store.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../../machines/support/recipe.ts';

/** A bake of a recipe that went its usual way to a stage. */
const stands = (stage: string, recipe: Recipe = RECIPE, from = 'mix.first'): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', from, ['a1', 'a2'], recipe);
  return walkTo(hand, stage.includes('.') ? 'a' : 'oven', stage);
};

/** Turned on until something of the wait itself calls. */
const called = (hand: Hand): Hand => {
  for (let n = 0; n < 600 && hand.ringing === null; n += 1) hand.turn(1);
  return hand;
};

const timed = (hand: Hand, minutes: number): Hand => {
  const until = hand.now + minutes * MINUTE;
  hand.do({ kind: 'timer', timer: 't1', name: 'nuts', until, call: 'hot' });
  return hand;
};

/** A filling that spoils is cut before the shaping; how far the dough rose is passed over. */
const cut = (): Hand => {
  const [first] = TIN.formula.fillings;
  const spoils = { ...first!, keeps: 'perishable', prepare: ['cut'] } as const;
  const hand = stands('bulk.proving', {
    ...TIN,
    formula: { ...TIN.formula, fillings: [spoils] },
    process: { ...TIN.process, touches: [] },
  });
  for (const item of ['rise45', 'rise70', 'rise85']) {
    const at = hand.kitchen.bakes['a']!.context.marks[`lead.${item}`];
    if (at === undefined) continue;
    hand.turnTo(at);
    hand.heard('a');
    hand.press('a', 'taskDone', { item, value: 'left' });
  }
  return called(hand);
};

/** A loaf that is over at the door of an oven with two pots: asked, and on its way into the tray. */
const over = (goes: boolean): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', 'oven.queued', ['a1', 'a2', 'a3']);
  hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
  walkTo(hand, 'oven', 'poke').heard('oven');
  hand.answer('oven', { dent: 'stays', grown: 'grown' });
  if (!goes) return hand;
  hand.press('oven', 'pokeFlat');
  return walkTo(hand, 'oven', 'tray');
};

/** Each a log, walked when it is shown; the whole app opens it as a tablet would. */
export const STAGES: Readonly<Record<string, () => Hand>> = {
  'stage: levain': () => stands('levain.ripening', RECIPE, 'levain.feed'),
  'stage: water': () => stands('mix.weigh', RECIPE, 'mix.weigh'),
  'stage: task': () => called(stands('mix.rest')),
  'stage: task, spoils': cut,
  'stage: timer': () => timed(stands('bulk.proving'), 15),
  'stage: timer calls': () => called(timed(stands('bulk.proving'), 3)),
  'stage: fridge': () => stands('proof.retard'),
  'stage: warm proof': () => stands('proof.warm', TIN),
  'stage: warm look': () => stands('proof.poke', TIN),
  'stage: filling': () => stands('bulk.scatter'),
  'stage: filling worked in': () => stands('shape.scoop', SCOOP),
  'stage: scoop': () => stands('shape.scoop', { ...SCOOP, lines: { ...SCOOP.lines, filling: [] } }),
  'stage: tin load': () => stands('load', TIN),
  'stage: tin open': () => stands('open', TIN),
  'stage: steam': () => stands('steaming', STONE),
  'stage: lid': () => stands('lift'),
  'stage: gone over': () => over(false),
  'stage: tray': () => over(true),
};

const Staged = (props: { readonly make: () => Hand }) => {
  const [house] = createResource(() => {
    const hand = props.make();
    return openHouse(makeFakeWorld({ store: makeMemoryStore(hand.records), at: hand.now }));
  });
  return <Show when={house()}>{(opened) => <App house={opened()} />}</Show>;
};

export const stageScenes: Readonly<Record<string, Component>> = Object.fromEntries(
  Object.entries(STAGES).map(([name, make]) => [name, () => <Staged make={make} />]),
);
