import type { Doubt } from '../clock/doubt.ts';
import type { Belief } from '../readiness/belief.ts';
import type { Celsius, Grams, Instant, Minutes } from '../units.ts';

/** Where the starter's jar stands. */
export const STARTER_PLACES = ['counter', 'fridge'] as const;
export type StarterPlace = (typeof STARTER_PLACES)[number];

/** Parts of flour, and as much water, to one of starter: the feeds that are offered. Common practice, no source. */
export const FEEDS = [1, 2, 5, 10] as const;

/** What a top shows once it no longer only rises. */
export const TOPS = ['domed', 'fallen'] as const;
export type Top = (typeof TOPS)[number];

/** Hours in which nothing that does not spoil calls: a midnight, and minutes of the day after it. */
export interface NightHours {
  readonly midnight: Instant;
  readonly from: Minutes;
  readonly to: Minutes;
}

/** What is done to the starter between bakes, or seen of it. */
export type StarterDeed =
  /** One part of starter, `flour` parts of flour, as much water, in a kitchen of `celsius`. */
  | {
      readonly did: 'fed';
      readonly flour: number;
      readonly celsius: Celsius;
      readonly night?: NightHours;
    }
  | { readonly did: 'put'; readonly where: StarterPlace; readonly night?: NightHours }
  | { readonly did: 'kept'; readonly grams: Grams }
  /** A key of the catalogue's starter names. */
  | { readonly did: 'named'; readonly name: string }
  /** Another starter: what was known and learned is of the old one. */
  | { readonly did: 'renewed' }
  /** Its rise since the feed, %: doubled is 100. */
  | { readonly did: 'rose'; readonly percent: number }
  | { readonly did: 'topped'; readonly top: Top }
  /** Reminded again at `until`. */
  | { readonly did: 'later'; readonly until: Instant };

/** One thing seen of it since its feed. */
export type StarterSign = { readonly at: Instant } & (
  { readonly percent: number } | { readonly top: Top }
);

/** What is known of the one starter of a kitchen; what was never said is left out. */
export interface Starter {
  readonly name?: string;
  readonly kept?: { readonly at: Instant; readonly grams: Grams };
  readonly fed?: { readonly at: Instant; readonly flour: number; readonly celsius: Celsius };
  /** Since when it stands where. `fresh`: since its feed, and on the counter: there it rises. */
  readonly put?: { readonly at: Instant; readonly where: StarterPlace; readonly fresh?: true };
  readonly renewed?: Instant;
  /** What was seen since the feed, in order. */
  readonly signs: readonly StarterSign[];
  /** By the models: when it is ripe, until when it is good where it stands, when to be reminded. */
  readonly marks: Readonly<Record<string, Instant>>;
  /** What was believed by the signs of an earlier feed as this one began. */
  readonly known?: { readonly at: Instant; readonly belief: Belief };
  /** What the signs since the feed taught, once they were enough. */
  readonly weighed?: { readonly at: Instant; readonly belief: Belief };
  readonly doubt?: Doubt;
}

export const NO_STARTER: Starter = { signs: [], marks: {} };
