import { PROOF_WINDOW } from '../clock/proof-index.ts';

/** How far a loaf has come, most proofed first; `unknown` where nobody looked and no index is known. */
export const GRADES = ['over', 'ready', 'unknown', 'sluggish'] as const;
export type Grade = (typeof GRADES)[number];

/** What the order of the loads goes by: a look's grade where there was one, the proof index q. */
export interface Proofed {
  readonly grade?: Grade;
  readonly q?: number | null;
}

/**
 * A loaf's grade: what was seen of it, else by its index: past 1.35 `over`, from .85 `ready`, below
 * `sluggish`, without an index `unknown`.
 * Source: the window of the proof index, common practice, no source.
 *
 * @example
 * gradeOf({ q: 1 }) // → 'ready'
 * gradeOf({ q: 0.7 }) // → 'sluggish'
 * gradeOf({ q: 0.7, grade: 'ready' }) // → 'ready'
 */
export function gradeOf({ grade, q }: Proofed): Grade {
  if (grade !== undefined) return grade;
  if (q === undefined || q === null || Number.isNaN(q)) return 'unknown';
  if (q > PROOF_WINDOW.past) return 'over';
  return q >= PROOF_WINDOW.least ? 'ready' : 'sluggish';
}

const rank = (loaf: Proofed): number => GRADES.indexOf(gradeOf(loaf));
/** An index nobody knows comes after those of its grade that are known. */
const index = ({ q }: Proofed): number => (q === undefined || q === null ? -Infinity : q);

/**
 * The order in which loaves go into the oven: the most proofed first, the sluggish last, in one grade
 * by their index, else as they came.
 * Source: common practice.
 */
export const byProof = <L extends Proofed>(loaves: readonly L[]): readonly L[] =>
  loaves.toSorted((a, b) => {
    const grades = rank(a) - rank(b);
    if (grades !== 0) return grades;
    const [one, other] = [index(a), index(b)];
    return one === other ? 0 : other - one;
  });

/**
 * The same grades, but in each of them the loaves first that have the fewest pots to go into: a small
 * loaf can wait for any pot, a big one only for a big pot.
 */
export const byRoom = <L extends Proofed>(
  loaves: readonly L[],
  pots: (loaf: L) => number,
): readonly L[] => byProof(loaves).toSorted((a, b) => rank(a) - rank(b) || pots(a) - pots(b));
