/** Tools and small stuff of the counter. A tool's 0, 0 is where it is held; it points up; see `place`. */
import { CLAY, LINE, OCHRE, PAPER, TEAL, cut, dot, line, oval, place, ring } from './ink.ts';

/** A spoon, bowl up. */
export const spoon = (long = 66, paint: string = CLAY): string =>
  cut(`M-3.5 14V${-long}H3.5V14z`, paint) + cut(ring(0, -long - 9, 9, 13), paint);

/** A knife held at its handle, blade up, its edge on the left. */
export const knife = (long = 78): string =>
  cut(`M5 -6V${-long}C-6 ${-long + 6} -9 ${-long + 22} -9 -6z`) +
  cut('M-6 -8H6V28Q0 33 -6 28z', LINE);

/** A small blade on a stick, for the cut in a loaf: its tip is the top. */
export const lame = (): string => cut('M-2.5 -34H2.5V26H-2.5z', CLAY) + cut('M-6 -30H6V-56H-6z');

/** A soft brush, its hair up. */
export const brush = (): string =>
  cut('M-4 22V-22H4V22z', CLAY) +
  cut('M-9 -20H9V-30H-9z', LINE) +
  cut('M-9 -30H9L10 -50Q0 -56 -10 -50z');

/** Scissors, nearly shut, points up. */
export const scissors = (): string =>
  cut('M-3 6L9 -52Q12 -56 12 -50L5 8z') +
  cut('M3 6L-9 -52Q-12 -56 -12 -50L-5 8z') +
  line('M-4 6C-20 6 -22 32 -9 30C0 28 -2 14 -4 6M4 6C20 6 22 32 9 30C0 28 2 14 4 6', 5, TEAL) +
  dot(0, -2, 2.6);

/** A probe with a dial, its tip at 0, 0, standing up. */
export const probe = (long = 70): string =>
  line(`M0 0V${-long}`, 4.5) +
  cut(ring(0, -long - 14, 19, 19)) +
  line(`M0 ${-long - 14}L8 ${-long - 23}`) +
  dot(0, -long - 14, 3, CLAY);

/** A clock: its middle at x, y. */
export const clock = (x: number, y: number, r = 24): string =>
  cut(ring(x, y, r, r)) +
  line(`M${x} ${y - r + 4}v4M${x + r - 4} ${y}h-4M${x} ${y + r - 4}v-4M${x - r + 4} ${y}h4`, 2.6) +
  line(`M${x} ${y - r * 0.6}V${y}L${x + r * 0.42} ${y + r * 0.28}`);

/** A flat scale, its plate round x, y; the reading is three strokes. */
export const scale = (x: number, y: number, rx = 66): string =>
  cut(
    `M${x - rx} ${y}L${x - rx - 5} ${y + 30}Q${x - rx - 5} ${y + 36} ${x - rx + 2} ${y + 36}H${x + rx - 2}Q${x + rx + 5} ${y + 36} ${x + rx + 5} ${y + 30}L${x + rx} ${y}z`,
    TEAL,
  ) +
  oval(x, y, rx, rx / 3.4, PAPER) +
  cut(`M${x - 24} ${y + 23}h48v10h-48z`, PAPER) +
  line(`M${x - 15} ${y + 28}h8M${x - 3} ${y + 28}h6M${x + 8} ${y + 28}h8`, 2.6);

/** A board on the counter: its middle at x, y. */
export const board = (x: number, y: number, w = 170, deep = 62, paint: string = CLAY): string =>
  cut(
    `M${x - w * 0.43} ${y - deep / 2}H${x + w * 0.43}L${x + w / 2} ${y + deep / 2}v8H${x - w / 2}v-8z`,
    paint,
  ) + line(`M${x - w / 2} ${y + deep / 2}H${x + w / 2}`);

/** A cloth laid over something round: its top is round x, y; it hangs so far. */
export function clothOver(x: number, y: number, rx = 70, hang = 34, paint: string = TEAL): string {
  const top = `M${x - rx} ${y}C${x - rx * 0.8} ${y - rx * 0.5} ${x + rx * 0.8} ${y - rx * 0.5} ${x + rx} ${y}`;
  return (
    cut(
      `${top}L${x + rx + 6} ${y + hang * 0.7}L${x + rx * 0.62} ${y + hang * 1.1}L${x + rx * 0.2} ${y + hang * 1.3}` +
        `L${x - rx * 0.3} ${y + hang * 1.12}L${x - rx * 0.7} ${y + hang * 1.24}L${x - rx - 6} ${y + hang * 0.66}z`,
      paint,
    ) +
    line(
      `M${x - rx + 2} ${y + hang * 0.3}Q${x} ${y + hang * 1.2} ${x + rx - 2} ${y + hang * 0.3}` +
        `M${x - rx} ${y + hang * 0.52}Q${x} ${y + hang * 1.42} ${x + rx} ${y + hang * 0.52}`,
      3,
      PAPER,
    )
  );
}

/** A drop of water, its tip at x, y. */
export const drop = (x: number, y: number, size = 7, paint: string = TEAL): string =>
  cut(
    `M${x} ${y}C${x + size * 0.4} ${y + size} ${x + size} ${y + size * 1.2} ${x + size} ${y + size * 1.9}a${size} ${size} 0 0 1 ${-2 * size} 0C${x - size} ${y + size * 1.2} ${x - size * 0.4} ${y + size} ${x} ${y}z`,
    paint,
  );

export const drops = (...at: readonly (readonly [number, number])[]): string =>
  at.map(([x, y]) => drop(x, y)).join('');

/** Flour, salt or seeds in the air or on the counter: small dots. */
export const grains = (
  at: readonly (readonly [number, number])[],
  r = 2.2,
  paint: string = LINE,
): string => at.map(([x, y]) => dot(x, y, r, paint)).join('');

/** Steam, rising from x, y. */
export const steam = (x: number, y: number, high = 40): string => {
  const h = high / 2;
  return line(`M${x} ${y}c-9 ${-h * 0.5} 9 ${-h * 0.7} 0 ${-h}s9 ${-h * 0.6} 0 ${-h}`, 4);
};

/** A thick arrow along `d`; its head is at x, y, turned clockwise from pointing up. */
export const pointer = (
  d: string,
  x: number,
  y: number,
  turn: number,
  ink: string = LINE,
): string =>
  line(d, 5.5, ink) +
  place(`<path d="M0 -9L10 6H-10z" fill="${ink}" stroke="${ink}"/>`, { x, y, turn });

/** A pack of flour or a jug would hide in a hand: a bag, tipped by `place`; its mouth is 0, 0. */
export const bag = (): string =>
  cut('M-16 0L-24 52H26L16 0Q0 6 -16 0z', OCHRE) + line('M-19 18H20', 2.6);

/** A jug that stands, its lip at 0, 0 on the left: tipped by `place`. */
export const jug = (paint: string = PAPER): string =>
  line('M44 12C62 8 62 44 42 42', 6) + cut('M0 0L8 10L4 56Q26 62 46 56L44 4Q22 10 0 0z', paint);
