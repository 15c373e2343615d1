import type { Component, JSX } from 'solid-js';
import { riseCourse, type RiseCourse } from '../../../src/core/day/rise-course.ts';
import type { WaitInput } from '../../../src/core/day/waits.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { Control } from '../../../src/parts/Control.tsx';
import { RisePage } from '../../../src/screens/bench/rise/RisePage.tsx';
import { riseView } from '../../../src/screens/bench/rise/rise-view.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const hour = (at: number): string => new Date(at).toISOString().slice(11, 16);
const seen = (hours: number, reading: Reading) => ({ at: T0 + hours * HOUR, reading });
const bulk: WaitInput = {
  stage: 'bulk.proving',
  now: T0 + 2 * HOUR,
  recipe: RECIPE,
  kitchen: 23,
  entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': T0 + 2 * HOUR },
  touches: 3,
  prior: { mean: 0, sd: 0.3 },
  seen: [
    seen(0.5, { what: 'doughTemperature', celsius: 26 }),
    seen(2.6, { what: 'rise', percent: 25, of: 'dough' }),
    seen(2.7, { what: 'rise', percent: 20, of: 'dough', in: 'jar' }),
    seen(3.5, { what: 'rise', percent: 50, of: 'dough' }),
  ],
  done: [],
  again: false,
};
const loaf: WaitInput = {
  ...bulk,
  stage: 'proof.retard',
  now: T0 + 7 * HOUR,
  chilled: T0 + 7 * HOUR,
  entered: { 'shape.divide': T0 + 6 * HOUR, 'proof.retard': T0 + 7 * HOUR },
  seen: [
    seen(15, { what: 'growth', grown: 'little', rim: 'below' }),
    seen(15, { what: 'poke', dent: 'springs' }),
  ],
};

const page = (course: RiseCourse | null, labels: readonly string[]): JSX.Element => (
  <RisePage
    view={(room) => riseView(course!, hour, () => 'Sat', room)}
    alt="Rise against time."
    controls={labels.map((label) => (
      <Control label={label} onPress={() => {}} />
    ))}
  />
);

/** The chart of a rise: of a dough with a jar beside it, of one nobody has looked at, of a cold loaf. */
export const riseScenes: Record<string, Component> = {
  'rise-bowl': () =>
    page(riseCourse(bulk, T0 + 3.6 * HOUR), [
      'Back to the bench',
      'Say this chart',
      'Rise in the bowl',
      'Rise in a jar',
    ]),
  'rise-unread': () =>
    page(riseCourse({ ...bulk, seen: [] }, T0 + 2.1 * HOUR), [
      'Back to the bench',
      'Say this chart',
      'Rise in the bowl',
      'Rise in a jar',
    ]),
  'rise-loaf': () =>
    page(riseCourse(loaf, T0 + 15.2 * HOUR), ['Back to the bench', 'Say this chart']),
};
