import { describe, expect, it } from 'vitest';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { wants } from '../../src/core/speech/fill.ts';
import { BAKE_STAGES, OVEN_STAGES } from '../../src/core/records/stage.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import type { Units } from '../../src/core/units.ts';
import { bakeOf, focusOn } from '../../src/screens/focus.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView, type BenchView } from '../../src/screens/bench/view.ts';
import { ovenAhead, stepsOf, tickOf } from '../../src/screens/bench/steps.ts';
import { Hand } from '../machines/support/hand.ts';
import { stepOn, walkTo } from '../machines/support/onward.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../machines/support/recipe.ts';
import { WHOLE_BAKE } from '../machines/support/walk.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const METRIC: Units = { heat: 'C', weight: 'g' };
const see = (hand: Hand, bake = 'a', units = METRIC): BenchView | null => {
  const focus = focusOn(hand.kitchen, bake);
  return focus && benchView(hand.kitchen, focus, hour, questionView, units);
};

/** Every view of a day without a fridge, in tins: shaped, or spooned in. */
const viewsOfWarm = (recipe: Recipe): BenchView[] => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'bulk.look', ['a1'], recipe);
  const views: BenchView[] = [];
  while (hand.stage('a') !== 'cool.note') {
    const view = see(hand)!;
    views.push(view);
    stepOn(hand, view.who);
  }
  return views;
};

/** Every view of two loads on a hot stone. */
const viewsOfStone = (): BenchView[] => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', ['a1', 'a2'], STONE);
  const views: BenchView[] = [];
  while (hand.stage('a') === 'oven.queued') {
    views.push(see(hand)!);
    stepOn(hand, 'oven');
  }
  return [...views, see(hand)!];
};

/** Every view of a loaf that is over at the door, from there until it is out. */
const viewsOfFlat = (): BenchView[] => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', ['a1']);
  walkTo(hand, 'oven', 'poke').press('oven', 'pokeFlat');
  const views: BenchView[] = [];
  while (hand.stage('a') === 'oven.queued') {
    const view = see(hand)!;
    views.push(view);
    if (view.stage === 'tray') hand.do(view.slab.deed!);
    else stepOn(hand, 'oven');
  }
  return views;
};

/** Every view of a whole bake, one before each step of it. */
const viewsOfWholeBake = (): BenchView[] => {
  const hand = new Hand();
  return WHOLE_BAKE.flatMap(([, act]) => {
    act(hand);
    return see(hand) ?? [];
  });
};

describe('the baskets', () => {
  const basket = (recipe: Recipe, kitchen = 24) => {
    const hand = new Hand({ wait: waitFor });
    hand.do({ kind: 'start', bake: 'a', loaves: ['a1'], from: 'shape.divide', recipe, kitchen });
    return see(walkTo(hand, 'a', 'shape.basket'))!;
  };

  it('are told how long they stand before the fridge, on the screen and in the air', () => {
    const view = basket(RECIPE, 26);
    const minutes = /They stand (\d+\smin), then the fridge/.exec(view.detail)?.[1];
    expect(minutes).toBeDefined();
    expect(view.slab.then).toBe(`${minutes} out, then the fridge`);
    expect(view.spoken).toMatch(/^[a-z, -]+ minutes on the counter, then the fridge\./);
  });

  it('go straight in where they would be over by the end, and rise warm without a word of it', () => {
    const warm = { ...RECIPE, process: { ...RECIPE.process, fridge: 9 } };
    expect(basket(warm, 27).detail).toMatch(/straight into the fridge/);
    expect(basket(TIN).detail).not.toMatch(/fridge/);
  });
});

