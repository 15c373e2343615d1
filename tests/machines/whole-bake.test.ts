import { describe, expect, it } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { Hand } from './support/hand.ts';
import { WHOLE_BAKE } from './support/walk.ts';

describe('a whole filled, retarded bake of two loaves through one pot', () => {
  it('walks from the read-through to its note, every step taken', () => {
    const hand = new Hand();
    for (const [name, act] of WHOLE_BAKE) {
      expect(act(hand), `${name} at ${JSON.stringify(positionOf(hand.kitchen).oven.stage)}`).toBe(
        true,
      );
    }
    expect(hand.kitchen.bakes).toEqual({});
    expect(stageOf(hand.kitchen.oven)).toBe('off');
    expect(hand.says.some((say) => say.stage === 'lift')).toBe(true);
  });

  it('replays to the same kitchen from its log, at every length, and never calls a model', () => {
    const hand = new Hand();
    for (const [, act] of WHOLE_BAKE) act(hand);
    const runs = hand.modelRuns;
    for (let n = 0; n <= hand.records.length; n += 1) {
      const { kitchen, trouble } = replay(hand.records.slice(0, n), MACHINES);
      expect(trouble).toBeNull();
      if (n > 0) expect(positionOf(kitchen)).toEqual(hand.records[n - 1]!.position);
    }
    expect(hand.modelRuns).toBe(runs);
  });
});
