import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCLE, type Neighbour } from '../../../src/core/circle/circle.ts';
import { changed, circleOf, drop, inverse, put } from '../../../src/core/circle/row.ts';

const one = (id: string, name = id): Neighbour => ({ id, name, watch: [] });

describe('a circle and its changes', () => {
  it('puts a thing in its own place, and a new one last', () => {
    const circle = circleOf([
      { puts: [put('neighbours', one('a')), put('neighbours', one('b'))] },
      { puts: [put('neighbours', one('a', 'B of the mill'))] },
    ]);
    expect(circle.neighbours.map(({ name }) => name)).toEqual(['B of the mill', 'b']);
    expect(changed(circle, { puts: [drop('neighbours', 'a')] }).neighbours).toHaveLength(1);
  });

  it('is what it was after a change and its inverse, but for the order of what came back', () => {
    const step = fc.record({ id: fc.constantFrom('a', 'b', 'c'), name: fc.option(fc.string()) });
    fc.assert(
      fc.property(fc.array(step), fc.array(step), (before, steps) => {
        const puts = (list: typeof steps) =>
          list.map(({ id, name }) =>
            name === null ? drop('neighbours', id) : put('neighbours', one(id, name)),
          );
        const circle = changed(CIRCLE, { puts: puts(before) });
        const change = { puts: puts(steps), ways: { times: 3 } };
        // Each put's inverse is of the circle it met: one by one, as a press writes them.
        let now = circle;
        const undo = change.puts.map((each) => {
          const back = inverse(now, { puts: [each] });
          now = changed(now, { puts: [each] });
          return back;
        });
        for (const back of undo.toReversed()) now = changed(now, back);
        const sorted = (list: readonly Neighbour[]) =>
          list.toSorted((a, b) => a.id.localeCompare(b.id));
        expect(sorted(now.neighbours)).toEqual(sorted(circle.neighbours));
        const ways = { puts: [], ways: { times: 3, oven: { from: 480, to: 720 } } };
        expect(changed(changed(circle, ways), inverse(circle, ways))).toEqual(circle);
      }),
    );
  });
});
