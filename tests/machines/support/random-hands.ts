import fc from 'fast-check';
import { MACHINE_VERSION } from '../../../machines/kitchen/kitchen.ts';
import { positionFault, readRecord } from '../../../src/core/records/read-record.ts';
import { commandRuns, type Command } from './commands.ts';
import { Driver } from './driver.ts';
import type { Hand } from './hand.ts';
import { potsRuns, type PotsCommand } from './pots-commands.ts';
import { PotsDriver } from './pots-driver.ts';

/** Where random hands go: a red run is red again with its seed. */
export interface RandomWalk {
  readonly seed: number;
  readonly runs: number;
}

/** What they did, and every stage and act they came by. */
export interface Walked {
  readonly commands: number;
  readonly facts: number;
  readonly seen: ReadonlySet<string>;
}

interface Walker {
  readonly hand: Hand;
  readonly seen: ReadonlySet<string>;
}

/** What is written can be read: a row that its own program refused would shut a kitchen out of its log. */
function mustReadBack({ records }: Hand): void {
  for (const record of records) {
    const { reason } = { reason: null, ...readRecord(record, MACHINE_VERSION) };
    const fault = reason ?? positionFault(record);
    if (fault) throw new Error(`Row ${record.seq}: ${JSON.stringify(fault)}`);
  }
}

/** Each run by a new walker, which throws where the machines go where the model would not. */
function walk<C, W extends Walker>(
  { seed, runs }: RandomWalk,
  ofRuns: fc.Arbitrary<C[]>,
  walked: (run: C[]) => W,
  also: (walker: W) => void = () => undefined,
): Walked {
  let commands = 0;
  let facts = 0;
  const seen = new Set<string>();
  fc.assert(
    fc.property(ofRuns, (run) => {
      const walker = walked(run);
      commands += run.length;
      facts += walker.hand.records.length;
      walker.seen.forEach((one) => seen.add(one));
      mustReadBack(walker.hand);
      also(walker);
    }),
    { seed, numRuns: runs, unbiased: true, endOnFailure: true },
  );
  return { commands, facts, seen };
}

/** In a kitchen with one pot. */
export const walkKitchen = (how: RandomWalk): Walked =>
  walk(how, commandRuns(250), (run: Command[]) => {
    const driver = new Driver();
    driver.run(run);
    return driver;
  });

/** At an oven of many pots; `lids`: how often a lid was called, `mostPots`: how many stood in it at once. */
export function walkPots(
  how: RandomWalk,
): Walked & { readonly lids: number; readonly mostPots: number } {
  let lids = 0;
  let mostPots = 0;
  const walked = walk(
    how,
    potsRuns(250),
    (run: PotsCommand[]) => {
      const driver = new PotsDriver();
      driver.run(run);
      return driver;
    },
    (driver) => {
      lids += driver.rung.size;
      mostPots = Math.max(mostPots, driver.mostPots);
    },
  );
  return { ...walked, lids, mostPots };
}
