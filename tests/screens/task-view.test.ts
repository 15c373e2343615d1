import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { TASKS } from '../../src/core/records/task.ts';
import { tasks } from '../../src/core/speech/words/tasks.ts';
import { MINUTE } from '../../src/core/units.ts';
import { subjectOf } from '../../src/screens/call-subject.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { aheadOf } from '../../src/screens/bench/task-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { nameOf } from '../../src/screens/stage-names.ts';
import { grade } from '../core/speech/support/grade.ts';
import { clipId } from '../../src/core/speech/clips.ts';
import { clipIndex } from '../core/speech/support/as-spoken.ts';
import { sentencesOf, wordsOf } from '../core/speech/support/catalogue.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { RECIPE, STONE, TIN } from '../machines/support/recipe.ts';

const [first] = RECIPE.formula.fillings;
const NUTS: Recipe = {
  ...RECIPE,
  formula: { ...RECIPE.formula, fillings: [{ ...first!, prepare: ['toast'] }] },
};

const hour = (at: number): string => new Date(at).toISOString().slice(11, 16);
const see = (hand: Hand) =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, null, { heat: 'C', weight: 'g' });

/** A dough before its first fold, with nuts to be toasted in 15 min. */
const between = (): Hand => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'mix.first', ['a1'], NUTS);
  return walkTo(hand, 'a', 'bulk.between');
};

