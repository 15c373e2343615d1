/**
 * Hands and their arms. A hand at turn 0 points away from the baker, its back to us; its place is the
 * point it acts at: the palm of a flat hand, the tips of a pinch, the middle of a grip, the knuckles of
 * a fist, the palm of a mitt. The arm runs back from the wrist, out of the picture.
 */
import { CLAY, PAPER, TEAL, cut, line, place } from './ink.ts';

export interface Hand {
  readonly side: 'left' | 'right';
  readonly x: number;
  readonly y: number;
  /** Degrees, as the clock's hands turn: -90 points left, 180 at the baker. */
  readonly turn?: number;
  readonly scale?: number;
  /** The baker's sleeve is teal, a child's clay. */
  readonly sleeve?: string;
  /** How long the arm is beyond the wrist, sleeve and all; 0 for none. */
  readonly arm?: number;
}

/** The wrist at 0, 0 and the sleeve behind it. */
function arm(sleeve: string, long: number): string {
  if (long <= 0) return '';
  return (
    cut(`M-14 -8L-13 30H13L14 -8z`) +
    cut(`M-18 20H18L22 ${long}H-22z`, sleeve) +
    line('M-18 29H18.5')
  );
}

/** A right hand of these shapes, wrist at 0, 0, that acts at `at`. */
const hand =
  (shapes: string, at: readonly [number, number]) =>
  ({ side, x, y, turn, scale, sleeve = TEAL, arm: long = 150 }: Hand): string =>
    place(place(arm(sleeve, long) + shapes, { x: -at[0], y: -at[1] }), {
      x,
      y,
      ...(turn === undefined ? {} : { turn }),
      scale: scale ?? 1,
      mirror: side === 'left',
    });

/** Palm down, fingers together, thumb out. */
export const flatHand = hand(
  cut(
    'M-14 4C-17 -4 -18 -8 -22 -13C-28 -19 -33 -24 -36 -30C-40 -38 -31 -44 -26 -37L-21 -30' +
      'V-52a5.5 5.5 0 0 1 11 0V-57a5.5 5.5 0 0 1 11 0V-53a5.3 5.3 0 0 1 10.5 0V-42a5 5 0 0 1 10 0' +
      'V-20C21.5 -10 17 -4 14 4',
  ) + line('M-10 -50V-32M1 -52V-32M11.5 -46V-31', 2.6),
  [0, -30],
);

/** Fingers and thumb together at their tips, as they sprinkle, pull or take hold of an edge. */
export const pinchHand = hand(
  cut(
    'M-14 4C-17 -6 -19 -12 -20 -20V-30C-20 -46 -12 -56 -6 -60C-1 -63 4 -60 4 -55' +
      'C8 -60 16 -56 14 -49C19 -52 25 -46 21 -40C26 -39 27 -32 23 -25C22 -15 18 -6 14 4',
  ) +
    line('M4 -55C2 -50 -1 -44 -2 -38M14 -49L7 -34M21 -40L14 -28', 2.6) +
    cut(
      'M-20 -12C-27 -18 -30 -28 -28 -38C-26 -48 -20 -56 -13 -59C-7 -60 -5 -53 -9 -49C-14 -43 -16 -36 -15 -28',
    ),
  [-9, -59],
);

/** Fingers closed round a bar that lies across, under the hand. */
export const gripHand = hand(
  cut(
    'M-14 4C-18 -4 -20 -10 -20 -18V-36a5.3 5.3 0 0 1 10.5 0V-38a5.3 5.3 0 0 1 10.5 0V-37' +
      'a5.3 5.3 0 0 1 10.5 0V-32a5 5 0 0 1 10 0V-16C21 -8 17 -2 14 4',
  ) +
    line('M-9.5 -35V-20M1 -35V-20M11.5 -31V-19', 2.6) +
    cut('M-18 -8C-24 -14 -25 -21 -19 -23C-13 -24 -6 -22 2 -17C8 -13 4 -6 -3 -8'),
  [0, -27],
);

/** A fist, knuckles first. */
export const fist = hand(
  cut(
    'M-14 4C-20 -6 -23 -16 -21 -26C-21 -35 -12 -37 -10 -31C-9 -38 0 -39 1 -32C3 -38 11 -37 11.5 -30' +
      'C13 -35 21 -33 21 -25C22 -14 18 -4 14 4',
  ) +
    line('M-10 -31V-22M1 -32V-22M11.5 -30V-21', 2.6) +
    line('M-21 -12C-16 -17 -10 -17 -6 -12', 2.6),
  [0, -35],
);

/** One finger out, the rest closed: it pokes. */
export const pokeHand = hand(
  cut(
    'M-14 4C-20 -6 -23 -14 -21 -24V-56a5.5 5.5 0 0 1 11 0V-34C-8 -39 0 -39 1 -32C3 -38 11 -37 11.5 -30' +
      'C13 -35 21 -33 21 -25C22 -14 18 -4 14 4',
  ) +
    line('M-10 -34V-24M1 -32V-22M11.5 -30V-21', 2.6) +
    cut('M-19 -10C-25 -16 -22 -23 -16 -22C-10 -21 -4 -18 0 -14C3 -9 -2 -5 -7 -7'),
  [-15.5, -60],
);

/** An oven mitt, its back to us. */
export const mitt = ({ sleeve = TEAL, ...rest }: Hand): string =>
  hand(
    cut(
      'M-19 6V-10C-30 -18 -38 -26 -40 -34C-41 -44 -29 -46 -25 -38L-20 -30C-22 -56 -16 -72 2 -72' +
        'C20 -72 25 -54 22 -34C21 -20 19 -8 19 6z',
      CLAY,
    ) +
      cut('M-22 4H22V17H-22z') +
      line('M-8 -22C2 -18 10 -20 14 -26', 2.6),
    [0, -36],
  )({ sleeve, ...rest });

/** A head without a face, its middle at x, y: only where somebody must be seen. */
export const head = (x: number, y: number, r: number, hair: string = CLAY): string =>
  cut(`M${x - r} ${y}a${r} ${r} 0 1 0 ${r * 2} 0a${r} ${r} 0 1 0 ${-r * 2} 0z`, PAPER) +
  cut(
    `M${x - r} ${y}a${r} ${r} 0 0 1 ${r * 2} 0C${x + r * 0.5} ${y - r * 0.6} ${x - r * 0.3} ${y - r * 0.6} ${x - r} ${y}z`,
    hair,
  );
