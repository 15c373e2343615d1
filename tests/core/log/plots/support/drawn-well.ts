import fc from 'fast-check';
import { expect } from 'vitest';
import { boxOf, overlaps } from '../../../../../src/core/log/chart/labels.ts';
import type {
  Drawing,
  DrawingRoom,
  DrawnPart,
  MarkShape,
} from '../../../../../src/core/log/drawing.ts';

/** As the page's chart stands on tablets, in plain and in bigger words. */
export const rooms: fc.Arbitrary<DrawingRoom> = fc
  .record({
    width: fc.double({ min: 110, max: 220, noNaN: true }),
    height: fc.double({ min: 50, max: 150, noNaN: true }),
    cap: fc.double({ min: 2, max: 4.1, noNaN: true }),
  })
  .map(({ cap, ...room }) => ({ ...room, cap, letter: (cap / 0.7) * 0.58 }));

export const ROOM: DrawingRoom = { width: 190, height: 66, cap: 2.85, letter: 2.36 };

const spotsOf = (part: DrawnPart) =>
  part.kind === 'line' || part.kind === 'area' ? part.at : [part.at];

/** Everything lies within the drawing, and no word on another. */
export function expectDrawnWell(drawing: Drawing, room: DrawingRoom): void {
  expect([drawing.width, drawing.height]).toEqual([room.width, room.height]);
  for (const part of drawing.parts)
    for (const [x, y] of spotsOf(part)) {
      expect(x, part.kind).toBeGreaterThanOrEqual(-1e-6);
      expect(x, part.kind).toBeLessThanOrEqual(room.width + 1e-6);
      expect(y, part.kind).toBeGreaterThanOrEqual(-1e-6);
      expect(y, part.kind).toBeLessThanOrEqual(room.height + 1e-6);
    }
  const texts = drawing.parts.flatMap((part) => (part.kind === 'text' ? [part] : []));
  const boxes = texts.map((text) => boxOf(text, room));
  boxes.forEach((box, n) => {
    const { text } = texts[n]!;
    expect(box.left, text).toBeGreaterThanOrEqual(-1e-6);
    expect(box.right, text).toBeLessThanOrEqual(room.width + 1e-6);
    expect(box.top, text).toBeGreaterThanOrEqual(-1e-6);
    expect(box.bottom, text).toBeLessThanOrEqual(room.height + 1e-6);
    boxes.slice(n + 1).forEach((other, m) => {
      expect(overlaps(box, other), `${text} on ${texts[n + 1 + m]!.text}`).toBe(false);
    });
  });
}

/** How many marks of a shape there are, without those beside the words that explain them. */
export const marksOf = (drawing: Drawing, shape: MarkShape, explained = 1): number => {
  const all = drawing.parts.filter((part) => part.kind === 'mark' && part.shape === shape).length;
  return all === 0 ? 0 : all - explained;
};
