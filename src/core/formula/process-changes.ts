import type { Formula, Process, Shaping, Vessel } from './formula.ts';
import { isWarm } from './is-warm.ts';
import type { Notice } from './notice.ts';
import { usualOven, usualProof, usualShaping } from './process-usual.ts';
import {
  hasSheet,
  MOST_TOUCHES,
  withFold,
  withoutFold,
  withoutSheet,
  withSheet,
} from './touches.ts';

/** How shaped loaves rise last: cold in the fridge, or warm. */
export type Proof = 'cold' | 'warm';
/** Where the filling goes in: on a sheet of the dough in the bulk, or as each loaf is shaped. */
export type FillingIn = 'sheet' | 'shape';

/** A process changed, or why it is not on offer: a notice told in a sentence. */
export type ChangedProcess =
  | { readonly process: Process; readonly reason?: never }
  | { readonly process: null; readonly reason: Notice };

/** What is changed: a formula's own fillings and piece decide with its process. */
type Of = Pick<Formula, 'fillings' | 'piece' | 'process'>;
/** As it was before the changes: what it had of a kind comes back with that kind. */
type Before = Pick<Formula, 'piece' | 'process'>;

const no = (key: string, values: Notice['values'] = {}): ChangedProcess => ({
  process: null,
  reason: { key, values },
});

export const proofOf = (process: Process): Proof => (isWarm(process) ? 'warm' : 'cold');
export const fillingInOf = ({ touches }: Process): FillingIn =>
  hasSheet(touches) ? 'sheet' : 'shape';

/** What spoils may stand neither in a long rise nor in the bulk: make-recipe.ts refuses it. */
const spoils = ({ fillings }: Of): ChangedProcess | null => {
  const filling = fillings.find(({ keeps }) => keeps === 'perishable');
  return filling ? no('perishableRetarded', { filling: filling.name }) : null;
};

/** Its oven's minutes, for another vessel or way of shaping; its own again where it had that. */
const ovenFor = (vessel: Vessel, shaping: Shaping, piece: number, before: Before) => {
  const { process: was } = before;
  const own = was.vessel === vessel && was.shaping === shaping && before.piece === piece;
  if (!own) return usualOven(vessel, shaping, piece);
  const { preheat, lidded, open, recovery } = was;
  return { preheat, lidded, open, recovery };
};

/** A warm rise is as long as loaves of that vessel and shape take; a cold one is as long for all. */
const proofFor = (proof: Proof, process: Process, { process: was }: Before) => {
  const alike = was.vessel === process.vessel && was.shaping === process.shaping;
  if (proofOf(was) !== proof || !(proof === 'cold' || alike)) return usualProof(proof, process);
  return { counter: was.counter, retard: was.retard, warm: was.warm };
};

/**
 * Baked in another vessel, with that vessel's usual minutes of the oven; nothing else changes.
 * Not on offer: a spooned dough without a tin (`scoopNeedsTin`).
 */
export function withVessel(formula: Of, vessel: Vessel, before: Before): ChangedProcess {
  const { process, piece } = formula;
  if (process.vessel === vessel) return { process };
  if (process.shaping === 'scoop' && vessel !== 'tin') return no('scoopNeedsTin');
  return { process: { ...process, vessel, ...ovenFor(vessel, process.shaping, piece, before) } };
}

/**
 * A cold last rise or a warm one, with the minutes of it. Not on offer: a cold one where a filling
 * spoils (`perishableRetarded`: filling).
 */
export function withProof(formula: Of, proof: Proof, before: Before): ChangedProcess {
  const { process } = formula;
  if (proofOf(process) === proof) return { process };
  const refused = proof === 'cold' ? spoils(formula) : null;
  return refused ?? { process: { ...process, ...proofFor(proof, process, before) } };
}

/**
 * Shaped by hand or spooned, with the rests, folds and oven minutes that go with it. Not on offer: to
 * spoon it where it does not bake in a tin (`spoonWantsTin`).
 */
export function withShaping(formula: Of, shaping: Shaping, before: Before): ChangedProcess {
  const { process, piece } = formula;
  if (process.shaping === shaping) return { process };
  if (shaping === 'scoop' && process.vessel !== 'tin') return no('spoonWantsTin');
  const { process: was } = before;
  const own = was.shaping === shaping;
  const { benchRest, touches, cool } = own ? was : usualShaping(shaping);
  const shaped = { ...process, shaping, benchRest, touches, cool };
  const made = {
    ...shaped,
    ...ovenFor(process.vessel, shaping, piece, before),
    ...(isWarm(process) ? proofFor('warm', shaped, before) : {}),
  };
  // What came to spoil meanwhile does not come back onto a sheet.
  return { process: spoils(formula) ? { ...made, touches: withoutSheet(touches) } : made };
}

/**
 * The filling on a sheet, or at the shaping. Not on offer, a sheet: without a filling
 * (`sheetWantsFilling`), in a spooned dough (`spoonNoSheet`), where a filling spoils
 * (`perishableRetarded`: filling), with as many touches as can be (`touchesFull`: most).
 */
export function withFillingIn(formula: Of, where: FillingIn): ChangedProcess {
  const { process, fillings } = formula;
  const { touches, shaping } = process;
  if (fillingInOf(process) === where) return { process };
  if (where === 'shape') return { process: { ...process, touches: withoutSheet(touches) } };
  if (fillings.length === 0) return no('sheetWantsFilling');
  if (shaping === 'scoop') return no('spoonNoSheet');
  const refused = spoils(formula);
  if (refused) return refused;
  const laid = withSheet(touches);
  if (laid.length > MOST_TOUCHES) return no('touchesFull', { most: MOST_TOUCHES });
  return { process: { ...process, touches: laid } };
}

/** One fold more. Not on offer: beyond as many touches as can be (`touchesFull`: most). */
export const withMoreFolds = ({ process }: Of): ChangedProcess =>
  process.touches.length >= MOST_TOUCHES
    ? no('touchesFull', { most: MOST_TOUCHES })
    : { process: { ...process, touches: withFold(process.touches) } };

/** One fold fewer. Not on offer: where there is none (`noFold`). */
export const withFewerFolds = ({ process }: Of): ChangedProcess =>
  process.touches.every(({ kind }) => kind !== 'fold')
    ? no('noFold')
    : { process: { ...process, touches: withoutFold(process.touches) } };
