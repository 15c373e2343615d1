import { describe, expect, it } from 'vitest';
import { bakePage } from '../../src/core/log/bake-page.ts';
import { CALL_STAGES } from '../../src/core/log/call-stages.ts';
import { MINUTE } from '../../src/core/units.ts';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import { Hand, plainWait } from './support/hand.ts';
import { at, walkTo } from './support/onward.ts';
import { WHOLE_BAKE } from './support/walk.ts';

const pageOf = (hand: Hand, bake = 'a') =>
  bakePage(hand.records, bake, { live: positionOf(hand.kitchen) })!;
const whole = (): Hand => {
  const hand = new Hand();
  for (const [, act] of WHOLE_BAKE) act(hand);
  return hand;
};

/** Every stage of a machine that calls, with how, as its own chart has it; the oven's end calls by other rules. */
const callsOfChart = (): Record<string, string> => {
  const found: Record<string, string> = {};
  for (const { root } of [MACHINES.bake, MACHINES.oven, MACHINES.lane]) {
    const walk = (node: typeof root): void => {
      const call = (node.meta as { call?: string } | undefined)?.call;
      const stage = node.path.join('.');
      if (call !== undefined && stage !== 'turnOff') found[stage] = call;
      for (const child of Object.values(node.states)) walk(child as typeof root);
    };
    walk(root as never);
  }
  return found;
};

describe('the calls of a bake', () => {
  it('are of the stages that call in the machines, and of no other', () => {
    expect(CALL_STAGES).toEqual(callsOfChart());
  });

  it('tell when each was due, hushed, answered, and how late', () => {
    const hand = at(new Hand(), 'bulk.proving');
    const due = hand.deadline('a')!;
    hand.turnTo(due + 3 * MINUTE);
    const id = hand.callId('a');
    hand.heard('a');
    hand.turn(4);
    hand.press('a', 'bulkReady');
    expect(pageOf(hand).calls.at(-1)).toEqual({
      id,
      who: 'a',
      stage: 'bulk.look',
      kind: 'look',
      due,
      heard: due + 3 * MINUTE,
      acted: due + 7 * MINUTE,
      late: 3,
      snoozes: [],
    });
  });

  it('have every time they were put off', () => {
    const hand = at(new Hand(), 'bulk.between');
    hand.turnTo(hand.deadline('a')!);
    const ends = [2, 4].map((minutes) => hand.now + minutes * MINUTE);
    hand.snooze('a');
    hand.turn(2);
    hand.snooze('a');
    hand.turn(3);
    expect(pageOf(hand).calls.at(-1)).toMatchObject({ snoozes: ends, acted: null, late: 0 });
    hand.press('a', 'folded');
    expect(pageOf(hand).calls.at(-1)).toMatchObject({ acted: hand.now });
  });

  it('are as late as the press of who never heard them, and open while nobody has answered', () => {
    const hand = at(new Hand(), 'proof.counter');
    hand.turnTo(hand.deadline('a')! + 40 * MINUTE);
    expect(pageOf(hand).calls.at(-1)).toMatchObject({ stage: 'proof.toFridge', late: null });
    hand.press('a', 'inFridge');
    expect(pageOf(hand).calls.at(-1)).toMatchObject({ heard: null, late: 40 });
    hand.takeBack();
    expect(pageOf(hand).calls.at(-1)).toMatchObject({ acted: null, late: null });
  });

  it('are none where the baker came by herself', () => {
    const hand = at(new Hand(), 'bulk.proving');
    const before = pageOf(hand).calls.length;
    hand.press('a', 'doughSeen');
    hand.press('a', 'bulkReady');
    expect(pageOf(hand).calls).toHaveLength(before);
  });

  it('are of the tasks of a wait too, though it went on with none done', () => {
    const hand = new Hand({
      wait: (input) => {
        const wait = plainWait(input);
        if (input.stage !== 'mix.rest') return wait;
        const leads = { 'lead.bench': input.now, 'lead.cut': input.now + 10 * MINUTE };
        return { ...wait, marks: { ...wait.marks, ...leads } };
      },
    });
    hand.start('a', 'mix.first');
    hand.press('a', 'mixed');
    const since = hand.now;
    hand.turn(20);
    hand.press('a', 'rested');
    const [call, ...others] = pageOf(hand).calls;
    expect(call).toMatchObject({ stage: 'lead.cut', due: since + 10 * MINUTE, acted: null });
    expect(others).toEqual([]);
    hand.takeBack();
    expect(hand.callId('a')).toBe(call!.id);
    hand.press('a', 'taskDone', { item: 'cut' });
    expect(pageOf(hand).calls[0]).toMatchObject({ acted: hand.now, late: 10 });
  });

  it('have the same ids as those that rang, of the oven and its pots too', () => {
    const hand = new Hand();
    const rang = new Set<string>();
    for (const [, act] of WHOLE_BAKE) {
      act(hand);
      for (const call of hand.fold.callsOf(hand.kitchen)) {
        if (call.stage !== 'turnOff') rang.add(call.id);
      }
    }
    const { calls } = pageOf(hand);
    expect(new Set(calls.map(({ id }) => id))).toEqual(rang);
    expect(calls.filter(({ kind }) => kind === 'hot').length).toBeGreaterThan(2);
  });
});

