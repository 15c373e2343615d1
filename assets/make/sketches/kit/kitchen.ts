/** The big things, seen from the front: fridge and oven; and what goes into them and comes out. */
import { CLAY, LINE, PAPER, TEAL, cut, dot, line, oval } from './ink.ts';

/** An open fridge that fills the picture, its door swung to the left; `inside` stands on its shelves. */
export const fridge = (inside = ''): string =>
  cut('M70 -6H226V190H70z', TEAL) +
  cut('M82 6H214V170H82z', PAPER) +
  line('M82 60H214M82 118H214') +
  cut('M70 -6L22 10V196L70 190z', TEAL) +
  cut('M62 16L34 26V174L62 168z', PAPER) +
  line('M62 66L34 72M62 118L34 123') +
  inside;

/** The shelves of that fridge: what stands on one has its foot at this y. */
export const SHELVES = [60, 118, 170] as const;

/** An oven with its door shut: the window shows `inside`; hot, the window glows. */
export const oven = (hot: boolean, inside = ''): string =>
  cut('M24 -6H216V190H24z', PAPER) +
  line('M24 40H216') +
  [54, 88].map((x) => oval(x, 20, 11, 11, PAPER) + line(`M${x} 20v-10`)).join('') +
  cut('M140 10h58v20h-58z', hot ? CLAY : PAPER) +
  cut('M38 72H202V164H38z', hot ? CLAY : TEAL) +
  inside +
  line('M52 56H188', 7);

/** The same oven, open: the door lies down at the baker's side; `inside` stands on the shelf. */
export const openOven = (inside = '', hot = true): string =>
  cut('M20 -6H220V116H20z', PAPER) +
  cut('M36 8H204V106H36z', hot ? CLAY : LINE) +
  line('M36 84H204M36 40H60M180 40H204') +
  inside +
  cut('M30 116H210L226 172H14z', PAPER) +
  cut('M54 124H186L195 156H45z', TEAL);

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

/** A kettle, its foot round x, y. */
export const kettle = (x: number, y: number, w = 40, paint: string = TEAL): string =>
  line(
    `M${x - w * 0.6} ${y - w * 1.1}C${x - w * 0.6} ${y - w * 2} ${x + w * 0.6} ${y - w * 2} ${x + w * 0.6} ${y - w * 1.1}`,
    6,
  ) +
  cut(
    `M${x + w * 0.7} ${y - w * 0.4}L${x + w * 1.5} ${y - w * 1.2}L${x + w * 1.64} ${y - w}L${x + w * 0.95} ${y}z`,
    paint,
  ) +
  cut(
    `M${x - w} ${y}Q${x - w} ${y - w * 1.2} ${x} ${y - w * 1.2}T${x + w} ${y}Q${x} ${y + w * 0.4} ${x - w} ${y}z`,
    paint,
  ) +
  dot(x, y - w * 1.28, 5);
