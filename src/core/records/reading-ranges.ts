import type { NumberSlot } from './reading-slot.ts';

/** Both ends included, in the slot's unit. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

export interface ReadingRange {
  readonly unit: '°C' | '%' | 'g';
  /** Outside it a reading is asked again, then kept and marked. */
  readonly usual: Span;
  /** Outside it a reading is refused: it is a slip of the hand or a broken probe. */
  readonly possible: Span;
}

/** Dough is mostly water: a home freezer holds it above −30 °C, and it boils at 100. */
const WET: Span = { least: -30, most: 100 };
/** What a kitchen scale shows: from a gram to a little under 100 kg. */
const SCALE: Span = { least: 1, most: 99_999 };

/**
 * What is plausible of each number, in one table. Usual ranges are judgement round the trade's
 * numbers: dough and kitchen as bakers keep them, a core on its way from the fridge to 93–99 °C,
 * rise to the end of what a tub shows, pieces as a recipe may have them. Possible ranges are
 * physics where named and judgement elsewhere.
 */
export const READING_RANGES: Readonly<Record<NumberSlot, ReadingRange>> = {
  doughTemperature: { unit: '°C', usual: { least: 10, most: 35 }, possible: WET },
  kitchenTemperature: {
    unit: '°C',
    usual: { least: 10, most: 35 },
    possible: { least: -30, most: 60 },
  },
  // Crumb is wet too; past 130 °C the probe is in the crust, or touches the pot.
  coreTemperature: {
    unit: '°C',
    usual: { least: 2, most: 101 },
    possible: { least: -30, most: 130 },
  },
  // From the cellar, or beside the oven; no bag is warmer than the air it can stand in.
  flourTemperature: {
    unit: '°C',
    usual: { least: 5, most: 35 },
    possible: { least: -30, most: 60 },
  },
  // Out of the fridge, or beside the oven.
  levainTemperature: { unit: '°C', usual: { least: 2, most: 35 }, possible: WET },
  fillingTemperature: { unit: '°C', usual: { least: 2, most: 35 }, possible: WET },
  // Bakers aim for 24–27, cooler for a slow dough; past 28 the yeasts part, past 40 they die. Judgement.
  wantedDough: { unit: '°C', usual: { least: 20, most: 29 }, possible: { least: 5, most: 40 } },
  // A winter main to a summer tank; it is liquid. Poured water is 40 °C at most, or is asked again.
  'water.tap': { unit: '°C', usual: { least: 2, most: 30 }, possible: { least: 0, most: 60 } },
  'water.bowl': { unit: '°C', usual: { least: 0, most: 40 }, possible: { least: 0, most: 100 } },
  'rise.dough': {
    unit: '%',
    usual: { least: 0, most: 150 },
    possible: { least: -50, most: 400 },
  },
  'rise.levain': {
    unit: '%',
    usual: { least: 0, most: 250 },
    possible: { least: -50, most: 600 },
  },
  'weight.dough': { unit: 'g', usual: { least: 150, most: 40_000 }, possible: SCALE },
  'weight.piece': { unit: 'g', usual: { least: 150, most: 2500 }, possible: SCALE },
  'weight.loaf': { unit: 'g', usual: { least: 120, most: 2500 }, possible: SCALE },
  firstPiece: { unit: 'g', usual: { least: 150, most: 2500 }, possible: SCALE },
};
