/** How near a model's rows must come, in `unit`: every row within `most`, their mean within `mean`. */
export interface Tolerance {
  readonly unit: string;
  readonly most: number;
  readonly mean: number;
  readonly why: string;
}

export type Model =
  | 'formula'
  | 'scale of a formula'
  | 'exact units'
  | 'clock'
  | 'hours of the clock'
  | 'bakers’ hours'
  | 'rise'
  | 'proof'
  | 'warm proof'
  | 'measured yeast'
  | 'heat drift'
  | 'conduction'
  | 'heat of a mix'
  | 'water by rule'
  | 'ice'
  | 'readiness'
  | 'oven'
  | 'air pressure'
  | 'boiling'
  | 'crumb'
  | 'effective diffusivity'
  | 'heat of a fridge'
  | 'usable cost'
  | 'labels';

/** Models whose rows differ by a share of what is expected, in %; the others in their own unit. */
export const RELATIVE: readonly Model[] = ['formula', 'clock'];

export const TOLERANCES: Readonly<Record<Model, Tolerance>> = {
  formula: { unit: '%', most: 0.15, mean: 0.05, why: 'sheets print three or four digits' },
  'scale of a formula': {
    unit: 'g',
    most: 2.5,
    mean: 1.25,
    why: 'half of a 5 g step, half of that on average',
  },
  'exact units': { unit: '', most: 0.005, mean: 0.002, why: 'half of the last digit printed' },
  clock: { unit: '%', most: 0.15, mean: 0.05, why: 'values given in three or four digits' },
  'hours of the clock': { unit: 'h', most: 0.01, mean: 0.006, why: 'given in hundredths' },
  'bakers’ hours': { unit: 'h', most: 0.25, mean: 0.05, why: 'a quarter of an hour is no miss' },
  rise: { unit: '%', most: 0.6, mean: 0.4, why: 'given in whole percents' },
  proof: { unit: '', most: 0.006, mean: 0.004, why: 'given in hundredths' },
  'warm proof': { unit: 'min', most: 0, mean: 0, why: 'the range is what is seen' },
  'measured yeast': { unit: '', most: 0, mean: 0, why: 'the range is what was measured' },
  'heat drift': { unit: '°C', most: 0.001, mean: 0.0005, why: 'given in thousandths' },
  conduction: { unit: '', most: 0.0001, mean: 0.00005, why: 'the table prints four decimals' },
  'heat of a mix': { unit: '°C', most: 0.03, mean: 0.015, why: 'given in hundredths' },
  'water by rule': { unit: '°F', most: 0.001, mean: 0.001, why: 'whole degrees are printed' },
  ice: { unit: 'lb/lb', most: 0.002, mean: 0.002, why: 'the table is printed to .005' },
  readiness: { unit: '', most: 0.0006, mean: 0.0003, why: 'given in thousandths' },
  oven: { unit: 'min', most: 0.05, mean: 0.02, why: 'given in minutes and tenths' },
  'air pressure': {
    unit: 'hPa',
    most: 0.1,
    mean: 0.05,
    why: 'given in tenths; weather moves it by 20',
  },
  crumb: { unit: '', most: 0.005, mean: 0.005, why: 'given in three digits' },
  'effective diffusivity': { unit: '', most: 0, mean: 0, why: 'the range is what is known' },
  'heat of a fridge': { unit: 'kJ', most: 0.5, mean: 0.5, why: 'given in whole kJ' },
  labels: { unit: '', most: 0, mean: 0, why: 'counts and places are whole' },
  boiling: {
    unit: '°C',
    most: 0.06,
    mean: 0.03,
    why: 'a probe shows tenths; weather moves it by half',
  },
  'usable cost': { unit: '', most: 0.00005, mean: 0.00005, why: 'printed in four decimals' },
};
