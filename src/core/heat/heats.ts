/**
 * Heats of a dough, kJ per kg and kelvin: flour 1.84, water 4.185, ice near its melting point 2.05.
 * Source: handbook values (Geankoplis prints 1.958 for colder ice, Table A.4-1).
 */
export const HEAT = { flour: 1.84, water: 4.185, ice: 2.05 } as const;

/** Dough, kJ per kg and kelvin; 2.15 to 3.19 are seen in print. */
export const DOUGH_HEAT = 2.91;

/** Latent heat of ice, kJ/kg. Source: handbook value. */
export const MELTING = 334;

/** Heat of hydration, kJ per kg of flour. Source: Baker's Dictionary, 6.5 Btu/lb. */
export const HYDRATION = 15.1;

/** Water is never warmer, whatever a sum says: it would scald hands and kill the culture, °C. Judgement. */
export const WARMEST_WATER = 40;