describe('a task that calls', () => {
  it('has the big press until it is done, while the wait goes on', () => {
    const hand = between();
    const end = hand.deadline('a');
    expect(see(hand).task).toBeNull();
    hand.turn(15);
    expect(hand.ringing).toBe('a:lead.toast');
    const view = see(hand);
    expect([view.task, view.call, view.stage, view.headline]).toEqual([
      'toast',
      'look',
      'bulk.between',
      tasks.toast.headline,
    ]);
    expect(view.care).toMatch(/hot/);
    expect(view.deadline).toBe(end);
    hand.do(view.slab.deed!);
    expect(see(hand).task).toBeNull();
    expect(hand.deadline('a')).toBe(end);
    hand.takeBack();
    expect(see(hand).task).toBe('toast');
  });

  it('has what spoils made ready before the shaping, and put back where it is cold', () => {
    const called = (keeps: 'shelf' | 'perishable') => {
      const hand = new Hand({ wait: waitFor });
      const recipe: Recipe = {
        ...TIN,
        formula: { ...TIN.formula, fillings: [{ ...first!, keeps, prepare: ['cut'] }] },
        process: { ...TIN.process, touches: [] },
      };
      hand.start('a', 'bulk.proving', ['a1'], recipe);
      // 25 min before it goes in: the look at the dough, and the bench rest of 20 behind it.
      hand.turnTo(hand.deadline('a')! - 5 * MINUTE);
      for (let left = see(hand); left.task?.startsWith('rise'); left = see(hand))
        hand.do(left.tiles[0]!.deed);
      return see(hand);
    };
    const [figs, spoils] = [called('shelf'), called('perishable')];
    expect([figs.task, spoils.task]).toEqual(['cut', 'cut']);
    expect(figs.care).toBe(tasks.cut.care);
    expect(spoils.care).toBe(`${tasks.cut.care} What spoils goes straight back into the fridge.`);
  });

  it('takes one loaf out of the fridge for a pot, the next load for a stone', () => {
    const called = (recipe: Recipe, lanes: string[]) => {
      const hand = new Hand({ wait: waitFor });
      hand.start('a', 'oven.queued', ['a1', 'a2', 'a3'], recipe);
      hand.press('oven', 'ovenOn', { lanes });
      for (const item of ['parchment', 'kettle']) {
        hand.turnTo(hand.kitchen.oven.context.marks[`lead.${item}`] ?? hand.now);
        hand.press('oven', 'taskDone', { item });
      }
      hand.turnTo(hand.kitchen.oven.context.marks['lead.fetch']!);
      const two = { ...EQUIPMENT, stones: 2 };
      const units = { heat: 'C', weight: 'g' } as const;
      return benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, null, units, two);
    };
    const [pot, stone] = [called(RECIPE, ['lane.left', 'lane.right']), called(STONE, ['lane.pot'])];
    expect([pot.task, pot.headline]).toEqual(['fetch', 'Take loaf 1 out of the fridge']);
    expect([stone.task, stone.headline]).toEqual(['fetch', 'Take 2 loaves out of the fridge']);
    expect(stone.spoken).toMatch(/^two loaves out of the fridge\. /);
    // Said of words that have their clips: of a number, and of what a single loaf is told.
    expect(clipIndex.has(clipId('out of the fridge'))).toBe(true);
  });

  it('speaks of other loaves that stay cold only where another waits', () => {
    const fetched = (loaves: string[], recipe: Recipe) => {
      const hand = new Hand({ wait: waitFor });
      hand.start('a', 'oven.queued', loaves, recipe);
      hand.press('oven', 'ovenOn', { lanes: ['lane.pot'] });
      for (const item of ['parchment', 'kettle']) {
        hand.turnTo(hand.kitchen.oven.context.marks[`lead.${item}`] ?? hand.now);
        hand.press('oven', 'taskDone', { item });
      }
      hand.turnTo(hand.kitchen.oven.context.marks['lead.fetch']!);
      const { task, detail, spoken } = benchView(
        hand.kitchen,
        focusOn(hand.kitchen, 'a')!,
        hour,
        null,
        { heat: 'C', weight: 'g' },
        { ...EQUIPMENT, stones: 2 },
      );
      expect(task).toBe('fetch');
      return [detail, spoken];
    };
    const OTHERS = 'The other loaves stay cold.';
    const LAST = 'No other loaf waits for the oven.';
    expect(fetched(['a1', 'a2'], RECIPE)[0]).toBe(OTHERS);
    expect(fetched(['a1', 'a2'], RECIPE)[1]).toContain(OTHERS);
    expect(fetched(['a1', 'a2', 'a3'], STONE)[0]).toBe(OTHERS);
    expect(fetched(['a1'], RECIPE)).toEqual([LAST, 'Take loaf one out of the fridge.']);
    expect(fetched(['a1', 'a2'], STONE)).toEqual([LAST, 'two loaves out of the fridge.']);
  });

  it('can be left out by one press, and is not asked again', () => {
    const hand = between();
    hand.turn(15);
    hand.do(see(hand).tiles[0]!.deed);
    expect(see(hand).task).toBeNull();
    hand.turn(15);
    hand.press('a', 'folded');
    expect(Object.keys(hand.kitchen.bakes['a']!.context.marks)).not.toContain('lead.toast');
  });

  it('gives way to the end of its wait', () => {
    const hand = between();
    hand.turn(31);
    expect([see(hand).stage, see(hand).task]).toEqual(['bulk.fold', null]);
    hand.press('a', 'folded');
    // Still wanted, and due at once: it stands beside the wait and does not ring.
    expect(hand.ringing).toBeNull();
    expect(see(hand).tiles.map(({ label }) => label)).toContain(tasks.toast.done);
  });

  it('comes in its turn where more than two were due as the wait began', () => {
    const fillings = [
      { ...first!, prepare: ['soak', 'toast', 'drain'] as const, keeps: 'hardCheese' as const },
    ];
    const recipe: Recipe = { ...RECIPE, formula: { ...RECIPE.formula, fillings } };
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'mix.first', ['a1'], recipe);
    walkTo(hand, 'a', 'bulk.fold');
    hand.press('a', 'folded');
    const tiles = () => see(hand).tiles.map(({ label }) => label);
    expect(tiles()).toEqual([tasks.soak.done, tasks.takeOut.done]);
    expect(hand.ringing).toBeNull();
    const called: (string | null)[] = [];
    for (let minute = 0; minute < 12; minute += 1) {
      hand.turn(1);
      const { task, slab } = see(hand);
      if (task === null) continue;
      called.push(task);
      hand.do(slab.deed!);
    }
    expect(called).toEqual(['toast', 'drain']);
    expect(tiles()).toEqual([tasks.soak.done, tasks.takeOut.done]);
  });

  it('of the oven is shown though the loaves still rise', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'proof.soon', ['a1'], { ...TIN, process: { ...TIN.process, vessel: 'stone' } });
    hand.press('oven', 'ovenOn');
    expect(see(hand).stage).toBe('proof.soon');
    hand.turnTo(hand.kitchen.oven.context.marks['lead.parchment']!);
    expect([see(hand).who, see(hand).task]).toEqual(['oven', 'parchment']);
    // Its heat is told in the baker's unit on the screen, and in words in the air.
    expect(see(hand).detail).toContain('takes only 215 to 230 °C.');
    expect(see(hand).spoken).toContain('only two hundred and fifteen to two hundred and thirty d');
  });
});

