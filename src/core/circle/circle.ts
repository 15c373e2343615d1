import type { MinuteOfDay } from '../kitchen/equipment.ts';
import type { Grams, Instant } from '../units.ts';
import type { DayKey } from './day-key.ts';

/** One who has bread of this baker. All of it stays on this tablet. */
export interface Neighbour {
  readonly id: string;
  /** A first name or a mark, up to 40 characters. */
  readonly name: string;
  /** What they must not eat, as core/formula/allergens.ts keeps it. */
  readonly watch: readonly string[];
}

/** So many loaves of one bread. `bread`: its formula's id. `grams`: of a cool loaf; null: as its piece comes out. */
export interface OrderLine {
  readonly bread: string;
  readonly count: number;
  readonly grams: Grams | null;
  /** Sliced before it is handed over. */
  readonly cut: boolean;
}

/** What one neighbour has of one bake day. `day`: when the bread is fetched. */
export interface Order {
  readonly id: string;
  /** The neighbour's id. */
  readonly who: string;
  readonly day: DayKey;
  /** When it is fetched; null: nobody said. */
  readonly at: MinuteOfDay | null;
  readonly lines: readonly OrderLine[];
  readonly paid: boolean;
  /** When it was handed over; null: not yet. */
  readonly handed: Instant | null;
  /** When it was written down. */
  readonly made: Instant;
  /** The standing order it came of; null: of none. */
  readonly standing: string | null;
}

/** The same every week, from one day on. Its order of a day is written when something of it is changed. */
export interface Standing {
  readonly id: string;
  readonly who: string;
  /** 0: Sunday. */
  readonly weekday: number;
  readonly at: MinuteOfDay | null;
  readonly lines: readonly OrderLine[];
  readonly from: DayKey;
  /** The last day; null: on and on. */
  readonly until: DayKey | null;
  /** Days it is left out. */
  readonly skips: readonly DayKey[];
}

/** What stands in the store cupboard under one name, and what its packet says. */
export interface Ingredient {
  /** ingredientKey(name): small letters, one blank. */
  readonly id: string;
  readonly name: string;
  /** What a pack costs, in the circle's currency, and the share of it that can be used, over 0 to 1. */
  readonly pack: { readonly grams: Grams; readonly cost: number; readonly usable: number } | null;
  /** Counted so much at an instant; what bakes begun since then used goes off it. */
  readonly counted: { readonly grams: Grams; readonly at: Instant } | null;
  /** What it is made of by its packet, in the packet's order; null: nobody has said; none: nothing but itself. */
  readonly madeOf: readonly string[] | null;
}

/** Whose list of allergens a label goes by. */
export const LABEL_LISTS = ['eu', 'us', 'canada'] as const;
export type LabelList = (typeof LABEL_LISTS)[number];
export const LABEL_PAPERS = ['a4', 'letter', 'roll'] as const;
export type LabelPaper = (typeof LABEL_PAPERS)[number];

/** How this circle is run. Null is *not said*. */
export interface CircleWays {
  /** On a bake day: from the first loading to the last loaf out. */
  readonly oven: { readonly from: MinuteOfDay; readonly to: MinuteOfDay } | null;
  /** Orders close so many days before, at a minute of that day. */
  readonly closes: { readonly days: number; readonly at: MinuteOfDay } | null;
  readonly list: LabelList;
  readonly paper: LabelPaper;
  /** The maker's own lines on a label. */
  readonly lines: readonly string[];
  /** ISO 4217. */
  readonly currency: string;
  /** What a loaf costs besides what is in it: bag, oven. */
  readonly besides: number | null;
  /** A price is so many times the cost. */
  readonly times: number | null;
}

export interface Circle {
  readonly neighbours: readonly Neighbour[];
  readonly orders: readonly Order[];
  readonly standing: readonly Standing[];
  readonly ingredients: readonly Ingredient[];
  readonly ways: CircleWays;
}

/** Before anyone has said. */
export const CIRCLE: Circle = {
  neighbours: [],
  orders: [],
  standing: [],
  ingredients: [],
  ways: {
    oven: null,
    closes: null,
    list: 'eu',
    paper: 'a4',
    lines: [],
    currency: 'EUR',
    besides: null,
    times: null,
  },
};
