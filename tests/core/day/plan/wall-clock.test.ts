import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { plan } from '../../../../src/core/day/plan.ts';
import {
  expandWeekly,
  instantOf,
  instantsOf,
  wallTime,
  whichOf,
  type WallTime,
} from '../../../../src/core/day/plan/wall-clock.ts';
import { wait } from '../support/instances.ts';
import { seeded } from '../support/seeded.ts';

const MINUTE = 60_000;
const DAY = 1440 * MINUTE;
const TORONTO = 'America/Toronto';
const BERLIN = 'Europe/Berlin';

const wall = (text: string): WallTime => {
  const [year, month, day, hour, minute] = text.split(/\D/).map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  return { year, month, day, hour, minute };
};
const shown = ({ year, month, day, hour, minute }: WallTime): string => {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)} ${two(hour)}:${two(minute)}`;
};
const utc = (at: number): string => new Date(at).toISOString().slice(0, 16);

describe('the clock on the wall, where it changes', () => {
  const nights = (name: string, weekdays: number[], from: number, to: number) => [
    { name, weekdays, from: from * 60, to: to * 60 },
  ];

  it('a night of the change back is 540 minutes, of the change forward 420', () => {
    const sleep = (zone: string, day: string, window: ReturnType<typeof nights>): number => {
      const from = instantOf(wall(day), zone, 'earlier');
      const [span] = expandWeekly(window, { from, to: from + DAY, zone });
      return (span!.to - span!.from) / MINUTE;
    };
    expect(sleep(TORONTO, '2026-10-31 12:00', nights('sleep', [6], 22.5, 6.5))).toBe(540);
    expect(sleep(BERLIN, '2027-03-27 12:00', nights('sleep', [6], 23, 7))).toBe(420);
  });

  it('a length is elapsed: 840 minutes from 19:30 end at 8:30', () => {
    const end = instantOf(wall('2026-10-31 19:30'), TORONTO, 'earlier') + 840 * MINUTE;
    expect(shown(wallTime(end, TORONTO))).toBe('2026-11-01 08:30');
    expect(utc(end)).toBe('2026-11-01T13:30');
  });

  it('a time that is shown twice is two instants, in order, told apart', () => {
    const both = instantsOf(wall('2026-11-01 01:30'), TORONTO);
    expect(both.map(utc)).toEqual(['2026-11-01T05:30', '2026-11-01T06:30']);
    expect(both.map((at) => whichOf(at, TORONTO))).toEqual(['first', 'second']);
    expect(whichOf(both[0]! - 60 * MINUTE, TORONTO)).toBeNull();
    expect(instantOf(wall('2026-11-01 01:30'), TORONTO, 'earlier')).toBe(both[0]);
    expect(instantOf(wall('2026-11-01 01:30'), TORONTO, 'later')).toBe(both[1]);
  });

  it('a time that does not exist moves on by the gap', () => {
    const at = instantOf(wall('2027-03-28 02:30'), BERLIN, 'earlier');
    expect(instantsOf(wall('2027-03-28 02:30'), BERLIN)).toEqual([]);
    expect(utc(at)).toBe('2027-03-28T01:30');
    expect(shown(wallTime(at, BERLIN))).toBe('2027-03-28 03:30');
    const hot = instantOf(wall('2027-03-28 01:40'), BERLIN, 'earlier') + 45 * MINUTE;
    expect(shown(wallTime(hot, BERLIN))).toBe('2027-03-28 03:25');
  });

  it('a window blocks more where the hour is repeated, never less', () => {
    const from = instantOf(wall('2026-10-31 12:00'), TORONTO, 'earlier');
    const window = nights('out', [0], 1, 1.5);
    const [span] = expandWeekly(window, { from, to: from + DAY, zone: TORONTO });
    expect([utc(span!.from), utc(span!.to)]).toEqual(['2026-11-01T05:00', '2026-11-01T06:30']);
  });

  it('a fold over midnight is shown on its own day; a window belongs to the day it begins on', () => {
    const fold = instantOf(wall('2026-10-06 23:50'), TORONTO, 'earlier') + 30 * MINUTE;
    expect(shown(wallTime(fold, TORONTO))).toBe('2026-10-07 00:20');
    const from = instantOf(wall('2026-10-05 00:00'), TORONTO, 'earlier');
    const sleep = nights('sleep', [0], 22.5, 6.5);
    const spans = expandWeekly(sleep, { from, to: from + 7 * DAY, zone: TORONTO });
    expect(spans.map((span) => shown(wallTime(span.from, TORONTO)))).toEqual([
      '2026-10-04 22:30',
      '2026-10-11 22:30',
    ]);
    expect(shown(wallTime(spans[0]!.to, TORONTO))).toBe('2026-10-05 06:30');
  });

  it('a tablet carried into another zone plans the same instants', () => {
    const at = Date.UTC(2026, 9, 31, 20);
    const ask = (timeZone: string) =>
      plan({
        planFrom: at,
        timeZone,
        blocked: [{ name: 'night', from: at + 3 * 60 * MINUTE, to: at + 12 * 60 * MINUTE }],
        ratherNot: [],
        kitchen: { fridgePlaces: 4, bowls: 1, pots: 1, temperatureC: 24 },
        batches: [
          {
            name: 'bread',
            steps: [{ name: 'mix', hands: 10, wait: wait(30, 60, 60, 900, 1) }],
            due: at + 16 * 60 * MINUTE,
          },
        ],
      });
    expect(ask(TORONTO)).toEqual(ask('Asia/Tokyo'));
  });
});

describe('the clock agrees with temporal-polyfill', () => {
  const ZONES = [
    TORONTO,
    BERLIN,
    'Europe/London',
    'America/St_Johns',
    'America/Santiago',
    'Australia/Lord_Howe',
    'Pacific/Chatham',
    'Asia/Kathmandu',
    'UTC',
  ];
  const chance = seeded(2026);

  /** Nights on which some of these zones change, and any other instants of two years. */
  const instants = Array.from({ length: 10_000 }, (_, i) => {
    const month = chance.of([2, 3, 8, 9, 10]);
    const day = chance.of([1, 2, 3, 4, 5, 6, 7, 8, 14, 24, 25, 26, 27, 28, 29, 30, 31]);
    const year = chance.whole(2026, 2027);
    const near = Date.UTC(year, month, day, chance.whole(0, 23), 5 * chance.whole(0, 11));
    const any = Date.UTC(2026, 0, 1) + 5 * MINUTE * chance.whole(0, 210_000);
    return { at: chance.chance(0.5) ? near : any, zone: ZONES[i % ZONES.length]! };
  });

  it('from instants to the wall, and back from the wall, both ways round: 10,000 in nine zones', () => {
    const wrong: string[] = [];
    for (const { at, zone } of instants) {
      const zoned = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone);
      const { year, month, day, hour, minute } = zoned;
      const theirs = { year, month, day, hour, minute };
      if (shown(wallTime(at, zone)) !== shown(theirs)) wrong.push(`${utc(at)} ${zone}`);
      const plain = Temporal.PlainDateTime.from(theirs);
      for (const which of ['earlier', 'later'] as const) {
        // In a gap they go back with 'earlier'; ours goes on in either case.
        const later = plain.toZonedDateTime(zone, { disambiguation: 'later' }).epochMilliseconds;
        const its = plain.toZonedDateTime(zone, { disambiguation: which }).epochMilliseconds;
        const skipped = instantsOf(theirs, zone).length === 0;
        if (instantOf(theirs, zone, which) !== (skipped ? later : its))
          wrong.push(`${shown(theirs)} ${zone} ${which}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('for every five minutes of nights on which hours are skipped', () => {
    const nights = [
      [TORONTO, '2027-03-14'],
      [BERLIN, '2027-03-28'],
      ['Europe/London', '2027-03-28'],
      ['America/St_Johns', '2027-03-14'],
      ['America/Santiago', '2027-09-05'],
      ['Australia/Lord_Howe', '2027-10-03'],
      ['Pacific/Chatham', '2027-09-26'],
    ] as const;
    const wrong: string[] = [];
    for (const [zone, night] of nights) {
      let skipped = 0;
      for (let minute = 0; minute < 360; minute += 5) {
        const time = {
          ...wall(`${night} 00:00`),
          hour: Math.floor(minute / 60),
          minute: minute % 60,
        };
        const plain = Temporal.PlainDateTime.from(time);
        const theirs = plain.toZonedDateTime(zone, { disambiguation: 'compatible' });
        if (instantsOf(time, zone).length === 0) skipped += 1;
        if (instantOf(time, zone, 'earlier') !== theirs.epochMilliseconds)
          wrong.push(`${shown(time)} ${zone}`);
      }
      expect(skipped, zone).toBe(zone === 'Australia/Lord_Howe' ? 6 : 12);
    }
    expect(wrong).toEqual([]);
  });
});
