import { transition } from 'xstate';
import { describe, expect, it } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { pureStep } from '../../machines/kitchen/pure-step.ts';
import { Hand } from './support/hand.ts';
import { WHOLE_BAKE } from './support/walk.ts';

/** The acts of a bake and of the oven, from wherever a whole bake passes through. */
const EVENTS = [
  'due',
  'answer',
  'readThrough',
  'mixed',
  'folded',
  'doughSeen',
  'bulkReady',
  'loafReady',
  'lidOff',
  'crustReady',
  'unloaded',
  'ended',
  'unheard',
];

const plain = (snapshot: { value: unknown; context: unknown; status: unknown }) => ({
  value: snapshot.value,
  context: snapshot.context,
  status: snapshot.status,
});
const asked = (actions: readonly { type: string; params?: unknown }[]) =>
  actions.map(({ type, params }) => ({ type, params }));

describe('a pure step', () => {
  it('leads where the library’s own transition leads, and asks for the same, at every turn of a bake', () => {
    const hand = new Hand();
    let compared = 0;
    for (const [, act] of WHOLE_BAKE) {
      act(hand);
      for (const type of EVENTS) {
        const event = { type, at: hand.now, item: 'rise', value: 'grown' };
        const machines = [
          ...Object.values(hand.kitchen.bakes).map((bake) => [MACHINES.bake, bake] as const),
          [MACHINES.oven, hand.kitchen.oven] as const,
        ];
        for (const [machine, snapshot] of machines) {
          const [next, actions] = pureStep(machine as never, snapshot as never, event);
          const [wanted, theirs] = transition(machine as never, snapshot as never, event as never);
          expect(plain(next as never)).toEqual(plain(wanted as never));
          expect(asked(actions)).toEqual(asked(theirs as never));
          compared += asked(actions).length;
        }
      }
    }
    expect(compared).toBeGreaterThan(100);
  });

  it('leaves the old snapshot alone where a guard throws', () => {
    const bake = MACHINES.bake.provide({
      guards: {
        isAsked: () => {
          throw new Error('no');
        },
      },
    });
    const hand = new Hand();
    hand.start('a', 'levain.ripening');
    hand.press('a', 'levainSeen');
    const before = hand.kitchen.bakes['a']!;
    const kept = JSON.stringify(before.context);
    expect(() => pureStep(bake, before, { type: 'answer' })).not.toThrow();
    const other = bake.resolveState({ value: before.value, context: before.context });
    expect(() => pureStep(bake, other, { type: 'answer' })).toThrow();
    expect(JSON.stringify(other.context)).toBe(kept);
  });
});
