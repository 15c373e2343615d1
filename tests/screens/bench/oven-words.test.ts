import { describe, expect, it } from 'vitest';
import { waitFor } from '../../../src/core/day/waits.ts';
import { ANY_POT, EQUIPMENT, type Equipment } from '../../../src/core/kitchen/equipment.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { layClips } from '../../../src/core/speech/clips.ts';
import { countdown } from '../../../src/core/speech/words/running.ts';
import { longerWords } from '../../../src/screens/bench/longer.ts';
import { benchView } from '../../../src/screens/bench/view.ts';
import { othersOf } from '../../../src/screens/others.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { nameIn, placedName } from '../../../src/screens/stage-names.ts';
import { clipIndex } from '../../core/speech/support/as-spoken.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { RECIPE, STONE } from '../../machines/support/recipe.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const see = (hand: Hand, equipment: Equipment, bake = 'a') =>
  benchView(
    hand.kitchen,
    focusOn(hand.kitchen, bake)!,
    hour,
    null,
    { heat: 'C', weight: 'g' },
    equipment,
  );
const kitchen = (count: number, pot = ANY_POT): Equipment => ({
  ...EQUIPMENT,
  pots: Array.from({ length: count }, () => pot),
});
const WARM = { ...RECIPE, process: { ...RECIPE.process, retard: 0, warm: 90 } };

const cold = (): Hand => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'oven.queued', ['a1', 'a2']);
  return hand;
};

describe('what heats and cools in the oven', () => {
  const said = (equipment: Equipment): readonly string[] => {
    const hand = cold();
    const on = see(hand, equipment);
    hand.do(on.slab.deed!);
    const heats = see(hand, equipment);
    hand.press('oven', 'ovenHot');
    hand.press('a', 'ended');
    hand.turn(1);
    const off = see(hand, equipment);
    expect([on.stage, heats.stage, off.stage]).toEqual(['turnOn', 'preheating', 'turnOff']);
    return [on.headline, on.slab.then, heats.headline, off.detail];
  };

  it('is the pot where there is one', () => {
    expect(said(kitchen(1))).toEqual([
      'Heat the oven, pot and lid in',
      'then the pot heats up',
      'Let the pot get hot',
      'The pot stays inside to cool.',
    ]);
  });

  it('is the pots where there are several', () => {
    expect(said(kitchen(2))).toEqual([
      'Heat the oven, pots and lids in',
      'then the pots heat up',
      'Let the pots get hot',
      'The pots stay inside to cool.',
    ]);
  });
});

describe('the time until it is hot', () => {
  const heats = (recipe: Recipe, equipment: Equipment) => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1', 'a2', 'a3'], recipe);
    hand.do(see(hand, equipment).slab.deed!);
    const view = see(hand, equipment);
    expect(view.stage).toBe('preheating');
    const said = longerWords({ now: () => hand.now, hour }, view);
    return { shown: countdown[view.waits!].to, said };
  };
  const tin = { ...RECIPE, process: { ...RECIPE.process, vessel: 'tin' as const } };

  it('names what heats: the pot or pots, the stone, the oven for tins', () => {
    expect(heats(RECIPE, kitchen(1)).shown).toBe('until the pot is hot');
    expect(heats(RECIPE, kitchen(2)).shown).toBe('until the pots are hot');
    expect(heats(STONE, kitchen(1)).shown).toBe('until the stone is hot');
    expect(heats(tin, kitchen(1)).shown).toBe('until the oven is hot');
  });

  it('is told with its name, in words that have their clips', () => {
    for (const recipe of [RECIPE, STONE, tin])
      for (const pots of [1, 2]) {
        const { shown, said } = heats(recipe, kitchen(pots));
        expect(said).toMatch(new RegExp(` ${shown}\\.$`));
        expect(layClips(said, (id) => clipIndex.has(id)).missing, said).toEqual([]);
      }
  });

  it('is no pot’s beside another bake’s name', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1'], STONE);
    hand.press('oven', 'ovenOn', { lanes: ['lane.pot'] });
    hand.start('b', 'mix.first', ['b1']);
    expect(othersOf(hand.kitchen, 'b', {}, hour).map(({ waits }) => waits)).toEqual(['oven hot']);
  });
});

describe('the name of what calls, or comes next', () => {
  it('begins with its pot where pots are told apart, and with the tray', () => {
    expect(placedName('lane.left', 'lift')).toBe('Left pot · Lift the lid');
    expect(placedName('lane.tray', 'judge')).toBe('Tray · Look at the crust');
  });

  it('has no pot where there is one, at the oven itself, and at a bake', () => {
    expect(placedName('lane.pot', 'lift')).toBe('Lift the lid');
    expect(placedName('oven', 'poke')).toBe('Check the loaf');
    expect(placedName('a', 'bulk.fold')).toBe('Fold');
  });
});

