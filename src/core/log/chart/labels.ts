import type { DrawingRoom, DrawnPart } from '../drawing.ts';
import { spread } from './spread.ts';

/** What a chart is told of its letters. */
export type Letters = Pick<DrawingRoom, 'cap' | 'letter'>;

export type DrawnText = Extract<DrawnPart, { kind: 'text' }>;

/** mm; top smaller than bottom. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A letter may hang below its line so far, and two lines stand so far apart, both in cap heights. */
const BELOW = 0.35;
const LINE = 1.9;

/** mm between two labels of one line. */
export const GAP = 2;

/**
 * About how wide a text is drawn, mm.
 *
 * @example
 * textWidth('24 °C', { cap: 2, letter: 1.5 }) // → 7.5
 */
export const textWidth = (text: string, { letter }: Letters): number => [...text].length * letter;

/**
 * From one line of text to the next, mm.
 *
 * @example
 * lineHeight({ cap: 2, letter: 1.5 }) // → 3.8
 */
export const lineHeight = ({ cap }: Letters): number => cap * LINE;

/** What a text takes of its drawing. */
export function boxOf({ at: [x, y], text, anchor }: DrawnText, letters: Letters): Box {
  const width = textWidth(text, letters);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  const { cap } = letters;
  return { left, right: left + width, top: y - cap, bottom: y + cap * BELOW };
}

/** Whether two boxes share any room. */
export const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/**
 * A text that is too long for its room, cut at a word where one fits, with a sign that it was; '' where not
 * even three letters fit.
 *
 * @example
 * cutTo('Cherry and hazelnut', 14, { cap: 2, letter: 1 }) // → 'Cherry and…'
 * cutTo('Lane wheat', 14, { cap: 2, letter: 1 }) // → 'Lane wheat'
 */
export function cutTo(text: string, width: number, letters: Letters): string {
  const most = Math.floor(width / letters.letter + 1e-9);
  const all = [...text];
  if (all.length <= most) return text;
  if (most < 4) return '';
  const cut = all.slice(0, most - 1).join('');
  const word = all[most - 1] === ' ' ? cut : cut.slice(0, Math.max(0, cut.lastIndexOf(' ')));
  return `${(word.length >= most / 2 ? word : cut).trimEnd()}…`;
}

/** A label along a line, its middle and its width in mm. */
export interface AlongLabel {
  readonly at: number;
  readonly width: number;
}

/**
 * Which labels along a line stay so that none touches another: those that come first in the list have the
 * first say, so what matters most goes first. All stay whole between `from` and `to`: one that would run out
 * is not there. By index, in the list's order.
 *
 * @example
 * thin([{ at: 10, width: 8 }, { at: 14, width: 8 }, { at: 30, width: 8 }], [0, 40]) // → [0, 2]
 */
export function thin(
  labels: readonly AlongLabel[],
  [from, to]: readonly [number, number],
  gap = GAP,
): readonly number[] {
  const kept: number[] = [];
  labels.forEach(({ at, width }, n) => {
    const isIn = at - width / 2 >= from && at + width / 2 <= to;
    const isFree = kept.every((k) => {
      const other = labels[k]!;
      return Math.abs(other.at - at) >= (other.width + width) / 2 + gap;
    });
    if (isIn && isFree) kept.push(n);
  });
  return kept;
}

/**
 * Baselines for labels one under the other, each as near its place as can be, none over another, none out
 * of `from`…`to` (top and bottom of the room). Where they are too many, the first of the list stay: null has
 * no room. In the list's order.
 *
 * @example
 * stack([10, 10.5], [0, 40], { cap: 2, letter: 1.5 }) // → [9.35, 13.15]
 */
export function stack(
  places: readonly number[],
  [from, to]: readonly [number, number],
  letters: Letters,
): readonly (number | null)[] {
  const line = lineHeight(letters);
  const most = Math.max(0, Math.floor((to - from) / line + 1e-9));
  const stay = places.map((at, n) => ({ at, n })).slice(0, most);
  const order = stay.toSorted((a, b) => a.at - b.at || a.n - b.n);
  const tops = spread(
    order.map(({ at }) => at - from),
    order.map(() => line),
    0,
    to - from,
  );
  const found: (number | null)[] = places.map(() => null);
  // A label's middle stands at its place: half a cap above its baseline.
  order.forEach(({ n }, i) => (found[n] = from + tops[i]! + line / 2 + letters.cap / 2));
  return found;
}
