import { describe, expect, it } from 'vitest';
import { watchedIn } from '../../../src/core/circle/watched.ts';
import type { Filling, Flour } from '../../../src/core/formula/formula.ts';

const flour = (grain: Flour['grain'], more: Partial<Flour> = {}): Flour => ({
  id: grain,
  name: `${grain} flour`,
  grain,
  pct: 100,
  packet: 'read',
  ...more,
});
const filling = (
  name: string,
  allergens: readonly string[],
  more: Partial<Filling> = {},
): Filling => ({
  id: name,
  name,
  pct: 10,
  keeps: 'shelf',
  allergens,
  ...more,
});
const bread = (flours: readonly Flour[], ...fillings: readonly Filling[]) => ({ flours, fillings });

describe('a list against a bread', () => {
  it('meets an allergen by its name, and a nut by its kind', () => {
    const its = bread(
      [flour('wheat')],
      filling('nuts', ['tree nuts (walnut)']),
      filling('cheese', ['milk']),
    );
    expect(watchedIn(['tree nuts (walnut)'], its).named).toEqual(['tree nuts (walnut)']);
    expect(watchedIn(['tree nuts'], its).named).toEqual(['tree nuts (walnut)']);
    expect(watchedIn(['tree nuts (almond)'], its).named).toEqual([]);
    expect(watchedIn(['Milk', 'sesame'], its).named).toEqual(['milk']);
  });

  it('takes spelt for wheat, and rye for no wheat', () => {
    expect(watchedIn(['gluten (wheat)'], bread([flour('spelt')])).named).toEqual([
      'gluten (spelt wheat)',
    ]);
    expect(watchedIn(['gluten (wheat)'], bread([flour('rye')])).named).toEqual([]);
    expect(watchedIn(['gluten'], bread([flour('rye')])).named).toEqual(['gluten (rye)']);
  });

  it('tells a nut that nobody named, also where another filling’s nut is named', () => {
    const its = bread(
      [flour('wheat')],
      filling('praline', ['tree nuts (hazelnut)']),
      filling('mixed nuts', ['tree nuts (name the nut)']),
    );
    expect(watchedIn(['tree nuts (walnut)'], its)).toEqual({
      named: [],
      open: ['tree nuts (name the nut)'],
      unanswered: [],
    });
    expect(
      watchedIn(['milk'], bread([flour('wheat')], filling('x', ['milk, if the packet says so'])))
        .open,
    ).toEqual(['milk, if the packet says so']);
  });

  it('meets words of a file’s own as they are', () => {
    expect(watchedIn(['Kiwi'], bread([], filling('fruit', ['kiwi']))).named).toEqual(['kiwi']);
    expect(watchedIn(['kiwi'], bread([], filling('fruit', ['pear']))).named).toEqual([]);
  });

  it('never takes for none what nobody has answered for, flours as fillings', () => {
    const its = bread(
      [flour('wheat', { packet: undefined } as unknown as Partial<Flour>)],
      filling('cherries', []),
      filling('raisins', [], { packet: 'read' }),
    );
    expect(watchedIn(['milk'], its).unanswered).toEqual(['wheat flour', 'cherries']);
    expect(watchedIn([], its).unanswered).toEqual([]);
  });
});
