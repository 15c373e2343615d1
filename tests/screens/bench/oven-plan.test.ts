import { describe, expect, it } from 'vitest';
import { EQUIPMENT, ANY_POT, type Equipment } from '../../../src/core/kitchen/equipment.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import { ovenPlan, potQueue } from '../../../src/screens/bench/oven-plan.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { RECIPE, TIN } from '../../machines/support/recipe.ts';

const TWO: Equipment = { ...EQUIPMENT, pots: [ANY_POT, ANY_POT] };
const LANES = ['lane.left', 'lane.right'];
const named = (count: number, of = 'a'): string[] =>
  Array.from({ length: count }, (_, i) => `${of}${i + 1}`);

const queued = (count: number): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', named(count));
  return hand;
};
const heated = (count: number): Hand => {
  const hand = queued(count);
  hand.press('oven', 'ovenOn', { lanes: LANES });
  return walkTo(hand, 'oven', 'poke');
};
const fill = (hand: Hand, lane: string): void => {
  walkTo(hand, 'oven', 'load');
  const [loaf] = hand.kitchen.oven.context.waiting;
  expect(hand.press('oven', 'loaded', { loaves: [loaf], lane })).toBe(true);
};
/** Two pots full, the second three minutes after the first. */
const full = (count: number): Hand => {
  const hand = heated(count);
  fill(hand, 'lane.left');
  hand.turn(3);
  fill(hand, 'lane.right');
  return hand;
};
const takeOut = (hand: Hand, lane: string): void => {
  for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded']) hand.press(lane, act);
};

const plan = (hand: Hand) => ovenPlan(hand.kitchen, TWO, hand.now)!;
const after = (hand: Hand, at: Instant | null): number => (at! - hand.now) / MINUTE;
const turns = (hand: Hand, pot: string) =>
  plan(hand).lanes.find((lane) => lane.pot === pot)?.turns ?? [];
const order = (hand: Hand): string[] =>
  plan(hand)
    .lanes.flatMap((lane) => lane.turns)
    .toSorted((a, b) => a.loadAt - b.loadAt)
    .map(({ loaf }) => loaf);