describe('a task that will call later', () => {
  it('may be done before, and then never calls; a take-back has it call again', () => {
    const hand = between();
    expect([see(hand).task, see(hand).ahead]).toEqual([null, 1]);
    const [toast] = aheadOf(focusOn(hand.kitchen, 'a')!);
    expect(toast).toMatchObject({ task: 'toast', at: hand.now + 15 * MINUTE });
    hand.do(toast!.deed);
    expect(see(hand).ahead).toBe(0);
    hand.turn(15);
    expect(hand.ringing).toBeNull();
    hand.takeBack();
    expect(hand.ringing).toBe('a:lead.toast');
    // What calls has its own press.
    expect(see(hand).ahead).toBe(0);
  });

  it('is not offered where it would not keep, nor where it asks for a reading', () => {
    const hand = between();
    const marks = () => Object.keys(hand.kitchen.bakes['a']!.context.marks);
    const ahead = () => aheadOf(focusOn(hand.kitchen, 'a')!).map(({ task }) => task);
    while (!marks().includes('lead.bench')) {
      walkTo(hand, 'a', 'bulk.fold');
      hand.press('a', 'folded');
    }
    expect(ahead()).not.toContain('bench');
    walkTo(hand, 'a', 'bulk.proving');
    expect(marks()).toContain('lead.rise45');
    expect(ahead()).toEqual([]);
  });
});

describe('the ask for a rise', () => {
  it('leads to the pictures of a rise, and one press leaves it out', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'mix.first', ['a1']);
    walkTo(hand, 'a', 'bulk.proving');
    const { marks } = hand.kitchen.bakes['a']!.context;
    const [mark, instant] = Object.entries(marks).find(([name]) => name.startsWith('lead.rise'))!;
    hand.turnTo(instant);
    const view = see(hand);
    expect([view.headline, view.slab.deed, view.measures]).toEqual([
      tasks.rise45.headline,
      null,
      'rise.dough',
    ]);
    hand.do(view.tiles[0]!.deed);
    expect(see(hand).task).toBeNull();
    expect(hand.kitchen.bakes['a']!.context.tasks[mark.slice(5)]?.done).not.toBeNull();
  });
});

describe('the words of every task', () => {
  it.each(TASKS)('%s: verb first, short, plain, and named where it calls', (task) => {
    const { headline, detail, done, care = '' } = tasks[task];
    expect(wordsOf(headline).length).toBeLessThanOrEqual(7);
    expect(wordsOf(done).length).toBeLessThanOrEqual(4);
    for (const sentence of sentencesOf(detail)) {
      expect(wordsOf(sentence).length).toBeLessThanOrEqual(12);
    }
    expect(sentencesOf(detail).length).toBeLessThanOrEqual(2);
    expect(grade([headline, detail, care])).toBeLessThanOrEqual(8);
    expect(subjectOf(`lead.${task}`)).toBe(tasks[task].subject);
    expect(nameOf('a', `lead.${task}`)).toBe(tasks[task].subject);
  });
});
