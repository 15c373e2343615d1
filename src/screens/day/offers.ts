import type { AskTrouble } from '../../core/day/laid/ask-trouble.ts';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import { takeChange } from '../../core/day/laid/take-change.ts';
import type { Change, PlanResult } from '../../core/day/plan/types.ts';
import { nothingPage } from '../../core/speech/words/day.ts';
import { planChanges } from '../../core/speech/words/plan.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showAway } from '../../core/speech/show-away.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import {
  tellBecause,
  tellChange,
  tellFilling,
  tellOffered,
  type AskedHours,
} from '../../core/speech/tell-plan.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { DayDraft } from '../day-draft.ts';
import { withBake, withPin } from './draft.ts';

/** One press that would do, or a few that do together. */
export interface Offer {
  readonly words: string;
  readonly take: (draft: DayDraft) => DayDraft;
}
/** Where nothing fits: what is said, and what may be pressed. */
export interface Nothing {
  readonly headline: string;
  readonly lines: readonly string[];
  readonly offers: readonly Offer[];
}

/** What an offer is told and taken with. `places`: loaves a load of a bread holds. */
export interface OfferWorld {
  readonly ask: DayAsk;
  /** The hours that nothing fitted for, what was agreed to before taken. */
  readonly asked: readonly AskedHours[];
  readonly time: (at: Instant) => string;
  readonly places: (bake: string) => number;
}

const indexOf = ({ bakes }: DayAsk, name: string): number =>
  bakes.findIndex((bake) => bake.name === name);

/** A window gives at one end only; both ends are two offers. */
const oneSided = (change: Change): readonly Change[] =>
  change.change === 'blocked' && change.endEarlierBy !== null && change.startLaterBy !== null
    ? [
        { ...change, startLaterBy: null },
        { ...change, endEarlierBy: null },
      ]
    : [change];

function taken(draft: DayDraft, change: Change, ask: DayAsk): DayDraft {
  if (change.change === 'unpin')
    return withPin(draft, indexOf(ask, change.batch), change.touch, null);
  if (change.change !== 'due') return { ...draft, taken: [...draft.taken, change] };
  const at = indexOf(ask, change.batch);
  return {
    ...draft,
    bakes: draft.bakes.map((bake, i) =>
      i === at && typeof bake.due === 'number'
        ? { ...bake, due: bake.due + change.laterBy * MINUTE }
        : bake,
    ),
  };
}

function offersOf(change: Change, { ask, asked, time, places }: OfferWorld): readonly Offer[] {
  if (change.change === 'fewerLoads') {
    const { batch, loads } = change;
    const at = indexOf(ask, batch);
    const loaves = Math.min(ask.bakes[at]!.recipe.loaves, loads * places(batch));
    return [
      {
        words: fill(nothingPage.fewer, { bake: showBread(batch), ...shown({ loaves }) }),
        take: (draft) => withBake(draft, at, { loaves }),
      },
    ];
  }
  return oneSided(change).map((one) => ({
    words: tellChange(one, time, asked)[0]!,
    take: (draft) => taken(draft, one, ask),
  }));
}

/** Where nothing else would do, bread may still be begun at once: nobody who asked for an hour is offered that before. */
const startsNow = ({ bakes }: DayAsk): readonly Offer[] =>
  bakes.flatMap(({ name, due }, at) =>
    due === null
      ? []
      : [
          {
            words: fill(nothingPage.startNow, { bake: showBread(name) }),
            take: (draft: DayDraft) => withBake(draft, at, { due: 'now' }),
          },
        ],
  );

/** The changes that were agreed to, in words. */
export const takenWords = (ask: DayAsk, time: (at: Instant) => string): string[] =>
  (ask.taken ?? []).flatMap((change, i, all) => {
    const { bakes } = all.slice(0, i).reduce(takeChange, ask);
    return tellChange(change, time, bakes).map((note) => fill(nothingPage.taken, { note }));
  });

/** What would do where nothing fits, each a press: the gentlest first. */
export function nothingFits(
  { changes, because, together = [] }: Extract<PlanResult, { fits: false }>,
  world: OfferWorld,
): Nothing {
  const { ask, asked, time } = world;
  const dues = ask.bakes.flatMap(({ due }) => due ?? []);
  const headline =
    dues.length > 0
      ? fill(planChanges.title, { time: time(Math.max(...dues)) })
      : fill(planChanges.titleFrom, { time: time(ask.bakes[0]!.startAt ?? 0) });
  const all = together.flatMap((change) => tellChange(change, time, asked));
  const bends: readonly Offer[] =
    changes.length > 0
      ? changes.flatMap((change) => offersOf(change, world))
      : together.length > 0
        ? [
            {
              words: nothingPage.allOf,
              take: (draft) => together.reduce((next, one) => taken(next, one, ask), draft),
            },
          ]
        : [];
  const offers = bends.length > 0 ? bends : startsNow(ask);
  return {
    headline,
    lines: [
      ...tellBecause(because),
      ...(all.length > 0 ? [planChanges.together, ...all] : [tellOffered(offers.length)]),
    ],
    offers,
  };
}

/** What an ask cannot be planned with, whatever the hour, and what would do. */
export function troublesFit(troubles: readonly AskTrouble[], ask: DayAsk): Nothing {
  const told = troubles.map((trouble): { lines: readonly string[]; offers: readonly Offer[] } => {
    const fewer = (bake: string, loaves: number): readonly Offer[] =>
      loaves < 1
        ? []
        : [
            {
              words: fill(nothingPage.fewer, { bake: showBread(bake), ...shown({ loaves }) }),
              take: (draft) => withBake(draft, indexOf(ask, bake), { loaves }),
            },
          ];
    switch (trouble.key) {
      case 'noBakes':
        return { lines: [nothingPage.noBakes], offers: [] };
      case 'tooManyBakes':
        return { lines: [fill(nothingPage.tooMany, { count: trouble.most })], offers: [] };
      case 'sameName':
        return { lines: [nothingPage.sameName], offers: [] };
      case 'noHour':
        return { lines: [fill(nothingPage.noHour, { bake: showBread(trouble.bake) })], offers: [] };
      case 'reversed':
        return {
          lines: [fill(nothingPage.reversed, { name: showAway(trouble.name) })],
          offers: [],
        };
      case 'neverFree':
        return { lines: [nothingPage.neverFree], offers: [] };
      case 'fridgeShort': {
        const { bake, needs, has } = trouble;
        const words = { bake: showBread(bake), count: has, ...shown({ loaves: needs }) };
        return { lines: [fill(nothingPage.fridgeShort, words)], offers: fewer(bake, has) };
      }
      case 'bowlsShort': {
        const { bake, needs, loaves } = trouble;
        const words = { bake: showBread(bake), count: needs };
        return { lines: [fill(nothingPage.bowlsShort, words)], offers: fewer(bake, loaves) };
      }
      case 'filling':
        return { lines: tellFilling(trouble.filling), offers: [] };
    }
  });
  return {
    headline: planChanges.cannot,
    lines: told.flatMap(({ lines }) => lines),
    offers: told.flatMap(({ offers }) => offers),
  };
}
