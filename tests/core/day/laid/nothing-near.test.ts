import { describe, expect, it } from 'vitest';
import { askInput } from '../../../../src/core/day/laid/ask-input.ts';
import type { AskWorld } from '../../../../src/core/day/laid/ask-world.ts';
import type { AskedBake, DayAsk } from '../../../../src/core/day/laid/day-plan.ts';
import { lay } from '../../../../src/core/day/laid/lay.ts';
import { takeChange } from '../../../../src/core/day/laid/take-change.ts';
import { plan } from '../../../../src/core/day/plan.ts';
import type { Change, PlanResult } from '../../../../src/core/day/plan/types.ts';
import { makeRecipe } from '../../../../src/core/formula/make-recipe.ts';
import { EQUIPMENT } from '../../../../src/core/kitchen/equipment.ts';
import { tellChange } from '../../../../src/core/speech/tell-plan.ts';
import { HOUR, MINUTE } from '../../../../src/core/units.ts';
import {
  askedBake,
  askWorld,
  dayAsk,
  inputOf,
  SATURDAY_NOON,
  THURSDAY,
} from '../../../fakes/laid-day.ts';
import { shippedFormula, type SHIPPED } from '../../formula/shipped.ts';

type Bread = (typeof SHIPPED)[number];
const recipeOf = (bread: Bread, loaves = 2) => {
  const formula = shippedFormula(bread);
  return makeRecipe(formula, { loaves, piece: formula.piece }).recipe!;
};
const one = (change: Partial<AskedBake>): DayAsk => dayAsk({ bakes: [askedBake(change)] });
const several = (breads: readonly Bread[], due: number): DayAsk =>
  dayAsk({ bakes: breads.map((name) => askedBake({ name, recipe: recipeOf(name), due })) });

const EVERY = { weekdays: [0, 1, 2, 3, 4, 5, 6] };
const TIGHT = [
  { ...EVERY, name: 'asleep', from: 1320, to: 480 },
  { ...EVERY, name: 'at work', from: 510, to: 1290 },
];
const NIGHT = THURSDAY + 4 * HOUR;
const hours = (from: number, to: number) => ({
  from: SATURDAY_NOON + from * HOUR,
  to: SATURDAY_NOON + to * HOUR,
});

const asked = (ask: DayAsk, world: AskWorld): PlanResult => [...lay(inputOf(ask, world))].at(-1)!;

/** Each end of a window is an offer of its own. */
const offers = (change: Change): Change[] => {
  if (change.change !== 'blocked') return [change];
  const { endEarlierBy, startLaterBy } = change;
  return [
    ...(endEarlierBy === null ? [] : [{ ...change, startLaterBy: null }]),
    ...(startLaterBy === null ? [] : [{ ...change, endEarlierBy: null }]),
  ];
};

const CASES: readonly (readonly [string, DayAsk, AskWorld])[] = [
  ['bread an hour ago', one({ due: THURSDAY - HOUR }), askWorld()],
  ['bread days ago', one({ due: THURSDAY - 80 * HOUR }), askWorld()],
  ['bread of last week', one({ due: THURSDAY - 8 * 24 * HOUR }), askWorld()],
  ['bread in ten minutes', one({ due: THURSDAY + 10 * MINUTE }), askWorld()],
  [
    'two breads in ten minutes',
    several(['cherry-hazelnut', 'lane-wheat'], THURSDAY + 10 * MINUTE),
    askWorld(),
  ],
  [
    'three breads an hour ago',
    several(['cherry-hazelnut', 'lane-wheat', 'barley-tin'], THURSDAY - HOUR),
    askWorld(),
  ],
  [
    'one bread too soon beside one that fits',
    dayAsk({
      bakes: [
        askedBake({ name: 'soon', due: THURSDAY + HOUR }),
        askedBake({ name: 'fits', recipe: recipeOf('lane-wheat') }),
      ],
    }),
    askWorld(),
  ],
  ['36 loaves in one pot', one({ recipe: recipeOf('lane-wheat', 36) }), askWorld()],
  [
    '40 loaves in one pot',
    one({ recipe: { ...recipeOf('lane-wheat', 36), loaves: 40, dough: 36_700 } }),
    askWorld(),
  ],
  ['half an hour free a day', dayAsk(), askWorld({ week: TIGHT })],
  [
    'two absences that overlap',
    dayAsk({
      away: [
        { name: 'out', ...hours(-30, -4) },
        { name: 'at work', ...hours(-31, -5) },
      ],
    }),
    askWorld(),
  ],
  ['a start in the night', one({ due: null, startAt: NIGHT }), askWorld({ now: NIGHT })],
  [
    'a start in a night that may not bend',
    one({ due: null, startAt: NIGHT }),
    askWorld({ now: NIGHT, week: EQUIPMENT.week.map((w) => ({ ...w, canBend: false })) }),
  ],
];

