import type { Instant } from '../../src/core/units.ts';
import { snoozeEnds, sounding, type Call } from '../attention/attention.ts';
import type { Kitchen } from './kitchen.ts';
import { metaOf } from './stage-of.ts';

/** The instant at which a machine's wait runs out. */
export interface Due {
  readonly who: string;
  readonly at: Instant;
}

type Waiting = Parameters<typeof metaOf>[0] & {
  readonly context: { readonly marks: Readonly<Record<string, Instant>> };
};

/** A stage's own deadline, or null where it waits for nothing (or its mark is not there yet). */
export const deadlineOf = (snapshot: Waiting): Instant | null => {
  const { waits } = metaOf(snapshot);
  return waits === undefined ? null : (snapshot.context.marks[waits] ?? null);
};

/** The next deadline of all; the oven before the bakes, the bakes by id, attention last. */
export const nextDue = (kitchen: Kitchen): Due | null => {
  const dues = [
    { who: 'oven', at: deadlineOf(kitchen.oven) },
    ...Object.keys(kitchen.bakes)
      .toSorted()
      .map((who) => ({ who, at: deadlineOf(kitchen.bakes[who]!) })),
    { who: 'attention', at: snoozeEnds(kitchen.attention.context) },
  ].filter((due): due is Due => due.at !== null);
  return dues.reduce<Due | null>((first, due) => (first && first.at <= due.at ? first : due), null);
};

/** What the runner has to bring about: one alarm armed, one call sounding. */
export interface Wanted {
  readonly alarmAt: Instant | null;
  readonly ringing: Call | null;
}

export const wanted = (kitchen: Kitchen): Wanted => ({
  alarmAt: nextDue(kitchen)?.at ?? null,
  ringing: sounding(kitchen.attention.context)[0] ?? null,
});
