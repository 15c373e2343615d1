import { aloud } from '../../../src/core/speech/aloud.ts';
import { clipId } from '../../../src/core/speech/clips.ts';
import { shortName } from '../../../src/core/speech/short-name.ts';
import type { Found } from './collect.ts';
import { NUMBER_KIT } from './kit.ts';
import { packOf, PACKS, type Pack } from './spoken.ts';

/** One clip to be made: what it says, as it is written with its marks, and the file it goes into. */
export interface Phrase {
  readonly id: string;
  readonly text: string;
  readonly pack: Pack;
}

/**
 * What the formulas that come with the program name and the program says: flours, at the scale, and
 * the breads. Fillings are weighed off a list that is shown.
 */
export interface Named {
  readonly name: string;
  readonly flours: readonly { readonly name: string }[];
}

/** A sentence's fixed words between its values, marks kept; the sign of a value is said with it. */
const fixedIn = (text: string): readonly string[] =>
  aloud(text.replace(/\} min\b/g, '}'))
    .split(/(?<=[.?!])\s+|\{\w+\}/)
    .map((part) => part.replace(/^[\s,:.;?]+/, '').trim())
    .filter((part) => clipId(part) !== '');

/** What a recipe's lines are called beside the formula's own names: src/core/formula. */
export const LINE_NAMES = ['water', 'second water', 'levain', 'salt', 'starter', 'flour'];

const namesIn = (formulas: readonly Named[]): readonly string[] => [
  ...LINE_NAMES,
  ...formulas.flatMap(({ flours }) => flours.map(({ name }) => name)),
];

/** Every clip, each once, in the order of the files: numbers first, then as a bake goes. */
export function phrasesOf(texts: readonly Found[], formulas: readonly Named[]): readonly Phrase[] {
  const found = new Map<string, Phrase>();
  const add = (pack: Pack, text: string): void => {
    const id = clipId(text);
    if (!found.has(id)) found.set(id, { id, text, pack });
  };
  for (const text of NUMBER_KIT) add('numbers', text);
  for (const pack of PACKS)
    for (const { where, text } of texts)
      if (packOf(where) === pack) for (const part of fixedIn(text)) add(pack, part);
  for (const name of namesIn(formulas)) add('dough', `of ${name}`);
  for (const { name } of formulas) add('oven', `${shortName(name)} bake`);
  return [...found.values()].sort((a, b) => PACKS.indexOf(a.pack) - PACKS.indexOf(b.pack));
}