describe('a day on which nothing fits', () => {
  it.each(CASES)('%s: there is something that would do, in words', (_, ask, world) => {
    const result = asked(ask, world);
    expect(result.fits).toBe(false);
    if (result.fits !== false) return;
    const all = [...result.changes, ...(result.together ?? [])];
    expect(all.length).toBeGreaterThan(0);
    const words = all.flatMap((change) => tellChange(change, () => '06:00', ask.bakes));
    for (const sentence of words) expect(sentence).toMatch(/^[^{}]{8,}$/);
  });

  it.each(CASES)('%s: each change that is offered does it, taken', (_, ask, world) => {
    const result = asked(ask, world);
    if (result.fits !== false) throw new Error('It fits.');
    const { changes, together = [] } = result;
    const taken = changes.flatMap(offers).map((change) => takeChange(ask, change));
    const all = together.length > 0 ? [together.reduce(takeChange, ask)] : [];
    for (const next of [...taken, ...all])
      expect(plan(inputOf(next, world), { why: false }).fits, JSON.stringify(next.taken)).toBe(
        true,
      );
  });

  it('tells the first hour there is: bread five minutes sooner does not fit', () => {
    for (const due of [THURSDAY - 80 * HOUR, THURSDAY + 10 * MINUTE]) {
      const ask = one({ due });
      const result = asked(ask, askWorld());
      if (result.fits !== false) throw new Error('It fits.');
      const [change] = result.changes;
      if (change?.change !== 'due') throw new Error('No hour is offered.');
      const sooner = { ...change, laterBy: change.laterBy - 5 };
      expect(plan(inputOf(takeChange(ask, sooner), askWorld()), { why: false }).fits).toBe(false);
    }
  });

  it('says what stands in the way where nothing that may bend would do', () => {
    const week = TIGHT.map((window) => ({ ...window, to: window.to + 25, canBend: false }));
    const result = asked(dayAsk(), askWorld({ week }));
    expect(result).toMatchObject({ fits: false, changes: [], because: ['asleep', 'at work'] });
  });

  it('has no need to look further where it fits, or where nobody asks why', () => {
    expect(asked(dayAsk(), askWorld()).fits).toBe(true);
    const { input } = askInput(one({ due: THURSDAY }), askWorld());
    expect([...lay(input!, { why: false })]).toEqual([{ fits: false, changes: [], because: [] }]);
  });

  it('lays the same day after the clock was set back by an hour while it bakes', () => {
    const before = asked(dayAsk(), askWorld());
    const after = asked(
      one({ due: SATURDAY_NOON + HOUR }),
      askWorld({ now: THURSDAY + HOUR, ahead: HOUR }),
    );
    if (before.fits !== true || after.fits !== true) throw new Error('It does not fit.');
    expect(after.touches.map(({ at }) => at - HOUR)).toEqual(before.touches.map(({ at }) => at));
  });
});
