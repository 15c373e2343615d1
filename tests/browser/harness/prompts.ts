import { bulk } from '../../../src/core/speech/words/bulk.ts';
import { calls, callSubjects } from '../../../src/core/speech/words/calls.ts';
import { cool } from '../../../src/core/speech/words/cool.ts';
import { gate } from '../../../src/core/speech/words/gate.ts';
import { levain } from '../../../src/core/speech/words/levain.ts';
import { mix } from '../../../src/core/speech/words/mix.ts';
import { pots } from '../../../src/core/speech/words/names.ts';
import { ovenWords } from '../../../src/core/speech/words/oven.ts';
import { proof } from '../../../src/core/speech/words/proof.ts';
import { shape } from '../../../src/core/speech/words/shape.ts';
import { weighWords } from '../../../src/core/speech/words/weigh.ts';
import { fill } from '../../../src/core/speech/fill.ts';
import { sayNumber, type Unit } from '../../../src/core/speech/numbers.ts';

/** What is said, and what it must not be taken for. */
export interface Prompt {
  readonly says: string;
  readonly twins: readonly string[];
}

/** All that it may be taken for. */
export const choicesOf = ({ says, twins }: Prompt): readonly string[] => [says, ...twins];

/** A number with others that sound or are written much like it. */
const number = (n: number, unit: Unit, ...others: readonly number[]): Prompt => ({
  says: sayNumber(n, unit),
  twins: others.map((other) => sayNumber(other, unit)),
});

/** A prompt, and the same with one word of it swapped, each time another one. */
const prompt = (says: string, ...swaps: readonly (readonly [string, string])[]): Prompt => ({
  says,
  twins: swaps.map(([word, other]) => {
    const twin = says.replace(word, other);
    if (twin === says) throw new Error(`"${says}" has no "${word}".`);
    return twin;
  }),
});

/** One of each kind: grams, minutes said twice, degrees. The first twin can be said too. */
export const NUMBERS: readonly Prompt[] = [
  number(743, 'gram', 734, 742, 753, 643, 740, 703),
  number(18, 'minute', 80, 19, 16, 15, 28),
  number(24.6, 'degree', 24.5, 25.6, 34.6, 24.9, 20.6),
];

/** From the levain to the rack, in the order of a bake. */
export const PROMPTS: readonly Prompt[] = [
  prompt(
    fill(levain['levain.ripening'].spoken, { time: 'six thirty' }),
    ['thirty', 'thirteen'],
    ['levain', 'oven'],
  ),
  prompt(levain['levain.look'].spoken, ['levain', 'oven'], ['see', 'need']),
  prompt(
    fill(weighWords.first.spoken, { grams: sayNumber(50, 'gram'), name: 'whole rye flour' }),
    ['fifty, five zero', 'fifteen, one five'],
    ['rye', 'white'],
    ['flour', 'seeds'],
  ),
  prompt(mix['mix.first'].spoken, ['No salt', 'More salt'], ['dry', 'white'], ['Mix', 'Lift']),
  prompt(
    fill(mix['mix.rest'].spoken, { time: 'ten fifteen' }),
    ['fifteen', 'fifty'],
    ['in', 'on'],
    ['salt', 'starter'],
  ),
  prompt(mix['mix.salt'].spoken, ['first', 'last'], ['water', 'flour']),
  prompt(mix['mix.work'].spoken, ['Pinch', 'Push'], ['slips', 'sticks'], ['salt', 'starter']),
  prompt(
    fill(bulk['bulk.fold'].spoken, { touch: 'two', touches: 'three' }),
    ['two', 'one'],
    ['three', 'four'],
    ['four times', 'five times'],
  ),
  prompt(bulk['bulk.spread'].spoken, ['thin', 'thick'], ['wet', 'dry'], ['resists', 'rips']),
  prompt(bulk['bulk.roll'].spoken, ['seam down', 'seam up'], ['up', 'out']),
  prompt(
    fill(shape['shape.divide'].spoken, { loaves: 'three loaves', grams: sayNumber(905, 'gram') }),
    ['three', 'two'],
    ['five', 'nine'],
    ['hundred and', 'hundred and forty'],
  ),
  prompt(shape['shape.basket'].spoken, ['Seam up', 'Seam down'], ['basket', 'bowl']),
  prompt(
    fill(proof['proof.toFridge'].spoken, { fridgeHeat: sayNumber(5, 'degree') }),
    ['five', 'nine'],
    ['colder', 'warmer'],
    ['loaves', 'leaves'],
  ),
  prompt(proof['proof.poke'].spoken, ['warm', 'cold'], ['One', 'Nine'], ['finger', 'thumb']),
  prompt(ovenWords.before.spoken, ['hot pot', 'cold pot'], ['back', 'by'], ['pot', 'stone']),
  prompt(
    fill(ovenWords.load.spoken, { pot: pots.right }),
    ['lid on', 'lid off'],
    ['shut', 'open'],
    ['Lower', 'Lift'],
    ['right', 'left'],
  ),
  prompt(
    fill(ovenWords.lidded.spoken, { time: 'nineteen fifteen', pot: pots.left }),
    ['nineteen', 'ninety'],
    ['fifteen', 'fifty'],
    ['off', 'on'],
    ['dry', 'wet'],
  ),
  prompt(
    fill(calls.lid, { name: fill(callSubjects.lift, { pot: pots.left }) }),
    ['lift', 'leave'],
    ['left', 'right'],
    ['away', 'over'],
    ['back', 'by'],
  ),
  prompt(gate.spoken, ['does', 'did'], ['grown-up', 'child'], ['stand', 'stay']),
  prompt(
    fill(cool['cool.cooling'].spoken, { time: 'noon' }),
    ['noon', 'nine'],
    ['rack', 'rag'],
    ['cool', 'cold'],
  ),
];
