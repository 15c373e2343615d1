import { boxOf, overlaps, type Box, type DrawnText, type Letters } from '../chart/labels.ts';
import type { Spot } from '../drawing.ts';
import type { Place } from './frame.ts';

/** A mark with a word that may stand beside it. */
export interface Named {
  readonly at: Spot;
  readonly text: string;
}

/** What a mark takes, mm either way, and how far its word stands from its middle. */
const MARK = 1.8;
const APART = 2.6;

/** Right, left, above, below: the first that is free. */
const sides = ([x, y]: Spot, text: string, { cap }: Letters): readonly DrawnText[] => [
  { kind: 'text', at: [x + APART, y + cap / 2], text, anchor: 'start', onGround: true },
  { kind: 'text', at: [x - APART, y + cap / 2], text, anchor: 'end', onGround: true },
  { kind: 'text', at: [x, y - APART], text, anchor: 'middle', onGround: true },
  { kind: 'text', at: [x, y + APART + cap], text, anchor: 'middle', onGround: true },
];

const isIn = (box: Box, { left, right, top, bottom }: Place): boolean =>
  box.left >= left && box.right <= right && box.top >= top && box.bottom <= bottom;

/**
 * Words beside their marks, the first of the list first: a word that would lie on another, on any mark or
 * out of the place is not written. At most `most` of them.
 */
export function besideMarks(
  named: readonly Named[],
  marks: readonly Spot[],
  place: Place,
  letters: Letters,
  most = 8,
): readonly DrawnText[] {
  const dots = marks.map(([x, y]): Box => ({
    left: x - MARK,
    right: x + MARK,
    top: y - MARK,
    bottom: y + MARK,
  }));
  const written: DrawnText[] = [];
  const taken: Box[] = [];
  for (const { at, text } of named) {
    if (written.length >= most) break;
    const free = sides(at, text, letters).find((one) => {
      const box = boxOf(one, letters);
      return (
        isIn(box, place) &&
        !taken.some((other) => overlaps(other, box)) &&
        !dots.some((dot) => overlaps(dot, box))
      );
    });
    if (free === undefined) continue;
    written.push(free);
    taken.push(boxOf(free, letters));
  }
  return written;
}
