import type { Vessel } from '../formula/formula.ts';
import type { Notice } from '../formula/notice.ts';
import type { Celsius } from '../units.ts';

/** What an oven is turned to for a vessel, °C: while it heats, and from loading on. */
export interface OvenHeat {
  readonly preheat: Celsius;
  readonly bake: { readonly least: Celsius; readonly most: Celsius };
}

/** Pot and stone: seen in print. A tin: common practice, no source. */
const HEATS: Readonly<Record<Vessel, OvenHeat>> = {
  pot: { preheat: 260, bake: { least: 230, most: 250 } },
  stone: { preheat: 260, bake: { least: 230, most: 250 } },
  tin: { preheat: 230, bake: { least: 200, most: 230 } },
};

/**
 * What an oven is turned to for this vessel, °C.
 *
 * @example
 * ovenHeat('pot') // → { preheat: 260, bake: { least: 230, most: 250 } }
 */
export const ovenHeat = (vessel: Vessel): OvenHeat => HEATS[vessel];

/**
 * What an oven that reaches at most `most` °C cannot do of it: `bakeHeatShort` where it does not even
 * come to the least that loaves are baked at (pale, and longer), `preheatShort` where only the
 * heating stays below (heat the pots longer). Null where it does, or where nobody said (null).
 * Values: `got`, and what is `wanted`.
 *
 * @example
 * heatShort('pot', 240) // → { key: 'preheatShort', values: { got: 240, wanted: 260 } }
 * heatShort('pot', 220) // → { key: 'bakeHeatShort', values: { got: 220, wanted: 230 } }
 * heatShort('tin', 250) // → null
 */
export function heatShort(vessel: Vessel, most: Celsius | null): Notice | null {
  if (most === null) return null;
  const { preheat, bake } = HEATS[vessel];
  const short = (key: string, wanted: Celsius): Notice => ({ key, values: { got: most, wanted } });
  if (most < bake.least) return short('bakeHeatShort', bake.least);
  return most < preheat ? short('preheatShort', preheat) : null;
}
