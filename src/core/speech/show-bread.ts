import { shortName } from './short-name.ts';
import { inEnglish, tongue, twinned } from './tongue.ts';
import { breadNames } from './words/breads.ts';

/** A copy, and the second of a kind in a plan, has a number behind its name. */
const NUMBERED = /^(.*?)( \d+)?$/su;

function shown(name: string): string {
  const [, plain = name, number = ''] = NUMBERED.exec(name) ?? [];
  const ids = Object.keys(breadNames) as (keyof typeof breadNames)[];
  const id = inEnglish(() => ids.find((one) => breadNames[one] === plain));
  return id === undefined ? name : `${breadNames[id]}${number}`;
}

/**
 * A bread's name in the tongue that stands: every page, paper and sentence names it by this. Formulas, facts
 * and files keep the English name of those that come with the program; a baker's own is called what its
 * baker calls it.
 *
 * @example showBread('Lane wheat 2') // in German: 'Gassenbrot 2'
 */
export const showBread = (name: string): string =>
  tongue() === 'en' ? name : twinned(() => shown(name));

/** The same in a word or two, beside other bakes: 'Cherry'. */
export const showShort = (name: string): string => twinned(() => shortName(showBread(name)));
