import { herbNames } from '../../core/speech/words/swaps.ts';
import { fill } from '../../core/speech/fill.ts';

/** What herbs are before a swap and after it. */
export type HerbState = 'fresh' | 'dried';

/** French has the word behind the herb, by its gender and number; many fresh ones are written like one. */
const FRENCH = {
  fresh: { séché: 'frais', séchés: 'frais', séchée: 'fraîche', séchées: 'fraîches' },
  dried: { frais: 'séché', fraîche: 'séchée', fraîches: 'séchées' },
} as const;
const GERMAN = { fresh: 'frisch', dried: 'getrocknet' } as const;

const cased = (like: string, word: string): string =>
  /^\p{Lu}/u.test(like) ? `${word.charAt(0).toUpperCase()}${word.slice(1)}` : word;

/**
 * Herbs by their name, fresh or dried, in whichever tongue their baker wrote it; where it does not say which
 * they were, in the tongue that stands.
 *
 * @example
 * herbName('fresh thyme', 'dried') // → 'dried thyme'
 * herbName('frische Petersilie', 'dried') // → 'getrocknete Petersilie'
 * herbName('sauge fraîche', 'dried') // → 'sauge séchée'
 */
export function herbName(name: string, to: HerbState): string {
  const english = /^(fresh|dried)(?=\s)/i;
  if (english.test(name)) return name.replace(english, (was) => cased(was, to));
  const german = /(?<!\p{L})(frisch|getrocknet)(?=(?:e[nrsm]?)?(?!\p{L}))/iu;
  if (german.test(name)) return name.replace(german, (was) => cased(was, GERMAN[to]));
  const french: Readonly<Record<string, string>> = FRENCH[to];
  const behind = /(?<=\s)(frais|fraîches?|séchée?s?)(?!\p{L})/iu;
  if (behind.test(name)) return name.replace(behind, (was) => french[was.toLowerCase()] ?? was);
  return fill(herbNames[to], { name });
}
