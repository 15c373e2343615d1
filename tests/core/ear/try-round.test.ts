import { describe, expect, it } from 'vitest';
import { MOST_ACTIVE } from '../../../src/core/ear/phrases.ts';
import { ROUNDS } from '../../../src/core/ear/known.ts';
import { judgeTry, TRIES, tryRound, type TryOutcome } from '../../../src/core/ear/try-round.ts';

describe('a try', () => {
  it('is of no fewer phrases than may be taken for one another', () => {
    expect(tryRound([])).toEqual([]);
    expect(tryRound(['done'])).toEqual([]);
  });

  it.each([2, 3, 4, 5, 6, 7, 8, 15])('asks eight times about %i phrases in small sets', (known) => {
    const round = tryRound(ROUNDS.phrases.slice(0, known));
    expect(round).toHaveLength(TRIES);
    for (const { asked, active } of round) {
      expect(active).toContain(asked);
      expect(active.length).toBeGreaterThanOrEqual(2);
      expect(active.length).toBeLessThanOrEqual(MOST_ACTIVE);
    }
    expect(new Set(round.map(({ asked }) => asked)).size).toBe(Math.min(known, TRIES));
    // The microphone is opened anew for each set alone.
    const turns = round.filter(({ active }, n) => active !== round[n - 1]?.active);
    expect(turns).toHaveLength(known > MOST_ACTIVE ? 2 : 1);
  });
});

const judge = (right: number, wrong: number, missed: number, rooms: number[] = [], loud = 0) => {
  const of = (which: TryOutcome, n: number) => Array.from({ length: n }, () => which);
  const outcomes = [...of('right', right), ...of('wrong', wrong), ...of('missed', missed)];
  return judgeTry({ outcomes, rooms, loud });
};

describe('what a try says', () => {
  it('is counted, and what was taken for another counted apart', () => {
    expect(judge(5, 2, 1)).toMatchObject({ right: 5, wrong: 2, of: 8 });
  });

  it.each([
    [8, 'well'],
    [7, 'well'],
    [6, 'often'],
    [4, 'often'],
    [3, 'seldom'],
    [0, 'seldom'],
  ] as const)('of eight, with %i right: %s', (right, hears) => {
    expect(judge(right, 0, 8 - right).hears).toBe(hears);
  });

  it('tells how loud it was by its middle, or by what was too loud to tell, or not at all', () => {
    expect(judge(8, 0, 0).room).toBeNull();
    expect(judge(8, 0, 0, [-60, -55, -10]).room).toBe('calm');
    expect(judge(8, 0, 0, [-60, -45, -40]).room).toBe('lively');
    expect(judge(8, 0, 0, [-60, -30, -20]).room).toBe('loud');
    expect(judge(6, 0, 2, [-60], 2).room).toBe('calm');
    expect(judge(5, 0, 3, [-60], 3).room).toBe('loud');
    expect(judge(5, 0, 3, [], 3).room).toBe('loud');
  });
});
