import type { Celsius } from '../units.ts';

/** A fridge over this lets perishable food spoil, °C. Source: the usual food rule (USDA, 40 °F). */
export const FRIDGE_MOST: Celsius = 5;

/** The dial's place at which an oven is measured, °C. Judgement: the middle of a bake. */
export const DIAL: Celsius = 230;

/**
 * Litres of pot a kilo of dough wants: it springs to some 2.5 litres, and the lid must not touch it.
 * Judgement, beside the usual 3 to 5 litres for 900 g (common practice, no source).
 */
export const POT_LITRES_A_KILO = 3.3;

/** What can be set, both ends included. Judgement: what home kitchens hold. */
export const LIMITS = {
  oven: { least: 180, most: 320 },
  atDial: { least: 150, most: 320 },
  preheat: { least: 10, most: 120 },
  parchment: { least: 150, most: 320 },
  // Up to the highest town there is.
  height: { least: 0, most: 5000 },
  pots: { least: 1, most: 6 },
  litres: { least: 2, most: 10 },
  tins: { least: 1, most: 12 },
  stones: { least: 1, most: 6 },
  fridge: { least: 0, most: 15 },
  holds: { least: 1, most: 36 },
  bowls: { least: 1, most: 12 },
  kilos: { least: 1, most: 10 },
  bowlLitres: { least: 1, most: 40 },
  /** Windows of the week. */
  week: { least: 0, most: 12 },
} as const;
