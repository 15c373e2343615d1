import type { CutRead } from '../records/cut-read.ts';
import { causes as causeWords } from './words/causes.ts';
import { cutLoafSays, cutPage, dayFacts, howSure, loafChanges } from './words/cut-loaf.ts';
import { fill } from './fill.ts';

/** What was read of a cut loaf, in words. */
export interface ToldLoaf {
  readonly headline: string;
  /** The second cause, or what to do where nothing is to be changed; null: nothing more. */
  readonly detail: string | null;
  /** The one thing to change. */
  readonly change: string | null;
  /** What of that day speaks for the first cause. */
  readonly because: string | null;
  /** All of it but the last, to be said. */
  readonly said: string;
}

/** No more facts of the day than fit their page in bigger words. */
const FACTS = 2;

const ofCauses = ({
  causes,
  change,
}: CutRead): readonly [headline: string, detail: string | null, said: string] => {
  const [first, second] = causes.map(({ cause, sure }) => ({
    value: howSure[sure],
    name: causeWords[cause],
  }));
  const isSure = causes[1]?.sure !== 'hard';
  if (first === undefined) return [cutPage.look, cutPage.same, cutPage.same];
  if (change === null) {
    const both = second ? fill(cutPage.perhaps, { name: first.name, other: second.name }) : null;
    return [cutPage.hard, both, cutLoafSays.done];
  }
  const also = second && (isSure ? fill(cutPage.cause, second) : fill(cutPage.also, second));
  return [
    fill(cutPage.cause, first),
    also ?? null,
    [fill(cutPage.cause, first), ...(also ? [also] : [])]
      .map((one) => `${one.replace(/\s?:/, '')}.`)
      .join(' '),
  ];
};

/**
 * What was read of a cut loaf, as it is shown and said.
 *
 * @example
 * tellLoaf({ says: 'well', causes: [], change: null, because: [], model: 'm' }).said // → 'A fine loaf. Keep it as it is.'
 */
export function tellLoaf(read: CutRead): ToldLoaf {
  const { says, change, because } = read;
  if (says === 'well') {
    const { well: headline, keepIt: detail } = cutPage;
    return { headline, detail, change: null, because: null, said: cutLoafSays.well };
  }
  if (says === 'look') {
    const { look: headline, same: detail } = cutPage;
    return { headline, detail, change: null, because: null, said: cutLoafSays.done };
  }
  const [headline, detail, said] = ofCauses(read);
  const next = change === null ? null : loafChanges[change];
  const facts = because.slice(0, FACTS).map((fact) => dayFacts[fact]);
  return {
    headline,
    detail,
    change: next,
    because:
      facts.length > 0 && change !== null
        ? fill(cutPage.because, { lines: facts.join(', ') })
        : null,
    said: next === null ? said : `${said} ${next}`,
  };
}
