import { expect, test } from 'vitest';
import { showMinute, showTime } from '../../../src/core/speech/show-time.ts';
import { sayTime } from '../../../src/core/speech/times.ts';

const MINUTES = Array.from(
  { length: 24 * 60 },
  (_, m) => `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`,
);

test('times: the hour first, no half past', () => {
  expect(sayTime('13:40')).toBe('thirteen forty');
  expect(sayTime('13:05')).toBe('thirteen oh five');
  expect(sayTime('06:30')).toBe('six thirty');
  expect(sayTime('00:20')).toBe('zero twenty');
  expect(sayTime('00:00')).toBe('midnight');
  expect(sayTime('09:00')).toBe('nine o’clock');
  expect(sayTime('18:00')).toBe('eighteen hundred');
  for (const bad of ['24:00', '9:00', '12:60', '12.30', '13:40 pm', '0:10 am', ''])
    expect(() => sayTime(bad)).toThrow(`A time to say looks like 13:40 or 1:40 pm, not ${bad}.`);
});

test('the twelve-hour clock, shown and said', () => {
  const pairs: [string, string, string][] = [
    ['15:05', '3:05 pm', 'three oh five pm'],
    ['03:30', '3:30 am', 'three thirty am'],
    ['00:20', '12:20 am', 'twelve twenty am'],
    ['12:20', '12:20 pm', 'twelve twenty pm'],
    ['00:00', '12:00 am', 'midnight'],
    ['12:00', '12:00 pm', 'noon'],
    ['18:00', '6:00 pm', 'six pm'],
  ];
  for (const [time, digits, words] of pairs) {
    expect(showTime(time, '24')).toBe(time);
    expect(showTime(time, '12').replace('\u00a0', ' ')).toBe(digits);
    expect(sayTime(showTime(time, '12'))).toBe(words);
  }
  expect(() => showTime('3:05 pm', '12')).toThrow('A time to show looks like 13:40, not 3:05 pm.');
});

/** Reads a shown time back, written apart from the code under test. */
const minuteOf = (shown: string): number => {
  const [, h, m, half] = /^(\d+):(\d\d)(?:\u00a0(am|pm))?$/.exec(shown) as unknown as string[];
  const hour = half === undefined ? Number(h) : (Number(h) % 12) + (half === 'pm' ? 12 : 0);
  return hour * 60 + Number(m);
};

test.each(['24', '12'] as const)(
  'no two minutes of a day are shown or said alike on the %s-hour clock',
  (clock) => {
    const shown = MINUTES.map((time) => showTime(time, clock));
    expect(shown.map(minuteOf)).toEqual(MINUTES.map((_, m) => m));
    const said = shown.map(sayTime);
    expect(new Set(said).size).toBe(24 * 60);
    for (const words of said) expect(words).not.toMatch(/\b(past|to|half|quarter)\b|\d/);
  },
);

test('minutes since midnight are shown as a clock time', () => {
  expect([0, 65, 1439].map((minute) => showMinute(minute, '24'))).toEqual([
    '00:00',
    '01:05',
    '23:59',
  ]);
  expect(showMinute(780, '12').replace('\u00a0', ' ')).toBe('1:00 pm');
});
