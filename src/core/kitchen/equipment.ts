import type { EarEngine } from '../ear/person.ts';
import type { Metres } from '../oven/boiling.ts';
import type { Pace } from '../speech/pace.ts';
import type { WeeklyWindow } from '../day/plan/wall-clock.ts';
import type { Celsius, Instant, Minutes } from '../units.ts';
import type { PedalKeys } from './pedal-keys.ts';

export const POT_MATERIALS = ['bareIron', 'enamel', 'clay', 'glass'] as const;
export type PotMaterial = (typeof POT_MATERIALS)[number];
export const KNOBS = ['heatProof', 'plastic'] as const;
export type Knob = (typeof KNOBS)[number];

/** One pot with a lid. Null: the baker has not said. */
export interface Pot {
  readonly material: PotMaterial | null;
  readonly litres: number | null;
  readonly knob: Knob | null;
  /** Whether its maker allows cold dough in it while it is hot; nobody needs to ask of bare iron. */
  readonly cold: boolean | null;
}

/** Steps a kitchen scale shows, g. */
export const SCALE_STEPS = [0.1, 1, 2, 5] as const;
export type ScaleStep = (typeof SCALE_STEPS)[number];

/** Minutes since midnight, on the tablet's clock. */
export type MinuteOfDay = number;

/** From the first quiet minute to the first that is not, over midnight or not. */
export interface QuietHours {
  readonly from: MinuteOfDay;
  readonly to: MinuteOfDay;
}

/** How the calls were heard from where the baker will be. `sightOnly`: no sound here, and accepted. */
export const HEARD = ['yes', 'no', 'sightOnly'] as const;
export type Heard = (typeof HEARD)[number];

/**
 * What this kitchen bakes with, kept on the tablet and in no fact. Null is *not said*, never a
 * guess: nothing is warned of on the strength of it.
 */
export interface Equipment {
  /**
   * `most`: what it reaches. `steams`: whether it keeps steam in for a loaf on a stone. `atDial`:
   * what a thermometer in it read with the dial at DIAL. `preheat`: until it is hot through.
   * `parchment`: what the paper's box says it takes. `timer`: whether it goes on by itself.
   */
  readonly oven: {
    readonly most: Celsius | null;
    readonly steams: boolean | null;
    readonly atDial: Celsius | null;
    readonly preheat: Minutes | null;
    readonly parchment: Celsius | null;
    readonly timer: boolean | null;
  };
  /** Above the sea; it lowers where water boils, and with it how hot a core gets. */
  readonly height: Metres | null;
  readonly pots: readonly Pot[];
  /** Loaves in one load: tins side by side, and places on the stone. */
  readonly tins: number;
  readonly stones: number;
  readonly fridge: { readonly celsius: Celsius | null; readonly holds: number | null };
  /** `kilos`: dough one bowl takes by hand. `litres`: the biggest bowl. */
  readonly bowls: {
    readonly count: number | null;
    readonly kilos: number;
    readonly litres: number | null;
  };
  readonly scale: ScaleStep | null;
  /** Calls that can wait are seen and not heard meanwhile; null where no hour is quiet. */
  readonly quiet: QuietHours | null;
  /** When nobody's hands are there, week by week: asleep, at work, at the school's gate. */
  readonly week: readonly WeeklyWindow[];
  readonly sound: { readonly at: Instant; readonly heard: Heard } | null;
  /** Whether the tablet's own voice reads what no clip says: names of breads and fillings. */
  readonly readsOwn: boolean;
  /** How fast the voice speaks here. */
  readonly pace: Pace;
  /** What a pedal's keys were taught to do. */
  readonly pedal: PedalKeys;
  /** Whether the keys of headphones and speakers press as a pedal does. */
  readonly mediaKeys: boolean;
  /** What understands a voice here, if anything shall. */
  readonly ear: 'off' | EarEngine;
  /** When the log was last saved as a file. */
  readonly savedAt: Instant | null;
}

export const ANY_POT: Pot = { material: null, litres: null, knob: null, cold: null };

export const EVERY_DAY: readonly number[] = [0, 1, 2, 3, 4, 5, 6];

/** A week in which nothing was said but that one sleeps. Judgement. */
export const USUAL_WEEK: readonly WeeklyWindow[] = [
  { name: 'asleep', weekdays: EVERY_DAY, from: 22 * 60 + 30, to: 6 * 60 + 30, canBend: true },
];

/**
 * Before anyone has said: one pot, 3 kg a bowl by hand (common practice, no source), asleep from half
 * past ten to half past six (judgement).
 */
export const EQUIPMENT: Equipment = {
  oven: { most: null, steams: null, atDial: null, preheat: null, parchment: null, timer: null },
  height: null,
  pots: [ANY_POT],
  tins: 2,
  stones: 1,
  fridge: { celsius: null, holds: null },
  bowls: { count: null, kilos: 3, litres: null },
  scale: null,
  quiet: null,
  week: USUAL_WEEK,
  sound: null,
  readsOwn: false,
  pace: 'grown',
  pedal: {},
  mediaKeys: false,
  ear: 'off',
  savedAt: null,
};
