/** What holds dough, levain and bread. Each stands on the counter: x is its middle, y its rim. */
import { CLAY, FLAT, OCHRE, PAPER, TEAL, cut, line, oval, ring } from './ink.ts';

/** A bowl, its rim round x, y; `inside` lies in it, in front of its far wall, behind its near one. */
export function bowl(x: number, y: number, rx = 62, inside = '', fill: string = CLAY): string {
  const ry = rx / FLAT;
  const deep = rx * 1.06;
  return (
    cut(
      `M${x - rx} ${y}C${x - rx * 0.92} ${y + deep} ${x - rx * 0.5} ${y + deep} ${x} ${y + deep}` +
        `S${x + rx * 0.92} ${y + deep} ${x + rx} ${y}`,
      fill,
    ) +
    oval(x, y, rx, ry, PAPER) +
    inside
  );
}

/** Dough that stands in a bowl as a lump. */
export const lumpIn = (x: number, y: number, rx = 62, paint: string = OCHRE): string => {
  const w = rx * 0.8;
  return cut(
    `M${x - w} ${y + 5}C${x - w} ${y - rx * 0.42} ${x - w * 0.4} ${y - rx * 0.5} ${x} ${y - rx * 0.46}` +
      `C${x + w * 0.5} ${y - rx * 0.5} ${x + w} ${y - rx * 0.36} ${x + w} ${y + 5}` +
      `C${x + w * 0.7} ${y + rx * 0.34} ${x - w * 0.7} ${y + rx * 0.34} ${x - w} ${y + 5}z`,
    paint,
  );
};

export interface Clear {
  readonly x: number;
  /** The rim, and the floor below it. */
  readonly y: number;
  readonly high: number;
  readonly rx: number;
  /** How far up the dough stands, of the height. */
  readonly full?: number;
  /** How much higher its middle stands than its edge; below 0 it has sunk. */
  readonly dome?: number;
  readonly bubbles?: boolean;
  readonly marks?: number;
  /** A band round it, so far up, as a mark of where the dough began. */
  readonly band?: number;
}

const BUBBLES = [
  [-0.6, 0.2, 4],
  [-0.15, 0.34, 6],
  [0.42, 0.24, 4.5],
  [0.66, 0.55, 3.5],
  [0.12, 0.66, 4],
  [-0.42, 0.7, 5],
  [-0.76, 0.5, 3],
  [0.45, 0.82, 3],
  [-0.08, 0.9, 3],
] as const;

/** A straight clear tub or jar with dough in it, its side seen. */
export function tub({
  x,
  y,
  high,
  rx,
  full = 0,
  dome = 0,
  bubbles,
  marks = 0,
  band,
}: Clear): string {
  const ry = rx / FLAT;
  const wall = rx - 4;
  const floor = y + high;
  const top = floor - high * full;
  const dough =
    full > 0
      ? cut(
          `M${x - wall} ${top}Q${x} ${top - 12 - dome * 2} ${x + wall} ${top}V${floor - 4}` +
            `A${wall} ${wall / FLAT} 0 0 1 ${x - wall} ${floor - 4}z`,
          OCHRE,
        )
      : '';
  const holes =
    bubbles === true
      ? BUBBLES.map(([bx, by, r]) => dotRing(x + bx * wall, top + 6 + by * (floor - top), r)).join(
          '',
        )
      : '';
  const step = high / (marks + 1);
  const ticks = Array.from(
    { length: marks },
    (_, at) => `M${x + rx} ${floor - step * (at + 1)}h-${at % 2 === 0 ? 16 : 28}`,
  ).join('');
  return (
    cut(`M${x - rx} ${y}V${floor}A${rx} ${ry} 0 0 0 ${x + rx} ${floor}V${y}`, PAPER) +
    oval(x, y, rx, ry) +
    dough +
    holes +
    (band === undefined ? '' : bandRound(x, floor - high * band, rx)) +
    (ticks === '' ? '' : line(ticks)) +
    line(ring(x, y, rx, ry)) +
    line(`M${x - rx} ${y}V${floor}A${rx} ${ry} 0 0 0 ${x + rx} ${floor}V${y}`)
  );
}

const dotRing = (x: number, y: number, r: number): string =>
  `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${r}" fill="${PAPER}" stroke-width="2.4"/>`;

const bandRound = (x: number, y: number, rx: number): string =>
  cut(
    `M${x - rx} ${y}A${rx} ${rx / FLAT} 0 0 0 ${x + rx} ${y}v8A${rx} ${rx / FLAT} 0 0 1 ${x - rx} ${y + 8}z`,
    TEAL,
  );

/** A tin for a loaf, long side to us: its rim is w wide round x, y. */
export function tin(x: number, y: number, w = 120, inside = '', paint: string = TEAL): string {
  const h = w / 2;
  const d = w * 0.17;
  return (
    cut(`M${x - h} ${y}L${x - h + 9} ${y + w * 0.36}H${x + h - 9}L${x + h} ${y}z`, paint) +
    cut(`M${x - h} ${y}L${x - h + 10} ${y - d * 1.5}H${x + h - 10}L${x + h} ${y}z`, PAPER) +
    inside
  );
}

/** A proofing basket of cane, its rim round x, y. */
export function basket(x: number, y: number, rx = 66, inside = '', paint: string = PAPER): string {
  const ry = rx / FLAT;
  const deep = rx * 0.5;
  const rib = (at: number): string => {
    const w = rx * (1 - at * 0.16);
    return `M${x - w} ${y + deep * at}Q${x} ${y + deep * at + ry * 1.9} ${x + w} ${y + deep * at}`;
  };
  return (
    cut(
      `M${x - rx} ${y}L${x - rx * 0.84} ${y + deep}Q${x} ${y + deep + ry * 1.7} ${x + rx * 0.84} ${y + deep}L${x + rx} ${y}`,
      CLAY,
    ) +
    line(rib(0.35), 2.6) +
    line(rib(0.7), 2.6) +
    oval(x, y, rx, ry, CLAY) +
    oval(x, y + 1, rx - 8, ry - 5, paint) +
    inside
  );
}
