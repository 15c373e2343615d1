import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { bakesTaught } from '../../machines/kitchen/last-belief.ts';
import { starterBelief } from '../../machines/kitchen/starter-result.ts';
import {
  daysBetween,
  feedsAfterCold,
  FRIDGE_DAYS,
  LONG_DAYS,
} from '../core/readiness/fridge-rest.ts';
import { vigourOf } from '../core/readiness/vigour.ts';
import type { Starter } from '../core/records/starter.ts';
import { starterWords as words } from '../core/speech/words/starter.ts';
import { fill } from '../core/speech/fill.ts';
import { showNumber } from '../core/speech/numbers.ts';
import { DAY, type Instant } from '../core/units.ts';
import type { House } from './house.ts';

type Told = Pick<House, 'kitchen' | 'now' | 'hour' | 'day' | 'date'>;

/** Several things, in the words for one or for more; `count` is written in digits. */
const counted = (texts: { readonly one: string; readonly more: string }, count: number): string =>
  count === 1 ? texts.one : fill(texts.more, { count });

/** '09:10', with its weekday where it is not of the last hours. */
const near = ({ now, hour, day }: Told, at: Instant): string =>
  Math.abs(at - now()) < DAY / 2 ? hour(at) : `${day(at)} ${hour(at)}`;

export const ratioOf = (flour: number): string => fill(words.ratio, { flour: showNumber(flour) });

/** The name it was given; what this program has no words for is shown as it was kept. */
export const starterName = ({ name }: Starter): string =>
  name === undefined
    ? words.unnamed
    : Object.hasOwn(words.names, name)
      ? words.names[name as keyof typeof words.names]
      : name;

/** Whole days it has stood in the fridge; null where it does not stand there. */
export const daysCold = ({ put }: Starter, now: Instant): number | null =>
  put?.where === 'fridge' ? daysBetween(put.at, now) : null;

const inFridge = (told: Told, { put, marks }: Starter, days: number): string => {
  const date = told.date(marks['until'] ?? put!.at);
  if (days === 0) return fill(words.fridgeToday, { time: near(told, put!.at), date });
  const since = counted(words.days, days);
  return fill(days < FRIDGE_DAYS ? words.fridge : words.fridgeLong, { days: since, date });
};

const onCounter = (told: Told, { put, marks }: Starter): string => {
  const { earliest, likely, latest, until } = marks;
  const now = told.now();
  if (likely === undefined || earliest === undefined || latest === undefined) {
    const by = until ?? put!.at;
    return now < by
      ? fill(words.unfed, { until: near(told, by) })
      : fill(words.hungry, { time: near(told, put!.at) });
  }
  if (now < earliest) {
    return fill(words.ripening, { time: near(told, earliest), until: near(told, latest) });
  }
  return now < (until ?? latest)
    ? fill(words.ripe, { time: near(told, likely), until: near(told, until ?? latest) })
    : fill(words.pastIt, { time: near(told, likely) });
};

/** Where it stands and how it is there, in a sentence or two. */
export function stateOf(told: Told): string {
  const { starter } = told.kitchen();
  const { put, doubt } = starter;
  if (put === undefined) return words.unknown;
  const days = daysCold(starter, told.now());
  if (days === null) return [onCounter(told, starter), doubt ? words.rough : ''].join(' ').trim();
  const feeds = feedsAfterCold(days);
  const first = feeds > 0 ? counted(words.feedsFirst, feeds) : '';
  return [inFridge(told, starter, days), first].join(' ').trim();
}

/** The caution that belongs to it: after long cold it is looked at before anything else. */
export const careOfStarter = (starter: Starter, now: Instant): string =>
  (daysCold(starter, now) ?? 0) >= LONG_DAYS ? words.long : words.care;

export const fedText = (told: Told): string | null => {
  const { fed } = told.kitchen().starter;
  return fed
    ? fill(words.fedValue, {
        ratio: ratioOf(fed.flour),
        date: told.day(fed.at),
        time: told.hour(fed.at),
      })
    : null;
};

/** How fast it is, what that rests on, and the number of it. */
export function speedOf(kitchen: Kitchen, now: Instant) {
  const vigour = vigourOf(starterBelief(kitchen, { id: '', at: now }));
  const percent = (count: number): string => fill(words.percent, { count });
  const taught = bakesTaught(kitchen);
  const { pace, part, known } = vigour;
  return {
    value: known ? fill(words.speedValue, { percent: percent(vigour.percent) }) : null,
    headline: known
      ? fill(words.speeds[pace], part === null ? {} : { part: words.parts[part] })
      : words.guess,
    taught: taught === 0 ? words.taught.none : counted(words.taught, taught),
    number: fill(words.speedNumber, {
      percent: percent(vigour.percent),
      least: percent(vigour.least),
      most: percent(vigour.most),
    }),
  };
}

/**
 * How the starter stands for a bake that begins with it; null where nobody has said. Out of the cold
 * a week is woken by the bake's own levain, longer wants feeds before.
 */
export function starterForBake(told: Told): string | null {
  const { starter } = told.kitchen();
  const { put, marks } = starter;
  const now = told.now();
  if (put === undefined) return null;
  const { earliest, latest, until } = marks;
  if (
    put.where === 'counter' &&
    earliest !== undefined &&
    latest !== undefined &&
    until !== undefined
  ) {
    if (now < earliest) {
      const times = { time: near(told, earliest), until: near(told, latest) };
      return fill(words.before.ripening, times);
    }
    if (now < until) return fill(words.before.ripeNow, { until: near(told, until) });
  }
  const days = daysCold(starter, now);
  const feeds = days === null ? 1 : feedsAfterCold(days);
  return feeds === 0 ? words.before.ready : counted(words.before.feedFirst, feeds);
}
