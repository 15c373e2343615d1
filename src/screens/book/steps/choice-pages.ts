import { fillingWarnings } from '../../../core/formula/filling-warnings.ts';
import type { Formula, Shaping, Vessel } from '../../../core/formula/formula.ts';
import {
  fillingInOf,
  proofOf,
  withFillingIn,
  withProof,
  withShaping,
  withVessel,
  type FillingIn,
  type Proof,
} from '../../../core/formula/process-changes.ts';
import type { Equipment } from '../../../core/kitchen/equipment.ts';
import { coldWarnings, lids } from '../../../core/kitchen/warn-of.ts';
import { heatShort, ovenHeat } from '../../../core/oven/oven-heat.ts';
import { stepChoices, vesselCare, stepsLines } from '../../../core/speech/words/steps.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showDial, showHeats } from '../../../core/speech/heats.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { tellNotice } from '../../../core/speech/tell-notice.ts';
import type { Units } from '../../../core/units.ts';
import type { Choice } from './ChoiceFace.tsx';
import type { NumberKey } from './step-numbers.ts';

export type ChoiceKey = keyof typeof stepChoices;

/** The page of one step that goes one way or another. */
export interface ChoicePage {
  readonly title: string;
  /** What is chosen now, in a few words. */
  readonly now: string;
  readonly chosen: string;
  readonly choices: readonly Choice[];
  readonly care?: string;
  /** What is to be heeded of its fillings, or of this kitchen. */
  readonly told: readonly string[];
  /** The numbers that come with it; those that are not used stay away. */
  readonly numbers: readonly NumberKey[];
}

/** The cautions of fillings that how a loaf rises, and where they go in, decide about. */
const HEED = ['perishableFilling', 'cheeseStands', 'fillingCold', 'fillingFrozen'];

const heedOf = (formula: Formula, units: Units): readonly string[] =>
  fillingWarnings(formula)
    .filter(({ key }) => HEED.includes(key))
    .map((notice) => tellNotice(notice, units));

const FILLING_IN: readonly FillingIn[] = ['sheet', 'shape'];
const SHAPINGS: readonly Shaping[] = ['round', 'scoop'];
const PROOFS: readonly Proof[] = ['cold', 'warm'];
const VESSELS: readonly Vessel[] = ['pot', 'stone', 'tin'];

/** A formula as it stands and as it was kept, in a kitchen and its units. */
export interface Standing {
  readonly formula: Formula;
  /** What it had of a kind comes back with that kind. */
  readonly before: Formula;
  readonly equipment: Equipment;
  readonly units: Units;
}

const fillingIn = ({ formula, units }: Standing): ChoicePage => {
  const words = stepChoices.fillingIn;
  const chosen = fillingInOf(formula.process);
  const plain = formula.fillings.length === 0 && chosen === 'shape';
  return {
    title: words.title,
    now: plain ? words.none : words[chosen],
    chosen,
    choices: FILLING_IN.map((value) => ({
      ...{ value, label: words[value], means: words[`${value}Means`] },
      made: withFillingIn(formula, value),
    })),
    told: heedOf(formula, units),
    numbers: [],
  };
};

const shaping = ({ formula, before }: Standing): ChoicePage => {
  const words = stepChoices.shaping;
  const chosen = formula.process.shaping;
  return {
    title: words.title,
    now: words[chosen],
    chosen,
    choices: SHAPINGS.map((value) => ({
      ...{ value, label: words[value], means: words[`${value}Means`] },
      made: withShaping(formula, value, before),
    })),
    told: [],
    numbers: ['benchRest', 'cool'],
  };
};

const proof = ({ formula, before, units }: Standing): ChoicePage => {
  const words = stepChoices.proof;
  const { process } = formula;
  const chosen = proofOf(process);
  const length = showLength(chosen === 'cold' ? process.retard : process.warm);
  return {
    title: words.title,
    now: `${words[chosen]}, ${length}`,
    chosen,
    choices: PROOFS.map((value) => ({
      ...{ value, label: words[value], means: words[`${value}Means`] },
      made: withProof(formula, value, before),
    })),
    told: heedOf(formula, units),
    numbers: ['counter', 'retard', 'fridge', 'warm'],
  };
};

const vessel = ({ formula, before, equipment, units }: Standing): ChoicePage => {
  const words = stepChoices.vessel;
  const { process } = formula;
  const chosen = process.vessel;
  const heats = (of: Vessel): string => {
    const { preheat, bake } = ovenHeat(of);
    const range = showDial(bake.least, units, bake.most);
    return fill(words.heats, { got: showDial(preheat, units), range });
  };
  const short = heatShort(chosen, equipment.oven.most);
  const cold = chosen === 'pot' && proofOf(process) === 'cold' ? ` ${stepsLines.coldInPot}` : '';
  return {
    title: words.title,
    now: words[chosen],
    chosen,
    choices: VESSELS.map((value) => ({
      ...{ value, label: words[value], means: heats(value) },
      made: withVessel(formula, value, before),
    })),
    care: `${fill(vesselCare[chosen], showHeats(units))}${cold}`,
    told: [
      ...(short === null ? [] : [short]),
      ...coldWarnings(formula, equipment),
      ...lids(formula, equipment),
    ].map((notice) => tellNotice(notice, units)),
    numbers: ['preheat', 'lidded', 'open', 'recovery'],
  };
};

const PAGES: Readonly<Record<ChoiceKey, (of: Standing) => ChoicePage>> = {
  fillingIn,
  shaping,
  proof,
  vessel,
};

/** The page of a step that goes one way or another. */
export const choicePage = (key: ChoiceKey, of: Standing): ChoicePage => PAGES[key](of);
