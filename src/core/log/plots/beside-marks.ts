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

/** Right, left, above, below, and above and below again leaning inward: the first that is free. */
const sides = ([x, y]: Spot, text: string, { cap }: Letters): readonly DrawnText[] => {
  const [above, level, below] = [y - APART - cap * 0.35, y + cap / 2, y + APART + cap];
  const stand = (at: Spot, anchor: DrawnText['anchor']): DrawnText => ({
    kind: 'text',
    at,
    text,
    anchor,
    onGround: true,
  });
  return [
    stand([x + APART, level], 'start'),
    stand([x - APART, level], 'end'),
    ...[above, below].map((line) => stand([x, line], 'middle')),
    ...[above, below].map((line) => stand([x + MARK, line], 'end')),
    ...[above, below].map((line) => stand([x - MARK, line], 'start')),
  ];
};

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
