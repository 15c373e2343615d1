import { describe, expect, it } from 'vitest';
import { OVEN_STAGES } from '../../src/core/records/stage.ts';
import { walkPots } from './support/random-hands.ts';

/** One seed, so that a red run is red again, and one by which six pots are full; `npm run faults` walks with a fresh one. */
const SEED = 8;

const ACTS = [
  ...['ovenOn', 'ovenHot', 'answer', 'pokeReady', 'pokeNotYet', 'pokeOver', 'pokeFlat', 'pokeNow'],
  ...[
    'scored',
    'loaded',
    'lidOff',
    'steamOut',
    'colourSeen',
    'crustReady',
    'crustNotYet',
    'crustOver',
  ],
  ...['crustOnRack', 'unloaded', 'ovenOff', 'loafFirst', 'loafLater', 'potOut'],
  ...['start', 'heard', 'takeBack', 'fewer', 'ended', 'cooled', 'handedOver', 'noted'],
];

describe('random hands at an oven of many pots', () => {
  it('never bring it anywhere the model would not, and no lid is lost or called twice', () => {
    const { commands, lids, mostPots, seen } = walkPots({ seed: SEED, runs: 36 });
    expect(commands).toBeGreaterThanOrEqual(5_000);
    expect(lids).toBeGreaterThanOrEqual(100);
    expect(mostPots).toBe(6);
    expect([...OVEN_STAGES, ...ACTS].filter((one) => !seen.has(one))).toEqual([]);
  }, 300_000);
});