describe('a look at a cold loaf', () => {
  const looked = (signs: Readonly<Record<string, string>>) => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'shape.divide');
    walkTo(hand, 'a', 'proof.look');
    hand.answer('a', { wobble: 'notSure', skin: 'smooth', ...signs });
    return hand;
  };
  const acts = ({ slab, tiles }: BenchView) =>
    [slab, ...tiles].map(({ deed }) => (deed?.kind === 'press' ? deed.act : null));

  it('that has not grown and springs back is told to stand out, and for how long', () => {
    const hand = looked({ grown: 'none', rim: 'below', dent: 'springs' });
    expect(acts(see(hand)!)[0]).toBe('standOut');
    expect(see(hand)!.detail).toMatch(/Leave them out/);
    hand.press('a', 'standOut');
    const view = see(hand)!;
    expect(view.headline).toBe('Leave the loaves out');
    expect(view.spoken).toMatch(/^[a-z, -]+ on the counter\. You are needed at /);
    hand.press('a', 'loafSeen');
    expect(see(hand)!.progress).toEqual({ done: 0, of: 2 });
    hand.answer('a', { dent: 'stays' });
    expect(see(hand)!.headline).toBe('How much has it grown?');
  });

  it('that has not grown but does not spring back stays in the cold, standing out within reach', () => {
    const view = see(looked({ grown: 'little', rim: 'below', dent: 'slowly' }))!;
    expect(acts(view)).toEqual(['loafNotYet', 'loafReady', 'standOut', 'loafOver']);
  });

  it('that has gone over is told to bake now, or to a new goal, and never to wait', () => {
    const hand = looked({ grown: 'grown', rim: 'above', dent: 'stays' });
    const view = see(hand)!;
    expect(acts(view)).toEqual(['loafOver', 'loafFlat', 'loafReady']);
    expect(view.detail).toMatch(/bake now, from cold, with a shallow cut/);
    hand.press('a', 'loafOver');
    walkTo(hand, 'oven', 'poke');
    // At the oven too: no question whether it is ready, and no more waiting.
    expect(see(hand)!.progress).toBeNull();
    expect(acts(see(hand)!)).toEqual(['pokeOver', 'pokeReady', 'pokeFlat']);
    hand.press('oven', 'pokeOver');
    walkTo(hand, 'oven', 'score');
    expect(see(hand)!.detail).toMatch(/shallow cut, half as deep/);
  });

  it('that is ready keeps its deep cut', () => {
    const hand = looked({ grown: 'grown', rim: 'level', dent: 'slowly' });
    hand.press('a', 'loafReady');
    expect(see(walkTo(hand, 'oven', 'score'))!.detail).toMatch(/1 cm deep/);
  });

  it('stands at the tick of the fridge while it stands out', () => {
    const hand = looked({ grown: 'none', rim: 'below', dent: 'springs' });
    const steps = stepsOf(RECIPE);
    const at = tickOf(steps, 'proof.look');
    hand.press('a', 'standOut');
    expect(at).toBeGreaterThan(0);
    expect(tickOf(steps, hand.stage('a')!)).toBe(at);
    expect(tickOf(steps, 'proof.poke')).toBe(at);
    expect(tickOf(stepsOf(TIN), 'proof.poke')).toBe(stepsOf(TIN).indexOf('proof.poke'));
  });
});

