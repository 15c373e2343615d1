import {
  ALLERGENS,
  allergensOf,
  kindsIn,
  ofFlour,
  ownTexts,
  packetState,
  standsIn,
} from '../formula/allergens.ts';
import type { Formula } from '../formula/formula.ts';

/** What somebody's list has to do with a bread. */
export interface Watched {
  /** On both, as the bread has it: 'tree nuts (walnut)'. */
  readonly named: readonly string[];
  /** On their list, and still to be looked up on a packet. */
  readonly open: readonly string[];
  /** What nobody has answered for, by name: what it brings is not known. */
  readonly unanswered: readonly string[];
}

const plain = (text: string): string => text.trim().toLowerCase();

/** Spelt wheat is wheat: one within the other's words is the same to somebody who must not eat it. */
const alike = (kind: string, other: string): boolean =>
  plain(kind).includes(plain(other)) || plain(other).includes(plain(kind));

/** Whether kinds named on one side may be those of the other; none named is all of them. */
const meet = (some: readonly string[], others: readonly string[]): boolean =>
  some.length === 0 ||
  others.length === 0 ||
  some.some((kind) => others.some((other) => alike(kind, other)));

/** Whether one text of a bread is on somebody's list. */
const isOn = (watch: readonly string[], text: string): boolean => {
  const allergen = ALLERGENS.find((one) => standsIn([text], one) !== 'no');
  if (allergen === undefined) return ownTexts(watch).some((own) => plain(own) === plain(text));
  return (
    standsIn(watch, allergen) !== 'no' && meet(kindsIn(watch, allergen), kindsIn([text], allergen))
  );
};

const isToLookUp = (text: string): boolean =>
  ALLERGENS.some((one) => standsIn([text], one) === 'open');

/**
 * What a bread brings of what somebody must not eat. An allergen of theirs with a kind meets that kind
 * and one whose kind nobody named; without one it meets every kind. Each flour and filling is asked by
 * itself: one whose nut is not named is told beside another whose nut is. One that nobody has answered
 * for is told by its name: it is never taken for free of anything. With nothing on the list there is
 * nothing to tell.
 */
export function watchedIn(
  watch: readonly string[],
  { flours, fillings }: Pick<Formula, 'flours' | 'fillings'>,
): Watched {
  if (watch.length === 0) return { named: [], open: [], unanswered: [] };
  const all = [...flours.flatMap(ofFlour), ...fillings.flatMap(({ allergens }) => allergens)];
  const met = [...new Set(all)].filter((text) => isOn(watch, text));
  const openFlours = flours.filter((one) => packetState(one) === 'open');
  return {
    named: met.filter((text) => !isToLookUp(text)),
    open: met.filter(isToLookUp),
    unanswered: [
      ...openFlours.map(({ name }) => name),
      ...allergensOf({ flours, fillings }).unanswered,
    ],
  };
}
