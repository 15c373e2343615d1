import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OVEN_STAGES } from '../../src/core/records/stage.ts';
import { potsRuns, type PotsCommand } from './support/pots-commands.ts';
import { PotsDriver } from './support/pots-driver.ts';

/** One seed, so that a red run is red again. */
const SEED = 20_310_621;
const RUNS = 86;

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
    let commands = 0;
    let facts = 0;
    let lids = 0;
    let mostPots = 0;
    const seen = new Set<string>();
    fc.assert(
      fc.property(potsRuns(250), (run: PotsCommand[]) => {
        const driver = new PotsDriver();
        driver.run(run);
        commands += run.length;
        facts += driver.hand.records.length;
        lids += driver.rung.size;
        mostPots = Math.max(mostPots, driver.mostPots);
        driver.seen.forEach((one) => seen.add(one));
      }),
      { seed: SEED, numRuns: RUNS, unbiased: true, endOnFailure: true },
    );
    console.log(
      `${commands} commands in ${RUNS} runs, ${facts} facts, ${lids} lid calls, ${mostPots} pots at once, seed ${SEED}`,
    );
    expect(commands).toBeGreaterThanOrEqual(10_000);
    expect(lids).toBeGreaterThanOrEqual(100);
    expect(mostPots).toBe(6);
    expect([...OVEN_STAGES, ...ACTS].filter((one) => !seen.has(one))).toEqual([]);
  }, 300_000);
});
