import { describe, expect, it } from 'vitest';
import { ringingOf } from '../../machines/kitchen/ringing.ts';
import { openTasks } from '../../machines/kitchen/open-tasks.ts';
import { sayAloud } from '../../src/app/say-aloud.ts';
import { speakOf } from '../../src/app/speak-of.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { MINUTE } from '../../src/core/units.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { asSpoken } from '../core/speech/support/as-spoken.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { STONE } from '../machines/support/recipe.ts';

const UNITS = { heat: 'C', weight: 'g' } as const;
const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const HANDS =
  'Both hands free? Children, stand back. In one minute the lid comes off the left pot.';

/** The left pot is loaded, and the right one so many seconds later. */
const loaded = (seconds: number | null = null): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', 'oven.queued', ['a1', 'a2', 'a3']);
  hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
  walkTo(hand, 'oven', 'load');
  expect(hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.left' })).toBe(true);
  if (seconds !== null) {
    hand.press('oven', 'pokeReady');
    hand.press('oven', 'scored');
    hand.turnTo(hand.now + seconds * 1000);
    expect(hand.press('oven', 'loaded', { loaves: ['a2'], lane: 'lane.right' })).toBe(true);
  }
  hand.says = [];
  return hand;
};

const saidOf = (hand: Hand): string[] =>
  hand.says
    .splice(0)
    .map((say) => speakOf(say, hand.kitchen, hour, UNITS, EQUIPMENT))
    .filter((words) => words !== null);

/** All that the voice is handed for what has just happened. */
const aloud = (hand: Hand): string[] => {
  const heard: string[] = [];
  const quiet = () => null;
  const hearing = { quiet, ringing: (kitchen: Hand['kitchen']) => ringingOf(kitchen, quiet) };
  const voice = { say: (words: string) => void heard.push(words), done: () => undefined };
  sayAloud(voice, hand.says.splice(0), hearing, hand, hour, hand.now, UNITS, EQUIPMENT);
  return heard;
};

describe('a minute before the lid comes off', () => {
  it('hands and children are told once, and nothing rings', () => {
    const hand = loaded();
    const lid = hand.deadline('lane.left')!;
    hand.turnTo(lid - MINUTE - 1);
    expect(saidOf(hand)).toEqual([]);
    hand.turnTo(lid - MINUTE);
    expect(saidOf(hand)).toEqual([HANDS]);
    expect(hand.ringing).toBeNull();
    hand.turnTo(lid - 1);
    expect(saidOf(hand)).toEqual([]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('nothing is asked on the glass: the wait stands as before, its press takes the lid', () => {
    const hand = loaded();
    const view = () =>
      benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, questionView, UNITS);
    const before = view();
    hand.turnTo(hand.deadline('lane.left')! - MINUTE);
    expect(view()).toMatchObject({ stage: before.stage, task: null, slab: before.slab, ahead: 0 });
    expect(view().tiles).toEqual(before.tiles);
  });

  it('is no open task once the lid is off, early or in its time', () => {
    for (const early of [true, false]) {
      const hand = loaded();
      hand.turnTo(hand.deadline('lane.left')! - (early ? 2 * MINUTE : MINUTE / 3));
      hand.says = [];
      expect(hand.press('lane.left', 'lidOff')).toBe(true);
      const tasks = openTasks(hand.kitchen.lanes['lane.left']!).map(({ task }) => task);
      expect(tasks).not.toContain('hands');
      hand.turn(3);
      expect(saidOf(hand).join(' ')).not.toContain('one minute');
    }
  });

  it('is left out by a tablet that slept, and while another lid calls', () => {
    const slept = loaded();
    slept.turnTo(slept.deadline('lane.left')! - 20_000);
    expect(saidOf(slept)).toEqual([]);
    const busy = loaded(61);
    busy.turnTo(busy.deadline('lane.left')! + 1000);
    expect(busy.ringing).toBe('lane.left:lift');
    expect(saidOf(busy).join(' ')).not.toContain('one minute');
  });

  it('tells of the steam on a stone', () => {
    const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
    hand.start('a', 'oven.queued', ['a1'], STONE);
    walkTo(hand, 'oven', 'steaming');
    hand.says = [];
    hand.turnTo(hand.deadline('lane.pot')! - MINUTE);
    expect(saidOf(hand)).toEqual([
      'Both hands free? Children, stand back. In one minute the steam goes out.',
    ]);
  });
});

describe('lid calls of two pots', () => {
  it('say which pot, and that the steam is away from hands, within 8 s', () => {
    const hand = loaded();
    hand.turnTo(hand.deadline('lane.left')!);
    const [words, ...more] = aloud(hand);
    expect(more).toEqual([]);
    expect(words).toBe(
      'Hot: lift the lid off the left pot, away from you: steam. Children, stand back.',
    );
    expect(asSpoken(words!, 'small').seconds).toBeLessThanOrEqual(8);
  });

  it('that fall within seconds are told in one go, the earlier one first', () => {
    const hand = loaded(4);
    hand.turnTo(hand.deadline('lane.left')!);
    aloud(hand);
    hand.turn(4 / 60);
    expect(aloud(hand)).toEqual([
      'Hot: lift the lid off the left pot, away from you: steam. Children, stand back. ' +
        'Hot: lift the lid off the right pot, away from you: steam. Children, stand back.',
    ]);
  });

  it('that fall half a minute apart are told one by one', () => {
    const hand = loaded(30);
    hand.turnTo(hand.deadline('lane.left')!);
    expect(aloud(hand)).toHaveLength(1);
    hand.turn(0.5);
    const [words] = aloud(hand);
    expect(words).toContain('Hot: lift the lid off the right pot');
  });
});
