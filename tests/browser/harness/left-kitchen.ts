import type { LogRecord } from '../../../src/core/records/record.ts';
import type { Instant } from '../../../src/core/units.ts';
import { Hand } from '../../machines/support/hand.ts';
import { WHOLE_BAKE } from '../../machines/support/walk.ts';

/** A kitchen as it was left: its log, and the instant at which nobody looked any more. */
export interface LeftKitchen {
  readonly records: readonly LogRecord[];
  readonly at: Instant;
}

/** The clock at which the waits of a left kitchen have run for so long, minutes. */
const WAITED = 5;

const begun = (now: Instant): Hand => new Hand({ now });

/** Walks the bake `a` until its wait `name` has begun. */
const walkTo = (hand: Hand, name: string): void => {
  for (const [step, act] of WHOLE_BAKE) {
    if (step.startsWith('+') && hand.stage('a') === name) return;
    if (step.startsWith('+') && name === hand.stage('oven')) return;
    act(hand);
  }
  throw new Error(`The bake never waits at ${name}.`);
};

const left = (hand: Hand): LeftKitchen => {
  hand.turn(WAITED);
  return { records: hand.records, at: hand.now };
};

/** Flour and water rest their half hour: the salt is next, from 25 minutes on. */
export function oneRests(now: Instant): LeftKitchen {
  const hand = begun(now);
  walkTo(hand, 'mix.rest');
  return left(hand);
}

/** A loaf under the lid, which comes off in 13 minutes, and another dough that rests 25 more. */
export function lidAndRest(now: Instant): LeftKitchen {
  const hand = begun(now);
  walkTo(hand, 'lidded');
  hand.start('b', 'mix.first', ['b1']);
  hand.press('b', 'mixed');
  return left(hand);
}

/** The minute after a kitchen was left at which its salt is due, and its lid. */
export const DUE = { salt: 30 - WAITED, lid: 18 - WAITED } as const;
