import { changeFor } from './loaf-change.ts';
import { dayLikely, type LoafDay } from './loaf-day.ts';
import {
  LOAF_CAUSES,
  LOAF_SIGNS,
  SIGN_NAMES,
  type DayFact,
  type HowSure,
  type LOAF_SAYS,
  type LoafAnswers,
  type LoafCause,
  type LoafChange,
  type LoafSign,
  type Shown,
} from './loaf-names.ts';
import { rowsFor } from './loaf-rows.ts';
import { BEFORE, eachCause, likelyTo, type Likely } from './loaf-signs.ts';
import type { Remedy } from './remedies.ts';

/** Written with what was read, so that a later tool knows which numbers it came by. */
export const LOAF_MODEL = 'loaf-1';

export interface LoafRead {
  readonly says: (typeof LOAF_SAYS)[number];
  /** Two at most, the likelier first. Where it is hard to say, two or none: never one from one sign. */
  readonly causes: readonly {
    readonly cause: Exclude<LoafCause, 'well'>;
    readonly sure: HowSure;
  }[];
  /** One change for next time; null where there is no ground for one. */
  readonly change: LoafChange | null;
  /** The sign to look at next; null where two or three have told enough, or three were asked. */
  readonly next: LoafSign | null;
  /** What is done about each sign that was seen. */
  readonly rows: readonly Remedy[];
  /** Facts of the day that speak for the first cause. */
  readonly because: readonly DayFact[];
  /** Each cause's share of one. */
  readonly shares: Likely;
}

/** Shares of one from which a cause is likely, may be, and is named second. Judgement. */
const SURE = { likely: 0.55, mayBe: 0.3, second: 0.15 } as const;
/** What is this much likelier under a cause than on the whole speaks for it. Judgement. */
const SPEAKS = 1.2;
/** Questions that are asked. */
const MOST = 3;
/** As many signs and facts must speak for a cause before it is more than hard to say. */
const GROUNDS = 2;

/** What was seen or is known, as what it says of each cause. */
interface Evidence {
  readonly fact: DayFact | null;
  readonly says: Likely;
}

const weigh = (shares: Likely, says: Likely): Likely => {
  const sum = LOAF_CAUSES.reduce((all, cause) => all + shares[cause] * says[cause], 0);
  return eachCause((cause) => (shares[cause] * says[cause]) / sum);
};

/** Whether it speaks for a cause, whatever else was seen: so no further sign takes a ground away. */
const speaksFor = (cause: LoafCause, says: Likely): boolean => {
  const whole = LOAF_CAUSES.reduce((all, one) => all + BEFORE[one] * says[one], 0);
  return says[cause] >= SPEAKS * whole;
};

const isShown = (sign: LoafSign, shown: string | undefined): shown is Shown =>
  (LOAF_SIGNS[sign] as readonly string[]).includes(shown ?? '');

const seen = (answers: LoafAnswers): readonly (readonly [LoafSign, Shown])[] =>
  SIGN_NAMES.flatMap((sign) => {
    const shown = answers[sign];
    return isShown(sign, shown) ? [[sign, shown] as const] : [];
  });

/** How much is still open, in bits. */
const open = (shares: Likely): number =>
  -LOAF_CAUSES.reduce((all, cause) => {
    const share = shares[cause];
    return share > 0 ? all + share * Math.log2(share) : all;
  }, 0);

/** What would be left open after looking at a sign, on average. */
const openAfter = (sign: LoafSign, shares: Likely): number =>
  LOAF_SIGNS[sign].reduce((all, shown) => {
    const says = likelyTo(sign, shown);
    const chance = LOAF_CAUSES.reduce((sum, cause) => sum + shares[cause] * says[cause], 0);
    return chance > 0 ? all + chance * open(weigh(shares, says)) : all;
  }, 0);

const nextSign = (answers: LoafAnswers, shares: Likely): LoafSign | null => {
  const left = SIGN_NAMES.filter((sign) => answers[sign] === undefined);
  if (SIGN_NAMES.length - left.length >= MOST) return null;
  const worth = left.map((sign) => ({ sign, left: openAfter(sign, shares) }));
  return worth.toSorted((a, b) => a.left - b.left)[0]?.sign ?? null;
};

/**
 * Reads a cut loaf: what was answered of it, joined with what happened that day. At most two causes,
 * each likely, may be or hard to say, and one change. One sign names no single cause, and alone it
 * changes nothing: the sign to look at next is named. Facts of the day count as signs, but without a
 * sign of the loaf itself nothing is said.
 * Signs and facts are weighed as if each came by itself, though a dough that rose little both springs
 * and bursts: what is called likely is so by judgement, not a measured chance. Hands beat it.
 *
 * @example
 * readLoaf({ holes: 'underCrust', spread: 'spread', sour: 'sour' }, {}).causes // → [{ cause: 'over', sure: 'likely' }]
 * readLoaf({ crumb: 'gummy' }, {}).change // → null
 */
export function readLoaf(answers: LoafAnswers, day: LoafDay): LoafRead {
  const signs = seen(answers);
  const known = day.crust && signs.some(([sign]) => sign === 'crust');
  const facts = dayLikely(day).filter(({ fact }) => !(known && fact === 'crust'));
  const evidence: readonly Evidence[] = [
    ...signs.map(([sign, shown]) => ({ fact: null, says: likelyTo(sign, shown as never) })),
    ...facts,
  ];
  const plain = day.filled === false ? eachCause((one) => (one === 'wetFilling' ? 0 : 1)) : null;
  const before = plain === null ? BEFORE : weigh(BEFORE, plain);
  const shares = evidence.reduce((all, { says }) => weigh(all, says), before);

  const sureOf = (cause: LoafCause): HowSure => {
    const grounds = evidence.filter(({ says }) => speaksFor(cause, says)).length;
    if (grounds < GROUNDS || signs.length === 0 || shares[cause] < SURE.mayBe) return 'hard';
    const likely = shares[cause] >= SURE.likely && signs.length >= GROUNDS;
    return likely ? 'likely' : 'mayBe';
  };
  const order = LOAF_CAUSES.toSorted((a, b) => shares[b] - shares[a]);
  const first = order[0] as LoafCause;
  const sure = sureOf(first);
  const single = signs.length < GROUNDS;
  const rows = rowsFor(signs);
  const wanted = sure === 'likely' ? null : nextSign(answers, shares);
  const none = { causes: [], change: null, because: [], rows, shares };
  if (signs.length === 0) return { ...none, says: 'look', next: wanted };
  if (first === 'well')
    return { ...none, says: single || sure === 'hard' ? 'look' : 'well', next: wanted };

  const faults = order.filter((one): one is Exclude<LoafCause, 'well'> => one !== 'well');
  const named = faults
    .slice(0, 2)
    .filter((one, i) => i === 0 || single || sure === 'hard' || shares[one] >= SURE.second);
  return {
    says: 'causes',
    causes: named.map((cause) => ({ cause, sure: sureOf(cause) })),
    change: sure === 'hard' ? null : changeFor(first, answers, day),
    next: wanted,
    rows,
    because: facts.filter(({ says }) => speaksFor(first, says)).map(({ fact }) => fact),
    shares,
  };
}
