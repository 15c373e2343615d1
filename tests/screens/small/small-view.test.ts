import { describe, expect, it } from 'vitest';
import { metaOf } from '../../../machines/kitchen/stage-of.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import { AGES } from '../../../src/core/small/ages.ts';
import { isTicked } from '../../../src/core/records/ticked.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { smallWords } from '../../../src/core/small/small-words.ts';
import { focusOn, type Focus } from '../../../src/screens/focus.ts';
import { questionView } from '../../../src/screens/bench/question-view.ts';
import {
  faceOf,
  hasGate,
  isAnswered,
  isScattered,
} from '../../../src/screens/bench/small/face-of.ts';
import {
  mayPress,
  shareOf,
  smallSaid,
  smallView,
} from '../../../src/screens/bench/small/small-view.ts';
import { praiseOf } from '../../../src/screens/bench/small/praise-of.ts';
import { benchView, type BenchView } from '../../../src/screens/bench/view.ts';
import { Hand } from '../../machines/support/hand.ts';
import { stepOn } from '../../machines/support/onward.ts';
import { RECIPE, STONE } from '../../machines/support/recipe.ts';

const hour = (): string => '12:00';
const UNITS = { heat: 'C', weight: 'g' } as const;

interface Seen {
  readonly hand: Hand['kitchen'];
  readonly focus: Focus;
  readonly view: BenchView;
}

/** Every screen of two whole bakes, in a pot and on a stone. */
function everyScreen(): Seen[] {
  return [RECIPE, STONE].flatMap((recipe) => {
    const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
    hand.start('a', 'read.plan', ['a1', 'a2'], recipe);
    const seen: Seen[] = [];
    for (let steps = 0; steps < 400 && hand.stage('a') !== null; steps += 1) {
      const focus = focusOn(hand.kitchen, 'a');
      if (focus === null) break;
      const view = benchView(hand.kitchen, focus, hour, questionView, UNITS, EQUIPMENT);
      seen.push({ hand: hand.kitchen, focus, view });
      const deadline = hand.deadline(view.who);
      const { marks } = focus.machine.context;
      const next = Object.values(marks).filter((one) => one > hand.now && one <= (deadline ?? 0));
      if (view.task !== null) hand.do(view.tiles.at(-1)!.deed);
      else if (next.length > 0) hand.turnTo(Math.min(...next));
      else if (!stepOn(hand, view.who)) hand.turn(10);
    }
    return seen;
  });
}
const ALL = everyScreen();
const at = (stage: string): Seen => ALL.find(({ view }) => view.stage === stage && !view.task)!;

