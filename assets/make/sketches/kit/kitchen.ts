/** The fridge, seen from the front; the tray and the rack. */
import { PAPER, TEAL, cut, line } from './ink.ts';

/** An open fridge that fills the picture, its door swung to the left; `inside` stands on its shelves. */
export const fridge = (inside = ''): string =>
  cut('M70 -6H226V190H70z', TEAL) +
  cut('M82 6H214V170H82z', PAPER) +
  line('M82 60H214M82 118H214') +
  cut('M70 -6L22 10V196L70 190z', TEAL) +
  cut('M62 16L34 26V174L62 168z', PAPER) +
  line('M62 66L34 72M62 118L34 123') +
  inside;

/** A flat baking tray: its middle at x, y. */
export const tray = (x: number, y: number, w = 190, deep = 66): string =>
  cut(
    `M${x - w * 0.43} ${y - deep / 2}H${x + w * 0.43}L${x + w / 2} ${y + deep / 2}v9q0 3 -4 3H${x - w / 2 + 4}q-4 0 -4 -3v-9z`,
    TEAL,
  ) +
  cut(
    `M${x - w * 0.4} ${y - deep / 2 + 7}H${x + w * 0.4}L${x + w * 0.46} ${y + deep / 2 - 4}H${x - w * 0.46}z`,
    PAPER,
  );

/** A cooling rack: its middle at x, y. */
export function rack(x: number, y: number, w = 190, deep = 62): string {
  const n = w * 0.43;
  const h = w / 2;
  const bars = Array.from({ length: 9 }, (_, at) => {
    const t = (at + 1) / 10;
    return `M${(x - n + 2 * n * t).toFixed(1)} ${y - deep / 2}L${(x - h + 2 * h * t).toFixed(1)} ${y + deep / 2}`;
  }).join('');
  return (
    line(`M${x - h + 6} ${y + deep / 2}v14M${x + h - 6} ${y + deep / 2}v14`, 5) +
    cut(`M${x - n} ${y - deep / 2}H${x + n}L${x + h} ${y + deep / 2}H${x - h}z`) +
    line(bars, 2.6)
  );
}
