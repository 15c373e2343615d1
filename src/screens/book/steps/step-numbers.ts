import type { Formula, Process } from '../../../core/formula/formula.ts';
import { limitsOf, type Limits, type ProcessPart } from '../../../core/formula/process-limits.ts';
import { gapLimits, withGap } from '../../../core/formula/touches.ts';
import { wantedDough } from '../../../core/heat/wanted.ts';
import { bookLines } from '../../../core/speech/words/book.ts';
import { processParts } from '../../../core/speech/words/notices.ts';
import { bookSteps } from '../../../core/speech/words/steps.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showHeat } from '../../../core/speech/heats.ts';
import { keyedHeat } from '../../../core/speech/keyed.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import type { Celsius, Units } from '../../../core/units.ts';

export type NumberKey = ProcessPart | 'rise' | 'fridge' | 'dough' | `touch ${number}`;

/** A number of a formula's steps: how it is told, what may be keyed, and within what it is usual. */
export interface StepNumber {
  readonly key: NumberKey;
  readonly label: string;
  readonly ask: string;
  readonly value: string;
  readonly unit: string;
  /** 'Usual: 20 to 60 min' */
  readonly usual: string;
  readonly least: number;
  readonly most: number;
  with(typed: number): Formula;
}

/** As long as a reader of formulas takes: three days, minutes. */
const MOST = 4320;
/** A wanted rise, %, as processWarnings has it. */
const RISE: Limits = { least: 50, most: 100 };
/** A fridge as processWarnings has it, °C, and as a reader takes it. */
const FRIDGE = { usual: { least: 3, most: 5 }, read: { least: -5, most: 20 } } as const;
/** Worked examples in print want 23.9 to 26.7 °C (heat/wanted.ts); and as a reader takes it. */
const DOUGH = { usual: { least: 24, most: 27 }, read: { least: 15, most: 35 } } as const;

const usualOf = ({ least, most }: Limits, unit: string): string =>
  fill(bookSteps.usual, { least, most, unit });

const withProcess = (formula: Formula, part: Partial<Process>): Formula => ({
  ...formula,
  process: { ...formula.process, ...part },
});

/** A number of minutes: 1 at least where none of it would be another process. */
const minutes = (
  key: NumberKey,
  label: string,
  now: number,
  limits: Limits,
  change: (typed: number) => Formula,
): StepNumber => ({
  ...{ key, label },
  ask: fill(bookSteps.ask, { part: label }),
  value: showLength(now),
  unit: 'min',
  usual: usualOf(limits, 'min'),
  least: key === 'retard' || key === 'warm' ? 1 : 0,
  most: MOST,
  with: change,
});

const heat = (
  key: NumberKey,
  [label, ask]: readonly [string, string],
  now: Celsius,
  { usual, read }: { readonly usual: Limits; readonly read: Limits },
  units: Units,
  change: (celsius: Celsius) => Formula,
): StepNumber => {
  const { unit, least, most, record } = keyedHeat(read, units);
  return {
    ...{ key, label, ask, unit, least, most },
    value: showHeat(now, units),
    usual: fill(bookSteps.usualHeat, {
      least: showHeat(usual.least, units),
      most: showHeat(usual.most, units),
    }),
    with: (typed) => change(record(typed)),
  };
};

const touchAt = (formula: Formula, at: number): StepNumber | null => {
  const { touches } = formula.process;
  const touch = touches[at];
  if (!touch) return null;
  const n = touches.slice(0, at + 1).filter(({ kind }) => kind === touch.kind).length;
  const label = fill(bookSteps.touch[touch.kind], { n });
  const asked = minutes(`touch ${at}`, label, touch.after, gapLimits(touches, at), (typed) =>
    withProcess(formula, { touches: withGap(touches, at, typed) }),
  );
  // In one line: there is a press under the keys.
  return { ...asked, ask: fill(bookSteps.touchAsk[touch.kind], { n }) };
};

/** One number of a formula's steps in the baker's units; null where its process does not use it. */
export function stepNumber(formula: Formula, key: NumberKey, units: Units): StepNumber | null {
  const { process } = formula;
  if (key.startsWith('touch ')) return touchAt(formula, Number(key.slice(6)));
  if (key === 'rise') {
    return {
      ...{ key, label: bookSteps.rise, ask: bookSteps.riseAsk, unit: '%' },
      value: fill(bookLines.percent, { percent: process.rise }),
      usual: usualOf(RISE, '%'),
      least: 10,
      most: 300,
      with: (rise) => withProcess(formula, { rise }),
    };
  }
  if (key === 'fridge') {
    if (process.retard === 0) return null;
    const words = [bookSteps.fridge, bookSteps.fridgeAsk] as const;
    return heat(key, words, process.fridge, FRIDGE, units, (fridge) =>
      withProcess(formula, { fridge }),
    );
  }
  if (key === 'dough') {
    const words = [bookSteps.dough, bookSteps.doughAsk] as const;
    return heat(key, words, wantedDough(formula), DOUGH, units, (doughCelsius) => ({
      ...formula,
      doughCelsius,
    }));
  }
  const part = key as ProcessPart;
  const limits = limitsOf(process)[part];
  // A tin has no lid.
  if (!limits || limits.most === 0) return null;
  return minutes(key, processParts[part], process[part], limits, (typed) =>
    withProcess(formula, { [part]: typed }),
  );
}