describe('the name of a step', () => {
  const tin = { ...RECIPE, process: { ...RECIPE.process, vessel: 'tin' as const, lidded: 0 } };
  /** From the oven going on to the crust, as another bench and the return card name them. */
  const names = (recipe: Recipe, pots: number): readonly string[] => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1', 'a2', 'a3', 'a4'], recipe);
    const at = (stage: string): string => {
      const { who } = focusOn(hand.kitchen, 'a')!;
      expect(see(hand, kitchen(pots)).stage).toBe(stage);
      return nameIn(hand.kitchen, who, stage);
    };
    hand.do(see(hand, kitchen(pots)).slab.deed!);
    const heats = at('preheating');
    walkTo(hand, 'oven', 'load');
    const loads = at('load');
    hand.do(see(hand, kitchen(pots)).slab.deed!);
    const lane = Object.keys(hand.kitchen.lanes)[0]!;
    walkTo(hand, lane, 'open');
    const colours = nameIn(hand.kitchen, lane, 'open');
    walkTo(hand, lane, 'recover');
    return [heats, loads, colours, nameIn(hand.kitchen, lane, 'recover')];
  };

  it('speaks of what heats, is loaded and is open there', () => {
    expect(names(RECIPE, 1)).toEqual([
      'Pot heats up',
      'Load the pot',
      'Lid off',
      'Pot heats up again',
    ]);
    expect(names(RECIPE, 2)[0]).toBe('Pots heat up');
    expect(names(STONE, 1)).toEqual([
      'Stone heats up',
      'Load the stone',
      'Crust colours',
      'Stone heats up again',
    ]);
    expect(names(tin, 1)).toEqual([
      'Oven heats up',
      'Load the tins',
      'Crust colours',
      'Oven heats up again',
    ]);
  });
});

describe('lids and parchment', () => {
  const plastic = kitchen(1, { ...ANY_POT, knob: 'plastic' });

  it('of which nobody said anything have the usual warning as the oven is turned on', () => {
    expect(see(cold(), EQUIPMENT).care).toMatch(/^Heatproof knob; much parchment takes 215 to 230/);
  });

  it('that are known not to stand the heat are warned of once a firing, and not twice at once', () => {
    const hand = cold();
    const on = see(hand, plastic);
    expect(on.care).toMatch(/^A lid knob here is plastic. Take it off while cold. Grown-up only/);
    expect(on.care).not.toMatch(/Heatproof knob/);
    hand.do(on.slab.deed!);
    for (const stage of ['poke', 'before', 'score', 'load']) {
      const { care } = see(walkTo(hand, 'oven', stage), plastic);
      expect([stage, care ?? '']).toEqual([stage, expect.not.stringMatching(/knob|parchment/)]);
    }
  });
});

describe('cold dough and hot enamel', () => {
  const enamel = kitchen(1, { ...ANY_POT, material: 'enamel' });
  const ASK = /^Cold dough can chip hot enamel/;

  it('are warned of as the oven is turned on, and not again', () => {
    const hand = cold();
    expect(see(hand, enamel).care).toMatch(/Cold dough can chip hot enamel/);
    walkTo(hand, 'oven', 'load');
    expect(see(hand, enamel).care).not.toMatch(ASK);
  });

  it('are warned of before the first cold loaf where the oven was turned on for warm ones', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('w', 'oven.queued', ['w1'], WARM);
    expect(see(hand, enamel, 'w').care).not.toMatch(/chip/);
    hand.press('oven', 'ovenOn', { lanes: ['lane.pot'] });
    walkTo(hand, 'oven', 'load', 'w');
    expect(see(hand, enamel, 'w').care).not.toMatch(ASK);
    hand.press('oven', 'loaded', { loaves: ['w1'], lane: 'lane.pot' });
    hand.start('a', 'oven.queued', ['a1', 'a2']);
    for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded', 'ovenHot']) {
      hand.press('lane.pot', act);
    }
    walkTo(hand, 'oven', 'load', 'a');
    expect(see(hand, enamel).care).toMatch(ASK);
    hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.pot' });
    for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded', 'ovenHot']) {
      hand.press('lane.pot', act);
    }
    walkTo(hand, 'oven', 'load', 'a');
    expect(see(hand, enamel).care).not.toMatch(ASK);
  });
});
