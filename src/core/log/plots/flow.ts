import { GAP, lineHeight, textWidth, type Letters } from '../chart/labels.ts';
import type { DrawnPart, MarkShape } from '../drawing.ts';

/** A word of a line, with the mark it explains before it. */
export interface FlowWord {
  readonly text: string;
  readonly shape?: MarkShape;
}

/** mm from a mark's middle to its word, and what a mark takes on either side. */
const MARK = { before: 1.8, behind: 3 } as const;

const wide = ({ text, shape }: FlowWord, letters: Letters): number =>
  textWidth(text, letters) + (shape ? MARK.before + MARK.behind : 0);

/**
 * Words laid one after the other from the left, on a new line where one has no room: as parts, and how many
 * lines they take. `at` is the first line's left and baseline. A word wider than the room is left out: the
 * table has it.
 */
export function flow(
  words: readonly FlowWord[],
  [left, baseline]: readonly [number, number],
  width: number,
  letters: Letters,
): { readonly lines: number; readonly parts: readonly DrawnPart[] } {
  const parts: DrawnPart[] = [];
  let [x, line] = [0, 0];
  for (const word of words) {
    const long = wide(word, letters);
    if (long > width) continue;
    if (x > 0 && x + long > width) [x, line] = [0, line + 1];
    const y = baseline + line * lineHeight(letters);
    const from = left + x;
    if (word.shape) {
      const at = [from + MARK.before, y - letters.cap / 2] as const;
      parts.push({ kind: 'mark', shape: word.shape, at });
    }
    const start = from + (word.shape ? MARK.before + MARK.behind : 0);
    parts.push({ kind: 'text', at: [start, y], text: word.text, anchor: 'start' });
    x += long + GAP * 1.5;
  }
  return { lines: parts.length === 0 ? 0 : line + 1, parts };
}