describe('the loads of a bake', () => {
  it('have each loaf, its pot, when it went in, was opened and came out', () => {
    const { loads, out } = pageOf(whole());
    expect(loads.map(({ lane, vessel, loaves }) => [lane, vessel, loaves])).toEqual([
      ['lane.pot', 'pot', ['a1']],
      ['lane.pot', 'pot', ['a2']],
    ]);
    for (const load of loads) {
      expect((load.opened! - load.in) / MINUTE).toBe(18);
      expect((load.out! - load.in) / MINUTE).toBe(38);
      expect(load.looks.map(({ said }) => said)).toEqual(['crustReady']);
    }
    expect(out).toBe(2);
  });

  it('have a lid that was off before anyone said so, the colour and every look', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    walkTo(hand, 'oven', 'lift');
    const was = hand.now - MINUTE;
    hand.turn(2);
    hand.press('oven', 'lidOff', { was: hand.now - MINUTE });
    walkTo(hand, 'oven', 'judge');
    hand.answer('oven', { colour: 'pale' });
    hand.press('oven', 'crustNotYet');
    walkTo(hand, 'oven', 'judge');
    hand.answer('oven', { colour: 'golden' });
    const open = pageOf(hand).loads[0]!;
    expect([open.opened, open.colour, open.out]).toEqual([was + 2 * MINUTE, 'golden', null]);
    expect(pageOf(hand).out).toBe(0);
    hand.press('oven', 'crustReady');
    hand.press('oven', 'unloaded');
    const [load] = pageOf(hand).loads;
    expect(load!.looks.map(({ said }) => said)).toEqual(['crustNotYet', 'crustReady']);
    expect([load!.out, pageOf(hand).out]).toEqual([hand.now, 1]);
  });

  it('are of this bake alone where two share the oven', () => {
    const hand = new Hand();
    const lanes = ['lane.left', 'lane.right'];
    hand.start('a', 'oven.queued', ['a1']);
    hand.start('b', 'oven.queued', ['b1']);
    hand.press('oven', 'ovenOn', { lanes });
    walkTo(hand, 'oven', 'load', 'a');
    hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.left' });
    walkTo(hand, 'oven', 'load', 'b');
    hand.press('oven', 'loaded', { loaves: ['b1'], lane: 'lane.right' });
    const loadsOf = (bake: string) => pageOf(hand, bake).loads.map(({ lane }) => lane);
    expect([loadsOf('a'), loadsOf('b')]).toEqual([['lane.left'], ['lane.right']]);
    hand.turn(60);
    const who = pageOf(hand, 'b').calls.map((call) => call.who);
    expect(who).toContain('lane.right');
    expect(who).not.toContain('lane.left');
  });
});

describe('the weights of a bake', () => {
  it('are its pieces and cool loaves, with what was lost between them', () => {
    const hand = new Hand();
    hand.start('a', 'shape.divide', ['a1']);
    hand.measure('a', { what: 'weight', grams: 890, of: 'piece' });
    hand.measure('a', { what: 'weight', grams: 910, of: 'piece' });
    walkTo(hand, 'a', 'cool.cooling');
    hand.measure('a', { what: 'weight', grams: 800, of: 'loaf' });
    hand.turn(90);
    hand.measure('a', { what: 'weight', grams: 783, of: 'loaf' });
    hand.measure('a', { what: 'weight', grams: 2600, of: 'loaf', odd: true });
    const { pieces, loaves, loss } = pageOf(hand).weights;
    expect([pieces, loaves]).toEqual([
      [890, 910],
      [783, 2600],
    ]);
    expect(loss).toBeCloseTo(13, 9);
  });

  it('lose what the dough was to weigh where no piece was weighed, and nothing unweighed', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    walkTo(hand, 'a', 'cool.handOver');
    expect(pageOf(hand).weights).toEqual({ pieces: [], loaves: [], loss: null });
    hand.measure('a', { what: 'weight', grams: 792, of: 'loaf' });
    expect(pageOf(hand).weights.loss).toBeCloseTo(12, 9);
  });
});
