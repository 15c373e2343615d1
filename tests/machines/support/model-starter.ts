import type { StarterDeed } from '../../../src/core/records/starter.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import { pick } from './choices.ts';
import type { ModelCall } from './model.ts';
import { STARTER_WAITS } from './waits.ts';

/** Where the starter should stand. `fresh`: since its feed. */
export interface ModelStarter {
  where: 'counter' | 'fridge' | null;
  since: Instant;
  fresh: boolean;
  remind: Instant | null;
}

export const DEEDS = [
  'fed',
  'put',
  'kept',
  'named',
  'renewed',
  'rose',
  'topped',
  'later',
] as const satisfies readonly StarterDeed['did'][];

/** It is put somewhere, and waits there for its feed. */
export const put = (
  starter: ModelStarter,
  where: 'counter' | 'fridge',
  since: Instant,
  fresh = false,
): void => {
  const remind = since + STARTER_WAITS[where] * MINUTE;
  Object.assign(starter, { where, since, fresh, remind });
};

/** One deed on the model: false where it makes no sense. */
export const tend = (starter: ModelStarter, deed: StarterDeed, at: Instant): boolean => {
  switch (deed.did) {
    case 'fed':
      put(starter, 'counter', at, true);
      return deed.flour > 0;
    case 'put':
      if (deed.where === starter.where) return false;
      put(starter, deed.where, at);
      return true;
    case 'rose':
    case 'topped':
      // The plain model of tests reckons anew from where it stands.
      if (starter.fresh) put(starter, 'counter', starter.since, true);
      return starter.fresh;
    case 'later': {
      const calls = starter.remind !== null && starter.remind <= at;
      const soon = deed.until > at && deed.until <= at + 7 * 24 * 60 * MINUTE;
      if (calls && soon) starter.remind = deed.until;
      return calls && soon;
    }
    case 'renewed':
      Object.assign(starter, { where: null, since: 0, fresh: false, remind: null });
      return true;
    case 'kept':
    case 'named':
      return true;
  }
};

/** Its call, if it stands: in the fridge it makes no sound. */
export const starterCall = ({ where, remind }: ModelStarter, now: Instant): ModelCall[] =>
  where === null || remind === null || remind > now
    ? []
    : [
        {
          id: `starter:${where}:${remind}`,
          who: 'starter',
          kind: 'look',
          since: remind,
          mute: where === 'fridge',
        },
      ];

/** A deed of any kind, some that make no sense among them. */
export const deedOf = (now: Instant, a: number, b: number): StarterDeed => {
  const days = (n: number): Instant => now + n * 24 * 60 * MINUTE;
  return pick<StarterDeed>(
    [
      { did: 'fed', flour: pick([1, 2, 5, 0], b)!, celsius: 18 + (b % 10) },
      { did: 'fed', flour: 1, celsius: 24 },
      { did: 'put', where: b % 2 === 0 ? 'fridge' : 'counter' },
      { did: 'kept', grams: b % 200 },
      { did: 'named', name: 'rye' },
      { did: 'renewed' },
      { did: 'rose', percent: b % 200 },
      { did: 'topped', top: b % 2 === 0 ? 'domed' : 'fallen' },
      { did: 'later', until: days(pick([1, 2, 7, 8, 0, -1], b)!) },
    ],
    a,
  )!;
};
