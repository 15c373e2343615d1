import { describe, expect, it } from 'vitest';
import { loudnessAt, toneOf, type Tone } from '../../../src/core/speech/burst.ts';

type Kind = Parameters<typeof toneOf>[0];
const KINDS: readonly Kind[] = ['look', 'act', 'hot'];

function tones(kind: Kind, from = 0, until = 3600): Tone[] {
  const all: Tone[] = [];
  for (let n = 0; ; n += 1) {
    const tone = toneOf(kind, n, from);
    if (tone === null || tone.at > until) return all;
    all.push(tone);
  }
}
const times = (kind: Kind, from = 0, until = 3600) => tones(kind, from, until).map(({ at }) => at);

describe('a burst', () => {
  it('of look sounds every 20 s, three times, and reminds once at 5 min', () => {
    expect(times('look')).toEqual([0, 20, 40, 300]);
  });

  it('of act sounds every 6 s for a minute, and reminds once at 5 min', () => {
    expect(times('act')).toEqual([0, 6, 12, 18, 24, 30, 36, 42, 48, 54, 300]);
  });

  it('of hot sounds every 3 s for a minute, then every 20 s until silenced', () => {
    const minute = Array.from({ length: 20 }, (_, i) => i * 3);
    expect(times('hot', 0, 60)).toEqual(minute);
    expect(times('hot', 0, 140)).toEqual([...minute, 77, 97, 117, 137]);
    expect(toneOf('hot', 100_000)).not.toBeNull();
  });

  it('grows louder at 15 and 45 s, hot from −6', () => {
    expect(tones('look').map(({ db }) => db)).toEqual([-12, -6, -6, 0]);
    expect(tones('act').map(({ db }) => db)).toEqual([-12, -12, -12, -6, -6, -6, -6, -6, 0, 0, 0]);
    const hot = new Map(tones('hot', 0, 100).map(({ at, db }) => [at, db]));
    expect([0, 15, 42, 45, 97].map((at) => hot.get(at))).toEqual([-6, -6, -6, 0, 0]);
    expect([14.99, 15, 44.99, 45].map((at) => loudnessAt('act', at))).toEqual([-12, -6, -6, 0]);
  });

  it.each(KINDS)(
    'of %s is never quiet about a late call, and never gentler for being late',
    (kind) => {
      for (const from of [0.3, 14, 15, 31.5, 44, 59.9, 60, 61, 250, 299, 301, 2820, 100_000]) {
        const first = toneOf(kind, 0, from);
        expect(first).toEqual({ at: from, db: loudnessAt(kind, from) });
      }
    },
  );

  it.each(KINDS)('of %s keeps its spacing however late it begins', (kind) => {
    const every = { look: 20, act: 6, hot: 3 }[kind];
    for (const from of [0, 1, 7.25, 31.5, 58, 60, 239, 241, 299, 4000]) {
      const all = times(kind, from, from + 400);
      const gaps = all.slice(1).map((at, i) => at - (all[i] ?? 0));
      expect(Math.min(...gaps, every)).toBeCloseTo(every, 9);
      if (kind !== 'hot') expect(all.filter((at) => at >= 60).length).toBeLessThanOrEqual(2);
    }
  });

  it('lets a late call stand for the reminder it nearly meets', () => {
    expect(times('look', 239)).toEqual([239, 300]);
    expect(times('look', 241)).toEqual([241]);
    expect(times('act', 2820)).toEqual([2820]);
  });
});
