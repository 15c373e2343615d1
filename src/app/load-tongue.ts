import { speakIn, TONGUES, type Catalogues, type Tongue } from '../core/speech/tongue.ts';

/** Where the catalogues of each tongue are; English is in the program itself. */
const LOAD: Readonly<Record<Exclude<Tongue, 'en'>, () => Promise<Catalogues>>> = {
  fr: () => import('../core/speech/fr.ts').then((its) => its.fr),
  de: () => import('../core/speech/de.ts').then((its) => its.de),
};

/**
 * The tablet's own tongue, where the program has it: the first of its languages that is one.
 *
 * @example tongueOf(['de-AT', 'en']) // 'de'
 */
export const tongueOf = (languages: readonly string[]): Tongue => {
  const [wanted] = languages.flatMap((tag) => {
    const found = TONGUES.find((tongue) => tag.toLowerCase().split(/[-_]/)[0] === tongue);
    return found ?? [];
  });
  return wanted ?? 'en';
};

/**
 * Has all words read in a tongue, and says on the page which it is. Await it before the first render.
 * Where its words cannot be had the page stands in English: better than none.
 */
export async function loadTongue(
  tongue: Tongue,
  root: Pick<HTMLElement, 'lang'>,
  load: Readonly<Record<Exclude<Tongue, 'en'>, () => Promise<Catalogues>>> = LOAD,
): Promise<void> {
  const words = tongue === 'en' ? null : await load[tongue]().catch(() => null);
  if (words === null) speakIn('en');
  else speakIn(tongue, words);
  root.lang = words === null ? 'en' : tongue;
}