describe('the plan of the pots', () => {
  it('has twelve loaves in two pots out in six rounds after the oven is hot', () => {
    const hand = queued(12);
    // 45 until hot, six times 38, five times 10 until hot again, and 3 after the other pot.
    expect(after(hand, plan(hand).lastOut)).toBe(45 + 6 * 38 + 5 * 10 + 3);
    expect(after(hand, plan(hand).lastBag)).toBe(45 + 6 * 38 + 5 * 10 + 3 + 120);
    expect(plan(hand).lanes.map((lane) => lane.turns.length)).toEqual([6, 6]);
    expect(order(hand)).toEqual(named(12));
    hand.press('oven', 'ovenOn', { lanes: LANES });
    hand.turn(20);
    expect(after(hand, plan(hand).lastOut)).toBe(25 + 6 * 38 + 5 * 10 + 3);
  });

  it('holds what is in the pots by its own instants', () => {
    const hand = full(12);
    const [left] = turns(hand, 'lane.left');
    expect(left).toMatchObject({ loaf: 'a1', stands: true });
    expect([after(hand, left!.loadAt), after(hand, left!.lidAt), after(hand, left!.outAt)]).toEqual(
      [-3, 15, 35],
    );
    hand.turn(15);
    hand.press('lane.left', 'lidOff');
    expect(after(hand, turns(hand, 'lane.left')[0]!.lidAt)).toBe(0);
    expect(after(hand, turns(hand, 'lane.left')[0]!.outAt)).toBe(20);
    // The press that a hot hand makes later says when it was.
    hand.turn(5);
    hand.press('lane.right', 'lidOff', { was: hand.now - 2 * MINUTE });
    expect(after(hand, turns(hand, 'lane.right')[0]!.lidAt)).toBe(-2);
    expect(after(hand, turns(hand, 'lane.right')[0]!.outAt)).toBe(18);
  });

  it('keeps its last hour while everything is done at its minute, and is right', () => {
    const hand = heated(12);
    const last = plan(hand).lastOut!;
    const out = (): number => hand.kitchen.oven.context.out.length;
    for (let minutes = 0; out() < 12 && minutes < 600; minutes += 1) {
      for (const lane of LANES) {
        if (hand.stage(lane) === 'lift') hand.press(lane, 'lidOff');
        if (hand.stage(lane) === 'judge') takeOut(hand, lane);
        const next = out() < 12 ? turns(hand, lane).find(({ stands }) => !stands) : undefined;
        if (next?.loadAt === hand.now) fill(hand, lane);
      }
      expect([minutes, ovenPlan(hand.kitchen, TWO, hand.now)?.lastOut ?? null]).toEqual([
        minutes,
        out() < 12 ? last : null,
      ]);
      if (out() < 12) hand.turn(1);
    }
    expect(hand.now).toBe(last);
  });

  it('moves by an interruption of forty minutes, minute for minute', () => {
    const hand = full(12);
    const before = plan(hand).lastOut!;
    // Both lids have called after 15 and 18 minutes; nobody came for 40 more.
    hand.turn(15 + 40);
    expect(turns(hand, 'lane.left')[0]).toMatchObject({ lidAt: hand.now - 40 * MINUTE });
    expect(after(hand, turns(hand, 'lane.left')[0]!.outAt)).toBe(20);
    expect(plan(hand).lastOut! - before).toBeGreaterThanOrEqual(37 * MINUTE);
    expect(plan(hand).lastOut! - before).toBeLessThanOrEqual(40 * MINUTE);
    const then = plan(hand).lastOut!;
    hand.turn(1);
    expect(plan(hand).lastOut! - then).toBe(MINUTE);
  });

  it('puts no more loaves into a pot that dropped out, and bakes what is in it', () => {
    const hand = full(12);
    const potOut = { kind: 'press', who: 'oven', act: 'potOut', item: 'lane.right' } as const;
    expect(hand.do(potOut)).toBe(true);
    expect(turns(hand, 'lane.right').map(({ loaf }) => loaf)).toEqual(['a2']);
    expect(turns(hand, 'lane.left')).toHaveLength(11);
    // The first is out after 35 minutes, ten more go in one after the other.
    expect(after(hand, plan(hand).lastOut)).toBe(35 + 10 * 48);
    hand.takeBack();
    expect(plan(hand).lanes.map((lane) => lane.turns.length)).toEqual([6, 6]);
    hand.do(potOut);
    takeOut(hand, 'lane.right');
    expect(plan(hand).lanes.map(({ pot }) => pot)).toEqual(['lane.left']);
  });

  it('has a loaf that is slow last, one that goes first next', () => {
    const hand = heated(4);
    hand.press('oven', 'pokeNotYet');
    expect(potQueue(hand.kitchen)).toEqual(['a2', 'a3', 'a4', 'a1']);
    expect(order(hand)).toEqual(['a2', 'a3', 'a4', 'a1']);
    hand.press('oven', 'loafFirst', { item: 'a4' });
    expect(order(hand)).toEqual(['a4', 'a2', 'a3', 'a1']);
    const reasons = plan(hand).lanes.flatMap((lane) =>
      lane.turns.map(({ loaf, reason }) => [loaf, reason] as const),
    );
    expect(Object.fromEntries(reasons)).toEqual({ a4: null, a2: null, a3: null, a1: 'sluggish' });
  });

  it('loads nothing while the last slow loaf stands out', () => {
    const hand = heated(1);
    hand.press('oven', 'pokeNotYet');
    expect(hand.stage('oven')).toBe('standing');
    const [only] = turns(hand, 'lane.left');
    expect(only).toMatchObject({ loadAt: hand.deadline('oven'), reason: 'standsOut' });
  });

  it('reckons each bread by its own minutes', () => {
    const hand = heated(1);
    const long = { ...RECIPE, process: { ...RECIPE.process, open: 40, cool: 60 } };
    hand.start('b', 'oven.queued', ['b1'], long);
    const [a, b] = [turns(hand, 'lane.left')[0]!, turns(hand, 'lane.right')[0]!];
    expect([a.loaf, (a.outAt - a.loadAt) / MINUTE, (a.bagAt - a.outAt) / MINUTE]).toEqual([
      'a1',
      38,
      120,
    ]);
    expect([b.loaf, (b.outAt - b.loadAt) / MINUTE, (b.bagAt - b.outAt) / MINUTE]).toEqual([
      'b1',
      58,
      60,
    ]);
    fill(hand, 'lane.left');
    fill(hand, 'lane.right');
    const stands = turns(hand, 'lane.right')[0]!;
    expect((stands.bagAt - stands.outAt) / MINUTE).toBe(60);
  });

  it('puts no loaf into a pot too small for it while a larger one is there', () => {
    const sizes = { 'lane.left': 700, 'lane.right': 1200 };
    const hand = queued(3);
    const small = { ...RECIPE, piece: 600, loaves: 2 };
    hand.start('b', 'oven.queued', named(2, 'b'), small);
    hand.press('oven', 'ovenOn', { lanes: LANES, holds: sizes });
    const loaves = (pot: string) => turns(hand, pot).map(({ loaf }) => loaf);
    expect(loaves('lane.right')).toEqual(['a1', 'a2', 'a3']);
    expect(loaves('lane.left')).toEqual(['b1', 'b2']);
    // The largest drops out: what is left is all there is, and it is told as they are loaded.
    hand.do({ kind: 'press', who: 'oven', act: 'potOut', item: 'lane.right' });
    expect(loaves('lane.left')).toHaveLength(5);
    expect(plan(hand).unplaced).toEqual([]);
  });

  it('goes by what the kitchen’s pots hold until the oven is on', () => {
    const pots = [2, 4].map((litres) => ({ ...ANY_POT, litres }));
    const found = ovenPlan(queued(3).kitchen, { ...EQUIPMENT, pots })!;
    expect(found.lanes.map(({ turns: all }) => all.length)).toEqual([0, 3]);
  });

  it('counts warm loaves that still rise, from when they are likely ready', () => {
    const hand = full(2);
    const before = plan(hand).lastOut!;
    const warm = { ...RECIPE, process: { ...RECIPE.process, retard: 0, warm: 90 } };
    hand.start('w', 'proof.warm', named(2, 'w'), warm);
    expect(order(hand)).toEqual(['a1', 'a2', 'w1', 'w2']);
    const [, rising] = turns(hand, 'lane.left');
    const ready = hand.kitchen.bakes['w']!.context.marks['look']!;
    expect(rising!.loadAt).toBeGreaterThanOrEqual(ready);
    expect(rising!.fetchAt).toBeNull();
    expect(plan(hand).lastOut!).toBeGreaterThan(before);
  });

  it('has a flat bread as a lane of its own while it bakes, and in no pot before', () => {
    const hand = heated(3);
    hand.press('oven', 'pokeFlat');
    walkTo(hand, 'oven', 'tray');
    expect(order(hand)).toEqual(['a2', 'a3']);
    hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.tray' });
    const [flat] = turns(hand, 'lane.tray');
    expect(flat).toMatchObject({ loaf: 'a1', loadAt: hand.now, lidAt: null, stands: true });
    expect(flat!.outAt).toBe(hand.deadline('lane.tray'));
  });

  it('is none where nothing bakes in pots', () => {
    const hand = new Hand();
    expect(ovenPlan(hand.kitchen, TWO)).toBeNull();
    hand.start('b', 'oven.queued', ['b1', 'b2'], TIN);
    expect(ovenPlan(hand.kitchen, TWO)).toBeNull();
  });
});
