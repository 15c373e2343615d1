import { describe, expect, it } from 'vitest';
import { activeOf, type Offered } from '../../../src/core/ear/active.ts';
import { DIGITS, EAR_PHRASES, MOST_ACTIVE, type EarPhrase } from '../../../src/core/ear/phrases.ts';

const ALL: ReadonlySet<EarPhrase> = new Set(EAR_PHRASES);
const offered = (does: readonly EarPhrase[], more: Partial<Offered> = {}): Offered => ({
  does: new Set(does),
  over: false,
  byHand: false,
  asksBack: false,
  takesKeys: false,
  runs: false,
  teaches: false,
  learns: false,
  ...more,
});
const active = (
  does: readonly EarPhrase[],
  more: Partial<Offered> = {},
  known: ReadonlySet<EarPhrase> = ALL,
) => activeOf(offered(does, more), known);

const ACT = ['done', 'takeBack', 'sayAgain', 'reading'] as const;
const KEYPAD = [...DIGITS, 'yes', 'no'] as const;

describe('what is listened for', () => {
  it('on an act is that it is done, the way back, and to hear of it once more', () => {
    expect(active(ACT, { runs: true })).toEqual(['done', 'takeBack', 'sayAgain', 'longer']);
    expect(active(ACT)).toEqual(['done', 'takeBack', 'sayAgain', 'reading']);
  });

  it('in a wait is how long yet, and a reading', () => {
    expect(active(['takeBack', 'sayAgain', 'reading'], { runs: true })).toEqual([
      'longer',
      'reading',
      'takeBack',
      'sayAgain',
    ]);
  });

  it('at a look is what it came to', () => {
    expect(active(['ready', 'notYet', 'takeBack', 'sayAgain'])).toEqual([
      'ready',
      'notYet',
      'takeBack',
      'sayAgain',
    ]);
    expect(active(['springs', 'slowly', 'stays', 'takeBack', 'sayAgain']).slice(0, 3)).toEqual([
      'springs',
      'slowly',
      'stays',
    ]);
  });

  it('is how it is done where somebody learns, or where it is shown on the page', () => {
    expect(active(ACT, { teaches: true })).not.toContain('showMe');
    expect(active(ACT, { teaches: true, learns: true })).toContain('showMe');
    expect(active(['done', 'takeBack', 'sayAgain', 'showMe'])).toContain('showMe');
  });

  it('is nothing that changes anything near what is hot, sharp or powered', () => {
    const told: readonly EarPhrase[] = ['lidOff', 'sayAgain', 'longer', 'hush'];
    for (const does of [EAR_PHRASES, ACT, KEYPAD, ['springs', 'slowly', 'stays']] as const) {
      for (const over of [true, false]) {
        const here = active(does, {
          byHand: true,
          runs: true,
          over,
          asksBack: true,
          takesKeys: true,
        });
        expect(here.filter((phrase) => !told.includes(phrase))).toEqual([]);
      }
    }
    expect(active(['lidOff', 'sayAgain'], { byHand: true, runs: true })).toEqual(told);
  });

  it('is all digits where a number is asked, and then whether it is right', () => {
    expect(active(KEYPAD, { takesKeys: true })).toEqual(DIGITS);
    expect(active(KEYPAD, { takesKeys: true, asksBack: true })).toEqual(['yes', 'no']);
    // What a hand began is not gone on with.
    expect(active(KEYPAD, { over: true })).toEqual([]);
  });

  it('over the bench belongs to a reading, or is nothing', () => {
    expect(active([...ACT, 'showMe', 'notYet'], { over: true, runs: true, teaches: true })).toEqual(
      [],
    );
    expect(active(['springs', 'slowly', 'stays'], { over: true })).toHaveLength(3);
    expect(active(KEYPAD, { over: true, takesKeys: true })).toEqual(DIGITS);
  });

  it('is known to somebody here, and what comes next moves up', () => {
    const known = new Set<EarPhrase>(['takeBack', 'longer', 'reading', 'hush']);
    expect(active(ACT, { runs: true }, known)).toEqual(['takeBack', 'longer', 'reading', 'hush']);
    expect(active(ACT, { runs: true }, new Set())).toEqual([]);
    expect(active([], {}, new Set(['hush']))).toEqual([]);
  });

  it('is never more than can be told apart, but for digits', () => {
    for (const runs of [true, false]) {
      for (const learns of [true, false]) {
        const here = active(EAR_PHRASES, { runs, learns, teaches: true });
        expect(here.length).toBeLessThanOrEqual(MOST_ACTIVE);
        expect(new Set(here).size).toBe(here.length);
      }
    }
  });
});
