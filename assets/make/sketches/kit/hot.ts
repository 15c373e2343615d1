/** What is hot: the pot and its lid, the oven's knobs and flame, heat and steam. */
import { CLAY, FLAT, LINE, OCHRE, TEAL, cut, line, oval, place, ring } from './ink.ts';

/** Heat or thin steam: waves that rise from x, y, each so high. */
export function waves(x: number, y: number, count = 3, high = 30, gap = 18): string {
  const h = high / 4;
  const first = x - ((count - 1) / 2) * gap;
  const wave = `c-6 ${-h} 6 ${-h} 0 ${-2 * h}s6 ${-h} 0 ${-2 * h}`;
  return line(
    Array.from({ length: count }, (_, no) => `M${first + no * gap} ${y}${wave}`).join(''),
    4,
  );
}

/** A burst of thick steam round x, y. */
export const cloud = (x: number, y: number, scale = 1): string =>
  place(
    cut(
      'M-44 22A16 16 0 0 1 -42 -6A20 20 0 0 1 -14 -22A22 22 0 0 1 22 -20A18 18 0 0 1 44 -2A15 15 0 0 1 40 24A20 13 0 0 1 10 29A22 13 0 0 1 -20 29A18 12 0 0 1 -44 22z',
    ) + line('M-18 2A10 10 0 0 1 0 -4M12 8A10 10 0 0 1 27 4', 3),
    { x, y, scale },
  );

/** A hot pot, dark inside, its rim round x, y; `inside` stands in it. */
export function hotPot(x: number, y: number, rx: number, deep: number, inside = ''): string {
  const ry = rx / FLAT;
  const foot = rx - 5;
  return (
    cut(`M${x - rx} ${y - 2}h-14v12h14zM${x + rx} ${y - 2}h14v12h-14z`, TEAL) +
    oval(x, y, rx, ry, LINE) +
    inside +
    cut(
      `M${x - rx} ${y}A${rx} ${ry} 0 0 0 ${x + rx} ${y}L${x + foot} ${y + deep}A${foot} ${ry} 0 0 1 ${x - foot} ${y + deep}z`,
      TEAL,
    )
  );
}

/** The lid of that pot as it lies, its edge round 0, 0. */
export const flatLid = (rx: number): string =>
  cut(
    `M${-rx} 0A${rx} ${rx / FLAT} 0 0 0 ${rx} 0V-6C${rx - 8} -24 ${8 - rx} -24 ${-rx} -6z`,
    TEAL,
  ) +
  line(`M${-rx} -5A${rx} ${rx / FLAT} 0 0 0 ${rx} -5`, 2.6) +
  cut('M-10 -14V-24A10 5 0 0 1 10 -24V-14A10 5 0 0 1 -10 -14z');

/** The lid held up like a shield, its far edge high and its top to the baker. */
export const raisedLid = (x: number, y: number, rx: number, ry: number): string =>
  cut(
    `M${x - rx} ${y}A${rx} ${ry} 0 0 0 ${x + rx} ${y}V${y + 8}A${rx} ${ry} 0 0 1 ${x - rx} ${y + 8}z`,
    TEAL,
  ) +
  oval(x, y, rx, ry, TEAL) +
  line(ring(x, y, rx - 14, ry - 10), 2.6) +
  cut(`M${x - 13} ${y - 2}v10a13 6 0 0 0 26 0v-10z`) +
  oval(x, y - 2, 13, 6);

/** A shut pot. */
export const shutPot = (x: number, y: number, rx: number, deep: number): string =>
  hotPot(x, y, rx, deep) + place(flatLid(rx + 2), { x, y: y - 2 });

/** A knob at x, y, its pointer so many degrees clockwise from straight up. */
export const knob = (x: number, y: number, turn: number, r = 16): string =>
  oval(x, y, r, r, OCHRE) + place(line(`M0 ${2 - r}V-2`, 4.5), { x, y, turn });

export const flame = (x: number, y: number, paint: string = CLAY): string =>
  place(
    cut(
      'M0 15C-13 15 -14 2 -6 -5C-5 -1 -2 -1 -1 -4C0 -8 -1 -12 1 -16C7 -9 13 -3 12 4C12 11 7 15 0 15z',
      paint,
    ),
    { x, y, scale: 1.2 },
  );

/** An oven with its door shut: a panel for knobs above y 56, and a window that shows `inside`. */
export const stove = (window: string, inside = ''): string =>
  cut('M24 -6H216V190H24z') +
  line('M24 56H216') +
  cut('M46 82H194V160H46z', window) +
  inside +
  cut('M46 65H194V74H46z');
