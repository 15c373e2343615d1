import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { beliefAtFeed, starterBelief } from '../../machines/kitchen/starter-result.ts';
import { starterWait } from '../core/day/starter-wait.ts';
import { nextLookFrom, strengthOf } from '../core/readiness/starter-strength.ts';
import type { Celsius, Instant } from '../core/units.ts';
import { starterWords as words } from '../core/speech/words/starter.ts';
import { fill } from '../core/speech/fill.ts';
import { ratioOf } from './starter-view.ts';

/** Below this share of the belief nothing is claimed; from the other on it is nearly sure. Judgement. */
const CLAIMED = 0.65;
const NEARLY = 0.85;
/** The feed a further one is reckoned with. Judgement. */
const AGAIN = 2;

/** When a feed of now would be ripe. */
export function ripeAt(kitchen: Kitchen, now: Instant, flour: number, celsius: Celsius): Instant {
  const { marks } = starterWait({
    starter: {
      signs: [],
      marks: {},
      put: { at: now, where: 'counter', fresh: true },
      fed: { at: now, flour, celsius },
    },
    now,
    prior: starterBelief(kitchen, { id: '', at: now }),
    night: null,
  });
  return marks['likely']!;
}

export interface StrengthView {
  readonly headline: string;
  readonly detail: string;
  /** In the air, without the clock times that are read off the screen. */
  readonly spoken: string;
  /** Whether a look may be told now. */
  readonly looks: boolean;
}

/** Is it strong enough to bake: an answer by two looks or more after a feed, else what is missing. */
export function strengthView(
  kitchen: Kitchen,
  now: Instant,
  hour: (at: Instant) => string,
): StrengthView {
  const { starter } = kitchen;
  const { fed } = starter;
  if (!starter.put?.fresh || fed === undefined) {
    const detail = words.strongNotFed;
    return { headline: words.strong, detail, spoken: detail, looks: false };
  }
  const found = strengthOf(starter, beliefAtFeed(kitchen, { id: '', at: now }));
  if (found === null) {
    const from = nextLookFrom(starter);
    const detail =
      from === null ? words.strongFirst : fill(words.strongAgain, { time: hour(from) });
    return { headline: words.strong, detail, spoken: words.strongFirst, looks: true };
  }
  const { answer, share } = found;
  if (share < CLAIMED) {
    const [headline, detail] = [words.strongUnclear, words.strongUnclearWhy];
    return { headline, detail, spoken: `${headline}. ${detail}`, looks: true };
  }
  const time = answer === 'once' ? hour(ripeAt(kitchen, now, AGAIN, fed.celsius)) : '';
  const then = fill(words.strengthThen[answer], { ratio: ratioOf(AGAIN), time });
  const sure = share >= NEARLY ? words.sures.nearly : words.sures.likely;
  const headline = words.strengths[answer];
  return { headline, detail: `${sure} ${then}`, spoken: `${headline}. ${sure}`, looks: true };
}
