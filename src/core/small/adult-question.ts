import { MINUTE, type Instant } from '../units.ts';

/** Wrong twice, it stays shut this long. Judgement. */
export const SHUT = 5 * MINUTE;
export const WRONG_MOST = 2;

/** Where the right answer and the others stand by turns; each place is the right one's as often. */
const ORDERS = [
  ['one', 'right', 'two', 'three'],
  ['three', 'two', 'right', 'one'],
  ['right', 'three', 'one', 'two'],
  ['two', 'one', 'three', 'right'],
  ['three', 'right', 'one', 'two'],
  ['one', 'two', 'three', 'right'],
  ['right', 'two', 'three', 'one'],
  ['two', 'three', 'right', 'one'],
] as const;
export type AnswerPlace = (typeof ORDERS)[number][number];

/**
 * Which of so many questions is asked, and in what order its answers stand: by the minute's number and
 * how many were missed, so that nobody learns a place.
 *
 * @example askedAt(0, 0, 5).question // 0
 */
export function askedAt(
  now: Instant,
  missed: number,
  questions: number,
): { readonly question: number; readonly order: readonly AnswerPlace[] } {
  const turn = Math.floor(now / MINUTE) + 3 * missed;
  return {
    question: turn % questions,
    order:
      ORDERS[Math.floor(turn / questions + 3 * (turn % questions)) % ORDERS.length] ?? ORDERS[0],
  };
}
