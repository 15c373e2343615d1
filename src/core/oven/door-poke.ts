import { PROOF_WINDOW } from '../clock/proof-index.ts';
import { loafVerdict, warmVerdict } from '../readiness/verdict.ts';
import type { Minutes } from '../units.ts';
import { warmUpMinutes, type StandingLoaf } from './warm-up.ts';

/** What was seen of a loaf at the oven's door. Null: not looked at. */
export interface DoorSigns {
  readonly dent: 'springs' | 'slow' | 'stays' | 'unsure' | null;
  readonly grown: 'none' | 'little' | 'grown' | 'unsure' | null;
  readonly rim: 'below' | 'level' | 'above' | null;
  /** Proof index by the dough clock, where it is known. */
  readonly q: number | null;
  /** Straight out of the fridge. */
  readonly cold: boolean;
  /** What the clock knows of it, for how long it stands out; `q` is taken from above. */
  readonly loaf?: Omit<StandingLoaf, 'q'>;
}

/** `bakeFirst`: before the others, from cold, with a shallow cut. `switchGoal`: flat, in an oiled tray. */
export type DoorVerdict = 'bakeNow' | 'warm' | 'bakeFirst' | 'switchGoal';

/**
 * Why. `coldDentWeak`: a dent is all there is of a cold loaf, and it springs or stays whatever the
 * loaf is. `disagree`: signs and clock do. `unsure`: nothing tells. `noClock`: the minutes are usual
 * ones and not this loaf's.
 */
export type DoorReason =
  | 'signsReady'
  | 'signsNotYet'
  | 'signsOver'
  | 'indexReady'
  | 'indexNotYet'
  | 'indexOver'
  | 'coldDentWeak'
  | 'disagree'
  | 'unsure'
  | 'noClock';

export interface DoorJudged {
  readonly verdict: DoorVerdict;
  readonly reasons: readonly DoorReason[];
  /** How long it stands out before the next look; null where it is baked. */
  readonly minutes: Minutes | null;
}

/** A cold loaf that has not grown stands out 60–120 min. Common practice, no source. */
const COLD = { least: 60, most: 120, usual: 90 } as const;
/** One that is warm already is looked at sooner. Judgement. */
const WARM = { least: 20, most: 120, usual: 30 } as const;
const STEP: Minutes = 5;

type Standing = Pick<DoorSigns, 'q' | 'cold' | 'loaf'>;

type Says = 'ready' | 'notYet' | 'over';
const SIGNS = { ready: 'signsReady', notYet: 'signsNotYet', over: 'signsOver' } as const;
const INDEX = { ready: 'indexReady', notYet: 'indexNotYet', over: 'indexOver' } as const;

const indexSays = (q: number | null): Says | null => {
  if (q === null || Number.isNaN(q)) return null;
  if (q > PROOF_WINDOW.past) return 'over';
  return q >= PROOF_WINDOW.least ? 'ready' : 'notYet';
};

/** Answers under the names that `readiness/verdict.ts` has for them. */
const answersOf = ({ dent, grown, rim }: DoorSigns): Readonly<Record<string, string>> => ({
  ...(dent === null ? {} : { dent: dent === 'slow' ? 'slowly' : dent }),
  ...(grown === null ? {} : { grown }),
  ...(rim === null ? {} : { rim }),
});

const toldBy = (signs: DoorSigns): Says | null => {
  const { say } = (signs.cold ? loafVerdict : warmVerdict)(answersOf(signs));
  return say === 'unsure' ? null : say;
};

/** Growth or rim, where they tell alone: too little for a verdict, enough beside the clock. */
const lean = ({ grown, rim }: DoorSigns): Says | null => {
  if (rim === 'above') return 'over';
  if (rim === 'below' || grown === 'none' || grown === 'little') return 'notYet';
  return rim === 'level' || grown === 'grown' ? 'ready' : null;
};

/** How long to stand out: to index 1 by the clock, within what is usual, in steps of five. */
const standing = ({ q, cold, loaf }: Standing): { minutes: Minutes; clock: boolean } => {
  const { least, most, usual } = cold ? COLD : WARM;
  if (q === null || Number.isNaN(q) || loaf === undefined) return { minutes: usual, clock: false };
  const minutes = warmUpMinutes({ ...loaf, q }) ?? most;
  const whole = Math.round(minutes / STEP) * STEP;
  return { minutes: Math.min(most, Math.max(least, whole)), clock: true };
};

/**
 * Minutes a loaf that was told to wait stands out before the next look: 60–120 straight out of the
 * fridge, 20–120 once it has stood, to proof index 1 by the clock where it is known.
 * Source: common practice, no source; the clock as in `warm-up.ts`.
 *
 * @example
 * standsFor({ q: null, cold: true }) // → 90
 * standsFor({ q: null, cold: false }) // → 30
 */
export const standsFor = (loaf: Standing): Minutes => standing(loaf).minutes;

/**
 * One answer out of signs and index: over is never told to wait, and a doubt bakes. A goal is given up
 * only where signs that are a verdict (`sure`, no lone rim) and clock agree.
 */
const decide = (signs: Says | null, index: Says | null, sure: boolean): DoorVerdict => {
  const both = [signs, index];
  if (sure && both.every((one) => one === 'over')) return 'switchGoal';
  if (both.includes('over')) return both.includes('notYet') ? 'bakeNow' : 'bakeFirst';
  // Of two that disagree the loaf's own signs count.
  return (signs ?? index) === 'notYet' ? 'warm' : 'bakeNow';
};

/**
 * What becomes of a loaf at the oven's door. A warm loaf's dent decides, beside the clock's index. A
 * cold one goes by growth, rim and index; its dent only breaks a tie, and alone it changes nothing:
 * the loaf is baked, with `coldDentWeak`. Over by signs and clock: another goal; over by one of them:
 * baked first. One that has gone over is never told to stand.
 * Source: common practice, no source; the order of the rules is judgement. Hands beat it.
 *
 * @example
 * doorPoke({ dent: 'springs', grown: 'none', rim: 'below', q: 0.7, cold: true }).verdict // → 'warm'
 * doorPoke({ dent: 'springs', grown: null, rim: null, q: null, cold: true }) // → { verdict: 'bakeNow', reasons: ['coldDentWeak'], minutes: null }
 */
export function doorPoke(signs: DoorSigns): DoorJudged {
  const { dent, cold, q } = signs;
  const index = indexSays(q);
  const full = toldBy(signs);
  const told = full ?? (cold ? lean(signs) : null);
  const verdict =
    told === 'ready' && q !== null && q > PROOF_WINDOW.most && index === 'ready'
      ? 'bakeFirst'
      : decide(told, index, full !== null);
  const dentAlone = cold && dent !== null && dent !== 'unsure' && told === null;
  const stands = verdict === 'warm' ? standing(signs) : null;
  const reasons: DoorReason[] = [
    ...(told === null ? [] : [SIGNS[told]]),
    ...(index === null ? [] : [INDEX[index]]),
    ...(dentAlone ? ['coldDentWeak' as const] : []),
    ...(told !== null && index !== null && told !== index ? ['disagree' as const] : []),
    ...(told === null && index === null && !dentAlone ? ['unsure' as const] : []),
    ...(stands !== null && !stands.clock ? ['noClock' as const] : []),
  ];
  return { verdict, reasons, minutes: stands?.minutes ?? null };
}
