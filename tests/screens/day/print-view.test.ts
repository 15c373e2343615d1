import { describe, expect, it } from 'vitest';
import { printView } from '../../../src/screens/day/print/print-view.ts';
import { askedDay, at, dayPlan, HOUR } from '../../core/day/support/live-day.ts';

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const read = {
  now: () => at(3, 20),
  hour: (instant: number) => new Date(instant).toISOString().slice(11, 16),
  day: (instant: number) => DAYS[new Date(instant).getUTCDay()]!,
  date: (instant: number) => new Date(instant).toISOString().slice(0, 10),
  midnight: (instant: number) => Math.floor(instant / (24 * HOUR)) * 24 * HOUR,
};

describe('a plan on paper', () => {
  const plan = dayPlan(askedDay());
  const view = printView(plan, read);

  it('has every touch once, day by day, and the bread at its end', () => {
    expect(view.days.map(({ title }) => title)).toEqual(['Fri 2031-05-09', 'Sat 2031-05-10']);
    const rows = view.days.flatMap((day) => day.rows);
    expect(rows).toHaveLength(plan.touches.length + 1);
    expect(rows.at(-1)).toMatchObject({ what: 'Bread ready', hour: '12:00', isBread: true });
    expect(rows[0]).toMatchObject({ what: 'Feed the levain', bake: null, minutes: '5' });
  });

  it('an hour on another day has the day’s name', () => {
    const fridge = view.days[0]!.rows.find(({ what }) => what === 'Into the fridge')!;
    for (const text of [fridge.fine, fridge.last]) expect(text).toMatch(/^(Sat )?\d\d:\d\d$/);
    const touch = plan.touches.find(({ name }) => name === 'to fridge')!;
    expect(fridge.last.startsWith('Sat')).toBe(touch.lastPossible >= at(5, 0));
  });

  it('stands closer the more there is, and names bakes where there are several', () => {
    expect(view.close).toBe('roomy');
    const names = ['One', 'Two', 'Three'];
    const many = {
      ...plan,
      ask: { ...plan.ask, bakes: names.map((name) => ({ ...plan.ask.bakes[0]!, name })) },
      touches: names.flatMap((batch) => plan.touches.map((touch) => ({ ...touch, batch }))),
    };
    const three = printView(many, read);
    expect(three.close).toBe('columns');
    expect(three.days[0]!.rows[0]!.bake).toBe('One');
    expect(three.names).toBe('One, Two, Three');
  });
});
