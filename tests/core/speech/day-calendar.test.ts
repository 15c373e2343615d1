import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { DayPlan } from '../../../src/core/day/laid/day-plan.ts';
import { dayCalendar } from '../../../src/core/speech/day-calendar.ts';
import { askedDay, at, dayPlan, MINUTE, touchOf } from '../day/support/live-day.ts';

const time = (instant: number): string => new Date(instant).toISOString().slice(11, 16);
const world = { stamp: at(3, 20), time };
const plan = dayPlan(askedDay());
/** The second fold left out, the first an hour later. */
const again: DayPlan = {
  ...plan,
  sequence: 2,
  touches: plan.touches
    .filter(({ name }) => name !== 'fold 2')
    .map((one) => (one.name === 'fold 1' ? { ...one, at: one.at + 60 * MINUTE } : one)),
};

const eventsOf = (file: string): ICAL.Component[] =>
  new ICAL.Component(ICAL.parse(file) as unknown as unknown[]).getAllSubcomponents('vevent');
const read = (event: ICAL.Component) => ({
  uid: String(event.getFirstPropertyValue('uid')),
  sequence: Number(event.getFirstPropertyValue('sequence')),
  status: String(event.getFirstPropertyValue('status')),
  summary: String(event.getFirstPropertyValue('summary')),
  begins: (event.getFirstPropertyValue('dtstart') as ICAL.Time).toJSDate().getTime(),
});

describe('a plan in the calendar', () => {
  const first = eventsOf(dayCalendar(plan, [], world)).map(read);
  const second = eventsOf(dayCalendar(again, [plan], world)).map(read);

  it('has each touch at its instant, in the baker’s words, and says how long it is fine', () => {
    expect(first.map(({ begins }) => begins)).toEqual(plan.touches.map((touch) => touch.at));
    expect(first.map(({ summary }) => summary)).toContain('Lids off, load 2');
    const text = dayCalendar(plan, [], world).replace(/\r\n /g, '');
    expect(text).toContain(`Fine until ${time(touchOf(plan, 'mix').fineUntil)}.\\n`);
  });

  it('counts with the plan, so that a later file is the newer one', () => {
    expect(new Set(first.map(({ sequence }) => sequence))).toEqual(new Set([0]));
    expect(new Set(second.map(({ sequence }) => sequence))).toEqual(new Set([2]));
    const uids = (events: typeof first) => events.map(({ uid }) => uid).sort();
    expect(uids(second)).toEqual(uids(first));
  });

  it('cancels what it has no more, and nothing else', () => {
    expect(second.filter(({ status }) => status === 'CANCELLED')).toEqual([
      { ...first.find(({ summary }) => summary === 'Fold 2')!, sequence: 2, status: 'CANCELLED' },
    ]);
    const fold = (events: typeof first) => events.find(({ summary }) => summary === 'Fold 1')!;
    expect(fold(second).begins - fold(first).begins).toBe(60 * MINUTE);
  });

  it('another plan’s touches are other events', () => {
    const other = eventsOf(dayCalendar({ ...plan, id: 'plan-2' }, [again], world)).map(read);
    expect(other.some(({ status }) => status === 'CANCELLED')).toBe(false);
    expect(other.some(({ uid }) => first.some((one) => one.uid === uid))).toBe(false);
  });
});
