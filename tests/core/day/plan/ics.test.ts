import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { toIcs, touchKey } from '../../../../src/core/day/plan/ics.ts';
import { HOSTILE_TEXTS } from '../../../hostile/texts.ts';
import type { PlannedTouch } from '../../../../src/core/day/plan/types.ts';

const MINUTE = 60_000;
const STAMP = Date.UTC(2026, 9, 31, 9, 30, 15);

const touch = (name: string, at: number, more: Partial<PlannedTouch> = {}): PlannedTouch => ({
  batch: 'Lane wheat, and rye; 🥖',
  name,
  at,
  hands: 10,
  earliest: at,
  latest: at,
  fineUntil: at,
  lastPossible: at,
  frozen: false,
  ...more,
});

/** Half past one, twice, on the night Toronto's clocks go back. */
const TOUCHES = [
  touch('fold, first', Date.UTC(2026, 10, 1, 5, 30)),
  touch('fold; second \\ last', Date.UTC(2026, 10, 1, 6, 30)),
  touch(
    '🍒 laminate the cherries into the dough, gently, with floured and floury hands 🍒🍒',
    STAMP,
  ),
  touch('oven on', Date.UTC(2026, 10, 1, 12), { hands: 0 }),
];
const OPTIONS = {
  stamp: STAMP,
  sequence: { [touchKey(TOUCHES[0]!)]: 3 },
  describe: ({ name }: PlannedTouch) => `${name}\nFine until 13:05, possible until 14:00.`,
};

const eventsOf = (file: string): ICAL.Component[] =>
  new ICAL.Component(ICAL.parse(file) as unknown as unknown[]).getAllSubcomponents('vevent');
const value = (event: ICAL.Component, name: string): string =>
  String(event.getFirstPropertyValue(name));
const instant = (event: ICAL.Component, name: string): number =>
  (event.getFirstPropertyValue(name) as ICAL.Time).toJSDate().getTime();

describe('a plan as a calendar file', () => {
  const file = toIcs(TOUCHES, OPTIONS);
  const events = eventsOf(file);

  it('comes back from another reader as it went in, both half past ones apart', () => {
    expect(events).toHaveLength(TOUCHES.length);
    TOUCHES.forEach((one, i) => {
      const event = events[i]!;
      expect(instant(event, 'dtstart')).toBe(Math.floor(one.at / 1000) * 1000);
      expect(instant(event, 'dtend')).toBe(one.at + one.hands * MINUTE);
      expect(instant(event, 'dtstamp')).toBe(STAMP);
      expect(value(event, 'summary')).toBe(one.name);
      expect(value(event, 'description')).toBe(OPTIONS.describe(one));
      expect(value(event, 'categories')).toBe(one.batch);
      expect(value(event, 'status')).toBe('CONFIRMED');
      expect(value(event, 'transp')).toBe('OPAQUE');
    });
    expect(value(events[0]!, 'sequence')).toBe('3');
    expect(value(events[1]!, 'sequence')).toBe('0');
    expect(new Set(events.map((event) => value(event, 'uid'))).size).toBe(TOUCHES.length);
  });

  it('rings ten minutes before and at the time', () => {
    for (const event of events)
      expect(
        event
          .getAllSubcomponents('valarm')
          .map((one) => [value(one, 'action'), value(one, 'trigger')]),
      ).toEqual([
        ['DISPLAY', '-PT10M'],
        ['DISPLAY', 'PT0S'],
      ]);
    expect(file.match(/TRIGGER:PT0M\r\n/g)).toHaveLength(TOUCHES.length);
  });

  it('has no time without its zone, ends every line by CRLF, none is over 75 octets', () => {
    expect(file).not.toMatch(/TZID/);
    expect(file.match(/^DT(START|END|STAMP):.*$/gm)!.every((line) => /Z\r?$/.test(line))).toBe(
      true,
    );
    expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of file.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  });

  it('a touch that moves keeps its name, one that is gone is cancelled once more than it moved', () => {
    const moved = [{ ...TOUCHES[0]!, at: STAMP }];
    const sequence = { [touchKey(moved[0]!)]: 4 };
    const [again, gone] = eventsOf(
      toIcs(moved, { stamp: STAMP, sequence, removed: [TOUCHES[1]!] }),
    );
    expect(value(again!, 'uid')).toBe(value(events[0]!, 'uid'));
    expect(value(again!, 'sequence')).toBe('4');
    expect(value(gone!, 'uid')).toBe(value(events[1]!, 'uid'));
    expect([value(gone!, 'status'), value(gone!, 'sequence')]).toEqual(['CANCELLED', '1']);
    expect(gone!.getAllSubcomponents('valarm')).toHaveLength(0);
  });

  it.each(HOSTILE_TEXTS.filter((text) => text.trim() !== ''))(
    '%j is one value of one event, wherever it stands',
    (text) => {
      const made = toIcs([touch(text, STAMP, { batch: text })], {
        ...{ stamp: STAMP, sequence: {}, plan: text, name: () => text, describe: () => text },
      });
      // Nothing of it begins a line, whatever a reader takes for a line's end, and no control sign is in it.
      const lines = made.split(/\r\n|[\n\r\u000b\u000c\u0085\u2028\u2029]/);
      expect(lines.filter((line) => line.startsWith('BEGIN:VEVENT'))).toHaveLength(1);
      expect(lines.every((line) => line === '' || /^([A-Z-]+[:;]| )/.test(line))).toBe(true);

      expect(made.replaceAll('\r\n', '')).not.toMatch(/[\u0000-\u0008\u000a-\u001f\u007f]/);
      expect(made.isWellFormed()).toBe(true);
      for (const line of made.split('\r\n'))
        expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      const [event, ...more] = eventsOf(made);
      expect(more).toEqual([]);
      const shown = text
        .replace(/\r\n?|[\u000b\u000c\u0085\u2028\u2029]/g, '\n')
        .replace(/[^\P{Cc}\n\t]|[\u202a-\u202e\u2066-\u2069]|\p{Cs}|\p{NChar}/gu, '');
      for (const name of ['summary', 'description', 'categories'])
        expect(event!.getFirstPropertyValue(name) ?? '').toBe(shown);
      expect(value(event!, 'uid')).toMatch(/^[\w.!~*'()-]+@loafward$/);
    },
  );

  it('any name at all comes back', () =>
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 120 }), (name) => {
        const plain = name.replace(/[\p{Cc}\p{Cs}]/gu, 'x').trim() || 'x';
        const text = toIcs([touch(plain, STAMP)], { stamp: STAMP, sequence: {} });
        expect(value(eventsOf(text)[0]!, 'summary')).toBe(plain);
        for (const line of text.split('\r\n'))
          expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      }),
      { numRuns: 200 },
    ));
});
