import type { WaitModel } from '../../../machines/kitchen/results.ts';
import type { StarterModel } from '../../../machines/kitchen/starter-result.ts';
import { MINUTE } from '../../../src/core/units.ts';

/** Minutes of each wait's first mark: plain numbers, so that a test can reckon in its head. */
export const WAITS: Readonly<Record<string, { mark: string; minutes: number }>> = {
  'levain.ripening': { mark: 'look', minutes: 300 },
  'mix.rest': { mark: 'end', minutes: 30 },
  'bulk.between': { mark: 'touch', minutes: 30 },
  'bulk.proving': { mark: 'look', minutes: 180 },
  'shape.benchRest': { mark: 'end', minutes: 20 },
  'proof.counter': { mark: 'end', minutes: 20 },
  'proof.retard': { mark: 'look', minutes: 720 },
  'proof.warm': { mark: 'turn', minutes: 60 },
  'proof.soon': { mark: 'look', minutes: 30 },
  preheating: { mark: 'hot', minutes: 45 },
  standing: { mark: 'poke', minutes: 20 },
  lidded: { mark: 'lid', minutes: 18 },
  steaming: { mark: 'vent', minutes: 15 },
  open: { mark: 'colour', minutes: 20 },
  recover: { mark: 'hot', minutes: 10 },
  'cool.cooling': { mark: 'end', minutes: 120 },
};

/** The look that a warm proof is already laid for when the oven has to go on, minutes from its entry. */
export const LAID_LOOK = 105;

/** Each °C of the dough above 24 takes this many minutes off the long wait of the bulk. */
export const MINUTES_A_DEGREE = 10;

/** No wait: the stage whose mark tells beforehand of the counter. */
const FORETELLS = 'shape.basket';
const COUNTER = { mark: 'fridge', minutes: 20 };

/** A model that a test can foretell: fixed minutes, and a warmer dough is looked at sooner. */
export const plainWait: WaitModel = ({ stage, now, seen }) => {
  const wait = stage === FORETELLS ? COUNTER : WAITS[stage];
  if (!wait) throw new Error(`No wait at ${stage}.`);
  // They come in any order; of one instant the newest comes first.
  const newest = seen
    .filter(({ reading }) => reading.what === 'doughTemperature')
    .reduce<(typeof seen)[number] | null>((a, b) => (a && a.at >= b.at ? a : b), null);
  const celsius = newest && 'celsius' in newest.reading ? newest.reading.celsius : 24;
  const shift = stage === 'bulk.proving' ? (24 - celsius) * MINUTES_A_DEGREE : 0;
  const laid =
    stage === 'proof.warm'
      ? { look: now + LAID_LOOK * MINUTE, oven: now + wait.minutes * MINUTE }
      : {};
  return {
    marks: { ...laid, [wait.mark]: now + (wait.minutes + shift) * MINUTE },
    model: 'plain',
  };
};

/** How long the plain starter waits for its feed, where it stands, minutes. */
export const STARTER_WAITS = { counter: 600, fridge: 20_160 } as const;

/** A starter's instants for tests: from where it was put, in so many minutes. */
export const plainStarter: StarterModel = ({ starter: { put } }) => ({
  marks: { remind: put!.at + STARTER_WAITS[put!.where] * MINUTE },
  model: 'plain',
});
