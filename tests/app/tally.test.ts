import { describe, expect, it } from 'vitest';
import type { OwedRing } from './support/owed-calls.ts';
import { add, tableOf, tallyOf } from './support/tally.ts';
import { wrongRings, type HeardRing } from './support/wrong-rings.ts';

const owed: readonly OwedRing[] = [
  { truth: 1_000, id: 'a:vent:5', kind: 'hot', late: 0 },
  { truth: 90_000, id: 'b:mix.salt:7', kind: 'act', late: 60_000 },
  { truth: 99_000, id: 'a:vent:5', kind: 'hot', late: null },
];
const heard: readonly HeardRing[] = owed.map(({ truth, id, kind, late }) => ({
  ...{ truth: truth + 400, wall: 0, id, kind, late: late ?? 12_345 },
}));
const but = (n: number, change: Partial<HeardRing>): readonly HeardRing[] =>
  heard.map((ring, at) => (at === n ? { ...ring, ...change } : ring));

describe('what was heard, held against what was owed', () => {
  it('is right where each came once, within a second, as late as it is', () => {
    expect(wrongRings(heard, owed)).toEqual([]);
    expect(tallyOf(heard, owed)).toEqual({
      ...{ owed: 3, inTime: 2, late: 1, wrong: 0, lost: 0, double: 0, most: 400 },
    });
  });

  it.each([
    ['one that never came', heard.slice(0, 2), /Lost/, { lost: 1, inTime: 1 }],
    ['one in the middle that never came', heard.toSpliced(1, 1), /not/, { lost: 1, late: 0 }],
    ['one that came twice', [...heard, heard[2]!], /Too much/, { double: 1 }],
    ['one that nobody is owed', heard.with(0, { ...heard[0]!, id: 'none' }), /not/, { double: 1 }],
    ['two seconds late', but(0, { truth: 3_001 }), /not/, { wrong: 1, most: 2_001 }],
    ['a second and more too early', but(1, { truth: 88_999 }), /not/, { wrong: 1, most: 1_001 }],
    ['not marked late', but(1, { late: 0 }), /not/, { wrong: 1, late: 0 }],
    ['called in another way', but(0, { kind: 'look' }), /not/, {}],
    ['the second before the first', heard.toReversed(), /not/, {}],
  ])('tells %s', (_, is, words, tally) => {
    expect(wrongRings(is, owed).join()).toMatch(words);
    expect(tallyOf(is, owed)).toMatchObject(tally);
  });

  it('is told in a table, night by night and all together', () => {
    const one = tallyOf(heard, owed);
    expect(add(one, one)).toMatchObject({ owed: 6, inTime: 4, late: 2, most: 400 });
    expect(tableOf({ night: one, other: one }).split('\n').slice(2)).toEqual([
      '| night | 3 | 2 | 1 | 0 | 0 | 0 | 400 |',
      '| other | 3 | 2 | 1 | 0 | 0 | 0 | 400 |',
      '| all of them | 6 | 4 | 2 | 0 | 0 | 0 | 400 |',
    ]);
  });
});
