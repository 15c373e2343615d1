import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxOf,
  cutTo,
  GAP,
  lineHeight,
  overlaps,
  stack,
  textWidth,
  thin,
} from '../../../../src/core/log/chart/labels.ts';

const letters = fc.record({
  cap: fc.double({ min: 1, max: 6, noNaN: true }),
  letter: fc.double({ min: 0.8, max: 5, noNaN: true }),
});
const mm = fc.double({ min: 0, max: 150, noNaN: true });

describe('labels along a line', () => {
  it('that stay never touch and never run out; the first of all that fits stays', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ at: mm, width: fc.double({ min: 1, max: 60, noNaN: true }) }), {
          maxLength: 12,
        }),
        (labels) => {
          const kept = thin(labels, [0, 150]).map((n) => labels[n]!);
          kept.forEach((one, n) => {
            expect(one.at - one.width / 2).toBeGreaterThanOrEqual(0);
            expect(one.at + one.width / 2).toBeLessThanOrEqual(150);
            for (const other of kept.slice(n + 1))
              expect(Math.abs(one.at - other.at)).toBeGreaterThanOrEqual(
                (one.width + other.width) / 2 + GAP - 1e-9,
              );
          });
          const fits = labels.findIndex(
            ({ at, width }) => at - width / 2 >= 0 && at + width / 2 <= 150,
          );
          if (fits >= 0) expect(thin(labels, [0, 150])[0]).toBe(fits);
        },
      ),
    );
  });
});

describe('labels one under the other', () => {
  it('keep their order by place, do not overlap, and stay in their room; the first stay', () => {
    fc.assert(
      fc.property(
        fc.array(mm, { maxLength: 12 }),
        fc.double({ min: 0, max: 150, noNaN: true }),
        letters,
        (places, height, its) => {
          const found = stack(places, [10, 10 + height], its);
          expect(found).toHaveLength(places.length);
          const boxes = found.flatMap((y, n) =>
            y === null
              ? []
              : [
                  {
                    place: places[n]!,
                    box: boxOf({ kind: 'text', at: [0, y], text: 'ag', anchor: 'start' }, its),
                  },
                ],
          );
          const fit = Math.floor(height / lineHeight(its) + 1e-9);
          expect(found.slice(0, fit)).not.toContain(null);
          boxes.forEach(({ box, place }, n) => {
            expect(box.top).toBeGreaterThanOrEqual(10 - 1e-6);
            expect(box.bottom).toBeLessThanOrEqual(10 + height + 1e-6);
            for (const other of boxes.slice(n + 1)) {
              expect(overlaps(box, other.box)).toBe(false);
              if (other.place > place) expect(other.box.top).toBeGreaterThan(box.top);
            }
          });
        },
      ),
    );
  });
});

describe('a text', () => {
  it('is cut to its room, and only where it must be', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.double({ min: 0, max: 60, noNaN: true }),
        letters,
        (text, width, its) => {
          const cut = cutTo(text, width, its);
          expect(textWidth(cut, its)).toBeLessThanOrEqual(width + 1e-6);
          if (textWidth(text, its) <= width) expect(cut).toBe(text);
        },
      ),
    );
  });

  it('takes the room that its anchor says', () => {
    const its = { cap: 2, letter: 1 };
    const at = (anchor: 'start' | 'middle' | 'end') =>
      boxOf({ kind: 'text', at: [10, 5], text: 'four', anchor }, its);
    expect(at('start')).toEqual({ left: 10, right: 14, top: 3, bottom: 5.7 });
    expect(at('middle').left).toBe(8);
    expect(at('end').right).toBe(10);
  });
});
