/** A label that belongs to a place on the chart, 0–1 from its left and top. */
export interface Bare {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  /** Nothing is drawn there that a label could lie on. */
  readonly blank?: true;
  /** The label of a line from foot to top: it may stand anywhere along it, from its place up. */
  readonly upright?: true;
}

/** Which side of its place a label stands on, and how many lines above it. */
export interface Stands {
  readonly side: 'left' | 'right';
  readonly up: number;
}

/** A letter's width and a line's height, as shares of the chart: as it is on the screen. */
export interface Room {
  readonly letter: number;
  readonly line: number;
}

interface Box {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly foot: number;
}

/** Where a label may stand, in lines above its place; the first that is free. */
const TRIES = [0, 1, -1, 2, -2, 3, -3] as const;

const meet = (a: Box, b: Box): boolean =>
  a.from < b.to && b.from < a.to && a.top < b.foot && b.top < a.foot;
const isInside = ({ from, to, top, foot }: Box): boolean =>
  from >= 0 && to <= 1 && top >= 0 && foot <= 1;

/** The same along an upright line, by half lines. */
const upTo = (line: number): readonly number[] =>
  Array.from({ length: Math.ceil(2 / line) }, (_, half) => half / 2);

/**
 * Each place with its label beside it: on the right where there is room, else on the left, moved up or
 * down by lines where another label or another place stands; the first are placed first. Where nothing
 * is free, on the side with more room all the same.
 */
export function placeLabels<T extends Bare>(
  places: readonly T[],
  { letter, line }: Room,
): readonly (T & Stands)[] {
  const gap = letter * 1.2;
  const dots: (Box | null)[] = places.map(({ x, y, blank }) =>
    blank
      ? null
      : {
          from: x - gap / 2,
          to: x + gap / 2,
          top: y - line / 3,
          foot: y + line / 3,
        },
  );
  const taken: Box[] = [];
  return places.map((place, i) => {
    const { x, y, label } = place;
    const long = (label.length + 1) * letter;
    for (const up of place.upright ? upTo(line) : TRIES) {
      for (const side of ['right', 'left'] as const) {
        const from = side === 'right' ? x + gap : x - gap - long;
        const middle = y - up * line;
        const box = { from, to: from + long, top: middle - line / 2, foot: middle + line / 2 };
        const onDot = dots.some((dot, j) => dot !== null && j !== i && meet(dot, box));
        if (!isInside(box) || onDot || taken.some((other) => meet(other, box))) continue;
        taken.push(box);
        return { ...place, side, up };
      }
    }
    return { ...place, side: x > 0.5 ? ('left' as const) : ('right' as const), up: 0 };
  });
}