describe('a bake as a child sees it', () => {
  it('is walked whole', () => {
    const stages = new Set(ALL.map(({ view }) => view.stage));
    for (const stage of ['levain.feed', 'bulk.fold', 'shape.divide', 'turnOn', 'lift', 'vent'])
      expect(stages).toContain(stage);
    expect(stages.size).toBeGreaterThan(35);
    expect(ALL.some(({ view }) => view.task !== null)).toBe(true);
  });

  it('has no face of its own while it is off', () => {
    for (const { view } of ALL) expect(faceOf('off', view)).toBe('baker');
  });

  it.each(AGES)('never gives a child of %s what is asked, read, weighed, hot or sharp', (ages) => {
    for (const { view, focus } of ALL) {
      const { list } = metaOf(focus.machine);
      const asks = view.task === null && list !== undefined && !isTicked(list);
      const face = faceOf(ages, view);
      const listed = view.progress !== null && !isScattered(view);
      if (asks || hasGate(view) || listed || view.slab.deed === null)
        expect(face, view.stage).toBe('beside');
      // A list's catalogue may not be here yet: the stage alone tells.
      if (asks) expect(isAnswered(view), view.stage).toBe(true);
      expect(mayPress(ages, view) && hasGate(view), view.stage).toBe(false);
    }
  });

  it('leaves a step that is safe to the child, and an oven that stays hot to a grown-up', () => {
    for (const stage of [
      'mix.first',
      'bulk.fold',
      'bulk.scatter',
      'bulk.between',
      'shape.divide',
      'shape.basket',
    ])
      expect([faceOf('4-6', at(stage).view), mayPress('4-6', at(stage).view)]).toEqual([
        'own',
        true,
      ]);
    for (const stage of ['preheating', 'lidded', 'open'])
      expect([faceOf('10-12', at(stage).view), mayPress('10-12', at(stage).view)]).toEqual([
        'own',
        false,
      ]);
  });

  it.each(AGES)('shows children of %s one act, one sentence, a task and a picture', (ages) => {
    for (const { hand, focus, view } of ALL) {
      const told = smallView(ages, hand, focus, view);
      expect(told).toMatchObject(smallWords(ages, (view.task ?? view.stage) as never));
      expect(told.sketch).not.toBe('');
    }
  });

  it('makes a way of each wait, from its beginning to its likely end', () => {
    let waits = 0;
    for (const { hand, focus, view } of ALL) {
      const { wait } = smallView('4-6', hand, focus, view);
      if (view.task !== null || view.deadline === null) expect(wait, view.stage).toBeNull();
      if (wait === null) continue;
      waits += 1;
      expect(wait.to).toBe(view.window?.likely ?? view.deadline);
      expect(shareOf(wait, wait.from)).toBe(0);
      expect(shareOf(wait, (wait.from + wait.to) / 2)).toBeCloseTo(0.5);
      expect(shareOf(wait, wait.to + 1)).toBe(1);
    }
    expect(waits).toBeGreaterThan(5);
  });

  it('plays at folds, and at as many pieces as have room', () => {
    const game = (stage: string) => {
      const { hand, focus, view } = at(stage);
      return smallView('4-6', hand, focus, view).game;
    };
    expect(game('bulk.fold')).toEqual({ kind: 'corners', count: 4 });
    expect(game('shape.divide')).toEqual({ kind: 'pieces', count: 2 });
    expect(game('shape.basket')).toEqual({ kind: 'baskets', count: 2 });
    expect(game('lift')).toBeNull();
    expect(game('mix.first')).toBeNull();
  });

  it('reminds of raw dough at one step of a bake', () => {
    for (const from of ['read.plan', 'mix.first', 'shape.divide'] as const) {
      const hand = new Hand();
      hand.start('a', from, ['a1'], RECIPE);
      const raw = new Set<string>();
      for (let steps = 0; steps < 200 && hand.stage('a') !== 'oven.queued'; steps += 1) {
        const focus = focusOn(hand.kitchen, 'a')!;
        const view = benchView(hand.kitchen, focus, hour, questionView, UNITS, EQUIPMENT);
        if (smallView('7-9', hand.kitchen, focus, view).raw) raw.add(view.stage);
        if (!stepOn(hand, 'a')) hand.turn(10);
      }
      expect([...raw]).toEqual([from === 'read.plan' ? 'levain.feed' : from]);
    }
  });

  it('is said in its own words where it is safe, and in the baker’s behind them where it is hot', () => {
    const said = (stage: string) => {
      const { hand, focus, view } = at(stage);
      return [smallSaid('7-9', hand, focus, view), view.spoken] as const;
    };
    const [fold, bakers] = said('bulk.fold');
    const words = smallWords('7-9', 'bulk.fold');
    expect(fold).toContain(`${words.act}. ${words.say}`);
    expect(fold).not.toContain(bakers);
    const [scatter, weighed] = said('bulk.scatter');
    const { act, say } = smallWords('7-9', 'bulk.scatter');
    expect(scatter).toBe(`${act}. ${say} ${weighed}`);
    expect(weighed).toMatch(/grams of/);
    const [lift, usual] = said('lift');
    expect(lift).toBe(`${smallWords('7-9', 'lift').act}. ${usual}`);
    const [look, asked] = said('bulk.look');
    expect(look).toBe(asked);
  });

  it('praises what was done, and no wait, no answer and nothing of a grown-up’s', () => {
    expect(praiseOf('4-6', at('bulk.fold').view)).toBe(smallWords('4-6', 'bulk.fold').praise);
    for (const stage of ['bulk.between', 'bulk.look', 'lift', 'score', 'load', 'lidded'])
      expect(praiseOf('4-6', at(stage).view), stage).toBeNull();
    expect(praiseOf('off', at('bulk.fold').view)).toBeNull();
  });
});
