import type { Flour, Formula, LevainFlour } from './formula.ts';
import { levainShares } from './levain-shares.ts';
import type { Notice } from './notice.ts';
import { readFormula } from './read-formula.ts';

/** One line in % of a formula's flour. */
export interface Percent {
  readonly id: string;
  readonly pct: number;
}

/**
 * A formula as many books print it: everything in % of the flour in the bowl, the levain's own left
 * out of the count. `water` is the bowl's, all stages of it; `levain` is the levain's whole weight.
 */
export interface BowlSheet {
  /** Flours of the bowl; all `pct` together are 100. */
  readonly flours: readonly Percent[];
  readonly water: number;
  readonly levain: number;
  /** 1.0 is 100 %. */
  readonly levainHydration: number;
  /** What the levain's flour is made of; all `pct` together are 100. */
  readonly levainFlours: readonly LevainFlour[];
  readonly salt: number;
  readonly fillings: readonly Percent[];
}

/** Shares under this are a rounding of the last bits. */
const BIT = 1e-9;

/** All of it, where the last bits of a division say a little more. */
const atMost100 = (pct: number): number => (pct > 100 && pct < 100 + BIT ? 100 : pct);

export const sumOf = (parts: readonly Percent[]): number =>
  parts.reduce((sum, { pct }) => sum + pct, 0);

/** The levain's flours in %, in the formula's order; those it has none of left out. */
const mixOf = (flours: readonly Flour[], levain: Formula['levain']): readonly LevainFlour[] =>
  levainShares(flours, levain)
    .map((share, i) => ({ id: flours[i]!.id, pct: atMost100((share / levain.pff) * 100) }))
    .filter(({ pct }) => pct > BIT);

/**
 * A formula in % of its bowl's flour: bowl = 1 − PFF of all flour, every % of all flour / bowl; levain
 * PFF·(1 + h)/bowl; water (H − PFF·h)/bowl. Below 0 where the levain is too wet or wants more of a
 * flour than there is.
 * Source: arithmetic. Failure: none; PFF is under 1.
 */
export function toBowl({ flours, hydration, salt, fillings, levain }: Formula): BowlSheet {
  const bowl = 1 - levain.pff;
  const shares = levainShares(flours, levain);
  const ofBowl = ({ id, pct }: Percent): Percent => ({ id, pct: pct / bowl });
  return {
    flours: flours.map(({ id, pct }, i) => ofBowl({ id, pct: pct - 100 * (shares[i] ?? 0) })),
    water: (hydration - 100 * levain.pff * levain.hydration) / bowl,
    levain: (100 * levain.pff * (1 + levain.hydration)) / bowl,
    levainHydration: levain.hydration,
    levainFlours: mixOf(flours, levain),
    salt: salt / bowl,
    fillings: fillings.map(ofBowl),
  };
}

export type FromBowl =
  | { readonly formula: Formula; readonly reason?: never }
  | { readonly formula: null; readonly reason: Notice };

/** Whether two mixes of flours are the same, whatever their order. */
const sameMix = (a: readonly Percent[], b: readonly Percent[]): boolean =>
  a.length === b.length &&
  a.every(({ id, pct }) => b.some((one) => one.id === id && Math.abs(one.pct - pct) < 1e-6));

/**
 * The formula whose sheet in % of the bowl's flour is `sheet`. What a sheet does not hold (names, the
 * second water's share, how it is made) is `base`'s. F_T = 100 + l/(1 + h), H = (w + l·h/(1 + h))/F_T,
 * every other % × 100/F_T. The levain's mix is kept only where it is not what it would be anyway.
 *
 * No answer, with a reason: `bowlFlours` (the flours are not 100 % together: `sum`), or
 * `formulaUnreadable` (path, expected, got).
 * Source: arithmetic; 1000 flour, 750 water, 200 levain: 75 % and 20 % here, 77.3 % and 9.1 % of all flour.
 */
export function fromBowl(base: Formula, sheet: BowlSheet): FromBowl {
  const sum = sumOf(sheet.flours);
  if (!(Math.abs(sum - 100) <= 0.01)) {
    return { formula: null, reason: { key: 'bowlFlours', values: { sum } } };
  }
  const h = sheet.levainHydration;
  const levainFlour = sheet.levain / (1 + h);
  const whole = (100 + levainFlour) / 100;
  const pctOf = (parts: readonly Percent[], id: string): number =>
    parts.find((one) => one.id === id)?.pct ?? 0;
  const flours = base.flours.map((flour) => ({
    ...flour,
    pct: atMost100(
      (pctOf(sheet.flours, flour.id) + (levainFlour * pctOf(sheet.levainFlours, flour.id)) / 100) /
        whole,
    ),
  }));
  const { flours: _, ...plain } = base.levain;
  const levain: Formula['levain'] = { ...plain, pff: levainFlour / 100 / whole, hydration: h };
  const usual = sameMix(mixOf(flours, levain), sheet.levainFlours);
  const read = readFormula({
    ...base,
    flours,
    hydration: (sheet.water + levainFlour * h) / whole,
    salt: sheet.salt / whole,
    fillings: base.fillings.map((filling) => ({
      ...filling,
      pct: pctOf(sheet.fillings, filling.id) / whole,
    })),
    levain: usual ? levain : { ...levain, flours: sheet.levainFlours },
  });
  return read.formula
    ? { formula: read.formula }
    : { formula: null, reason: { key: 'formulaUnreadable', values: { ...read.reason } } };
}