describe('what the bench shows', () => {
  it('has words, one slab and no hole for every stage of a whole bake', () => {
    const views = [
      ...viewsOfWholeBake(),
      ...viewsOfStone(),
      ...viewsOfWarm(TIN),
      ...viewsOfWarm(SCOOP),
      ...viewsOfFlat(),
    ];
    for (const view of views) {
      for (const text of [
        view.place,
        view.headline,
        view.detail,
        view.spoken,
        view.slab.label,
        view.slab.then,
      ]) {
        expect(wants(text), `${view.stage}: ${text}`).toEqual([]);
        expect(text, view.stage).not.toMatch(/undefined|NaN|null/);
      }
      expect(view.slab.label.length, view.stage).toBeGreaterThan(0);
      expect(view.headline.length, view.stage).toBeGreaterThan(0);
    }
    const seen = new Set(views.map((view) => view.stage));
    const never = [
      'standing',
      'off',
      'holding',
      'baking',
      'oven.queued',
      'rescue.tray',
      'done',
      'ended',
    ];
    const all = [...BAKE_STAGES, ...OVEN_STAGES].filter((stage) => !never.includes(stage));
    expect(all.filter((stage) => !seen.has(stage))).toEqual([]);
  });

  it('speaks of tins, never of a pot, a lid, a knob or parchment, where loaves bake in one', () => {
    for (const { stage, headline, detail, spoken, slab, care } of viewsOfWarm(TIN)) {
      if (stage.includes('.')) continue;
      const words = [headline, detail, spoken, slab.label, slab.then, care ?? ''].join(' ');
      expect(words, stage).not.toMatch(/\b(pot|lid|knob|parchment|fridge)\b/i);
    }
  });

  it('asks of a warm loaf at the oven, and of one in a tin, what can be seen of it', () => {
    const views = viewsOfWarm(TIN);
    const dents = views.filter(({ headline }) => headline === 'What does a dent do?');
    expect(dents.length).toBeGreaterThan(0);
    for (const { detail } of dents) expect(detail).not.toMatch(/cold/i);
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1'], TIN);
    walkTo(hand, 'oven', 'judge');
    hand.answer('oven', { colour: 'golden' });
    expect(see(hand)!.detail).toMatch(/Tip it out of its tin/);
  });

  it('marks the oven on the edge while it heats ahead of the loaves', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'proof.soon', ['a1'], TIN);
    const steps = stepsOf(TIN);
    const mark = () => {
      const stage = ovenAhead(hand.kitchen, focusOn(hand.kitchen, 'a')!);
      return stage === null ? null : steps[tickOf(steps, stage)];
    };
    expect(mark()).toBeNull();
    hand.press('oven', 'ovenOn');
    expect(mark()).toBe('preheating');
    expect(steps.indexOf('preheating')).toBeGreaterThan(tickOf(steps, 'proof.warm'));
    hand.turn(60);
    expect(hand.stage('oven')).toBe('holding');
    expect(mark()).toBe('preheating');
  });

  it('speaks of all the loaves of a load, and of one where there is one', () => {
    const out = (loaves: string[], recipe: Recipe, stage: string) => {
      const hand = new Hand({ wait: waitFor });
      hand.start('a', 'oven.queued', loaves, recipe);
      // As the slab says: as many loaves as there are places.
      walkTo(hand, 'oven', 'load');
      if (stage !== 'load') hand.do(see(hand)!.slab.deed!);
      return see(walkTo(hand, 'oven', stage))!;
    };
    expect(out(['a1'], TIN, 'unload')).toMatchObject({ headline: 'Take the loaf out' });
    expect(out(['a1', 'a2'], TIN, 'unload')).toMatchObject({
      headline: 'Take the loaves out',
      spoken: 'Take the loaves out, tip each onto the rack. Children, stand back.',
      slab: { label: 'All are out', deed: { act: 'unloaded' } },
    });
    expect(out(['a1', 'a2'], TIN, 'load').slab.label).toBe('All are in');
    // One pot takes one loaf, whatever waits beside it.
    expect(out(['a1', 'a2'], RECIPE, 'lift').headline).toBe('Lift the lid off the pot');
  });

  it('says how long a dense rye sets, and of no other bread', () => {
    const cooling = (cool: number) => {
      const hand = new Hand({ wait: waitFor });
      const recipe = { ...TIN, process: { ...TIN.process, cool } };
      hand.start('a', 'cool.cooling', ['a1'], recipe);
      return see(hand)!;
    };
    expect(cooling(960).detail).toMatch(/Dense rye needs 12 to 24 hours\.$/);
    expect(cooling(960).spoken).toMatch(/twelve to twenty-four hours\.$/);
    expect(cooling(120).detail).not.toContain('rye');
  });

  it('shows the oven to be turned on while the loaves rise, and then the loaves again', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'proof.soon', ['a1'], TIN);
    expect([see(hand)!.who, see(hand)!.stage]).toEqual(['oven', 'turnOn']);
    expect(bakeOf(hand.kitchen, 'oven')).toBe('a');
    hand.press('oven', 'ovenOn');
    expect([see(hand)!.who, see(hand)!.stage]).toEqual(['a', 'proof.soon']);
  });

  it('speaks of stone and steam, never of pot, lid or knob, where loaves bake on a stone', () => {
    for (const { stage, headline, detail, spoken, slab, tiles } of viewsOfStone()) {
      if (stage.startsWith('cool.')) continue;
      const words = [headline, detail, spoken, slab.label, slab.then, ...tiles.map((t) => t.label)];
      expect(words.join(' '), stage).not.toMatch(/\b(pot|lid|knob)\b/);
    }
    const vent = viewsOfStone().find(({ stage }) => stage === 'vent');
    expect(vent).toMatchObject({ call: 'hot', hazard: 'hot', third: 'why' });
    expect(vent?.slab.deed).toMatchObject({ who: 'lane.pot', act: 'steamOut' });
    const steps = stepsOf(STONE);
    expect(steps).toEqual(expect.arrayContaining(['steaming', 'vent']));
    expect(steps).not.toContain('lift');
  });

  it('offers only deeds that the machines take', () => {
    const hand = new Hand();
    for (const [name, act] of WHOLE_BAKE) {
      act(hand);
      const view = see(hand);
      if (!view) continue;
      for (const deed of [view.slab.deed, view.ready, ...view.tiles.map((tile) => tile.deed)]) {
        if (deed === null) continue;
        const trial = new Hand();
        Object.assign(trial, { wall: hand.wall, kitchen: hand.kitchen });
        expect(trial.do(deed), `${JSON.stringify(deed)} after ${name}`).toBe(true);
      }
    }
  });

  it('counts down to the deadline of the machine on show', () => {
    const hand = new Hand();
    hand.start('a', 'mix.first');
    hand.press('a', 'mixed');
    expect(see(hand)?.deadline).toBe(deadlineOf(hand.kitchen.bakes['a']!));
    expect(see(hand)?.waits).toBe('end');
  });

  it('weighs the present line and ticks what is in', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh');
    expect(see(hand)).toMatchObject({ headline: '790 g Wheat flour' });
    hand.answer('a', { 'flour:wheat': '790' });
    expect(see(hand)?.headline).toBe('520 g water');
    expect(see(hand)?.lines.map((line) => line.state)).toEqual(['done', 'now', 'next']);
  });

  it('weighs in ounces where the baker does, and the record stays in grams', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh');
    const ounces = { heat: 'F', weight: 'oz' } as const;
    const card = see(hand, 'a', ounces);
    expect(card?.headline.replaceAll('\u00a0', ' ')).toBe('1 lb 11.9 oz Wheat flour');
    expect(card?.slab.deed).toMatchObject({ item: 'flour:wheat', value: '790' });
    expect(card?.spoken).toBe('one pound eleven point nine ounces of Wheat flour.');
    expect(card?.lines.map((line) => line.label)).not.toContainEqual(expect.stringMatching(/ g /));
  });

  it('tells what to move once the first piece is weighed', () => {
    const hand = new Hand();
    hand.start('a', 'shape.divide');
    const weigh = (grams: number) =>
      hand.do({ kind: 'reading', by: 'hand', bake: 'a', reading: { what: 'firstPiece', grams } });
    weigh(925);
    expect(see(hand)?.detail).toBe('25 g too heavy. Move it to the next piece.');
    weigh(880);
    expect(see(hand)?.detail).toBe('20 g too light. Add from the next piece.');
    weigh(903);
    expect(see(hand)?.detail).toBe('903 g: just right. Lay it aside.');
  });

  it('asks an unsafe answer again, with what to mend', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued');
    hand.press('oven', 'ovenOn');
    hand.turn(45);
    hand.press('oven', 'pokeReady');
    const first = see(hand)!;
    hand.answer('oven', { child: 'close' });
    const again = see(hand)!;
    expect(again.headline).toBe(first.headline);
    expect(again.detail).toBe('Give the child a task 1 m away. Then answer.');
  });

  it('turns a look’s signs into a slab, and keeps the other two answers within reach', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving');
    hand.press('a', 'doughSeen');
    hand.answer('a', { rise: '25', edge: 'flat', bubbles: 'none', wobble: 'firm', top: 'smooth' });
    const view = see(hand)!;
    expect(view.slab).toMatchObject({ label: 'Not yet', deed: { act: 'bulkNotYet' } });
    expect(view.tiles.map((tile) => tile.deed)).toMatchObject([
      { act: 'bulkReady' },
      { act: 'bulkOver' },
    ]);
  });

  it('throws a mouldy levain away rather than going on', () => {
    const hand = new Hand();
    hand.start('a', 'levain.feed');
    hand.answer('a', { seed: '40', flour: '80', water: '80' });
    hand.press('a', 'levainSeen');
    hand.answer('a', { colour: 'pinkOrMould' });
    expect(see(hand)).toMatchObject({ tiles: [], slab: { deed: { act: 'ended' } } });
  });

  it('says what a tablet cannot do by itself when a night lies before the next look', () => {
    const hand = new Hand();
    hand.start('a', 'proof.toFridge');
    hand.press('a', 'inFridge');
    const look = hour(deadlineOf(hand.kitchen.bakes['a']!)!);
    expect(see(hand)?.care).toBe(`Plug me in. Set your phone for ${look}.`);
    hand.turn(719);
    expect(see(hand)?.care).toBeNull();
  });

  it('follows the oven while it has the loaves, and finds the bake a call belongs to', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued');
    expect(see(hand)).toMatchObject({ who: 'oven', stage: 'turnOn' });
    expect(bakeOf(hand.kitchen, 'oven')).toBe('a');
    expect(bakeOf(hand.kitchen, 'b')).toBeNull();
  });
});
