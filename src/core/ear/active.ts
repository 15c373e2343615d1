import { ANSWERS, DIGITS, MOST_ACTIVE, POKES, type EarPhrase } from './phrases.ts';

/** What the bench offers to whoever speaks, as it stands there. */
export interface Offered {
  /** What may be pressed there, by what is said for it. */
  readonly does: ReadonlySet<string>;
  /** A sheet lies over the bench. */
  readonly over: boolean;
  /** Hot, a blade or a machine is at hand, or something is to be held. */
  readonly byHand: boolean;
  /** A number was read back, and waits to be agreed to. */
  readonly asksBack: boolean;
  /** A number may be keyed: none stands there but what was said. */
  readonly takesKeys: boolean;
  /** A time runs. */
  readonly runs: boolean;
  /** The step has a lesson. */
  readonly teaches: boolean;
  /** Whoever bakes has asked to be taught. */
  readonly learns: boolean;
}

/** Commands that a press on the page stands for, and those that are answered without one. */
const offers = ({ does, runs, teaches }: Offered, phrase: EarPhrase): boolean => {
  if (phrase === 'hush') return true;
  if (phrase === 'longer') return runs;
  return does.has(phrase) || (phrase === 'showMe' && teaches);
};

/** What ends an act. Where none of it stands there something is waited for. */
const ENDS: readonly EarPhrase[] = ['done', 'ready', 'notYet', ...POKES];

const AT_ACT = [...ENDS, 'takeBack', 'sayAgain', 'longer', 'reading', 'showMe', 'hush'] as const;
/** Who learns asks for the how before anything else but to go on. */
const LEARNING = [...ENDS, 'showMe', 'takeBack', 'sayAgain', 'longer', 'hush'] as const;
/** While dough rests there is little to take back, and much to ask. */
const AT_WAIT = ['longer', 'reading', 'notYet', 'takeBack', 'sayAgain', 'showMe', 'hush'] as const;
/** What changes nothing. */
const TOLD = ['lidOff', 'sayAgain', 'longer', 'hush'] as const;

const likely = (offered: Offered): readonly EarPhrase[] => {
  if (offered.byHand) return TOLD;
  if (ENDS.some((phrase) => phrase !== 'notYet' && offered.does.has(phrase))) {
    return offered.learns ? LEARNING : AT_ACT;
  }
  // Where something is shown that is rarely wanted twice, it is what the act is about.
  return AT_WAIT;
};

/**
 * What is listened for now, the likeliest first: of what is known to somebody here no more than can be told
 * apart; digits are the exception. Hot, sharp or powered: nothing that changes anything. Over the bench only
 * what belongs to a reading.
 */
export function activeOf(offered: Offered, known: ReadonlySet<EarPhrase>): readonly EarPhrase[] {
  const here = (phrases: readonly EarPhrase[]): readonly EarPhrase[] =>
    phrases.filter((phrase) => known.has(phrase) && offered.does.has(phrase));
  if (!offered.byHand) {
    if (offered.asksBack) return here(ANSWERS);
    const digits = offered.takesKeys ? here(DIGITS) : [];
    if (digits.length > 0) return digits;
    if (offered.over) return here(POKES);
  } else if (offered.over) return [];
  const all = likely(offered).filter((phrase) => known.has(phrase) && offers(offered, phrase));
  // For nothing but to be quiet it need not listen.
  return all[0] === 'hush' ? [] : all.slice(0, MOST_ACTIVE);
}
