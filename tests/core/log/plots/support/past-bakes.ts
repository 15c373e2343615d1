import fc from 'fast-check';
import type { PastBake } from '../../../../../src/core/log/plots/past-bake.ts';
import type { ToldIn } from '../../../../../src/core/log/plots/told-in.ts';
import { PLOT_TURNS } from '../../../../../src/core/log/plots/plot-turn.ts';
import { DAY, HOUR, MINUTE, type Instant } from '../../../../../src/core/units.ts';

export const LAST: Instant = Date.UTC(2031, 4, 3, 6);

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
export const TOLD: ToldIn = {
  date: (at) => {
    const day = new Date(at);
    return `${day.getUTCDate()} ${MONTHS[day.getUTCMonth()]} ${day.getUTCFullYear()}`;
  },
  units: { heat: 'C', weight: 'g' },
};

/** A bake of which everything is known, with what a test says of it. */
export const past = (said: Partial<PastBake> = {}): PastBake => ({
  start: 's1',
  formula: 'lane-wheat',
  name: 'Lane wheat',
  at: LAST,
  over: true,
  turned: 'good',
  rise: { percent: 75, doubt: 10, atLeast: false, before: 0 },
  bulkHours: 5,
  coldHours: 14,
  dough: 25,
  kitchen: 22,
  belief: { mean: 0, sd: 0.1 },
  taught: true,
  forecast: {
    told: LAST,
    likely: LAST + 4 * HOUR,
    window: { earliest: LAST + 3 * HOUR, latest: LAST + 6 * HOUR },
    ended: LAST + 5 * HOUR,
    late: 60,
    over: false,
  },
  ...said,
});

const near = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: null, freq: 6 });

const forecast = fc
  .record({
    late: near(-600, 900),
    early: near(0, 500),
    far: near(0, 900),
    over: fc.boolean(),
    bare: fc.boolean(),
  })
  .map(({ late, early, far, over, bare }): NonNullable<PastBake['forecast']> => {
    const likely = LAST + 4 * HOUR;
    const window = { earliest: likely - early * MINUTE, latest: likely + far * MINUTE };
    return {
      ...{ told: LAST, likely, ended: likely + late * MINUTE, late, over },
      window: bare ? null : window,
    };
  });

const bake = fc.record({
  days: fc.integer({ min: 0, max: 900 }),
  over: fc.constant(true),
  turned: fc.constantFrom(...PLOT_TURNS),
  rise: maybe(
    fc.record({
      percent: near(-5, 160),
      doubt: near(10, 60),
      atLeast: fc.boolean(),
      before: near(0, 240),
    }),
  ),
  bulkHours: maybe(near(0.5, 30)),
  coldHours: maybe(near(0, 80)),
  dough: maybe(near(15, 33)),
  kitchen: near(4, 36),
  belief: maybe(fc.record({ mean: near(-2, 2), sd: near(0.02, 0.6) })),
  taught: fc.boolean(),
  forecast: maybe(forecast),
});

/** Bakes of years, the latest first. */
export const pastBakes = fc
  .array(bake, { maxLength: 60 })
  .map((all): readonly PastBake[] =>
    all
      .map(({ days, ...said }, n) => past({ ...said, start: `s${n}`, at: LAST - days * DAY }))
      .toSorted((a, b) => b.at - a.at),
  );
