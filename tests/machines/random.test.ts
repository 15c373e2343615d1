import { describe, expect, it } from 'vitest';
import { BAKE_STAGES, OVEN_STAGES } from '../../src/core/records/stage.ts';
import { DEEDS } from './support/model-starter.ts';
import { BAKE_ACTS, OVEN_ACTS } from './support/events.ts';
import { walkKitchen } from './support/random-hands.ts';

/** What is only said where pots are told apart: many-pots.test.ts. */
const POTS: readonly string[] = ['loafFirst', 'loafLater', 'potOut'];

/** One seed, so that a red run is red again; `npm run faults` walks with a fresh one. */
const SEED = 20_310_503;

describe('random hands in the kitchen', () => {
  it('never bring it anywhere the model would not', () => {
    const { commands, seen } = walkKitchen({ seed: SEED, runs: 80 });
    expect(commands).toBeGreaterThanOrEqual(5_000);
    // With one pot the oven and its lane are one place: *baking* is where its lane stands.
    const hot = OVEN_STAGES.filter((stage) => stage !== 'baking');
    const places = [...BAKE_STAGES.slice(0, -2), ...hot];
    expect(places.filter((stage) => !seen.has(stage))).toEqual([]);
    const acts = [
      ...BAKE_ACTS,
      ...OVEN_ACTS.filter((act) => !POTS.includes(act)).map((act) => `oven:${act}`),
    ];
    // The plain waits of these runs carry no tasks: tasks.test.ts walks them.
    expect(acts.filter((act) => !seen.has(act) && !act.endsWith('taskDone'))).toEqual([]);
    for (const kind of ['start', 'reading', 'correct', 'heard', 'snoozed', 'takeBack', 'jump']) {
      expect(seen).toContain(kind);
    }
    for (const did of DEEDS) expect(seen).toContain(`starter:${did}`);
  }, 120_000);
});
