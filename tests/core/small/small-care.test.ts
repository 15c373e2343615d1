import { describe, expect, test } from 'vitest';
import { AGES } from '../../../src/core/small/ages.ts';
import { guardOf, isGated } from '../../../src/core/small/guard.ts';
import { mayDo } from '../../../src/core/small/may-do.ts';
import { smallWords } from '../../../src/core/small/small-words.ts';
import {
  dangerous,
  handsOn,
  offLimits,
  saysWhere,
  tooClose,
  wasAway,
} from './support/childs-deed.ts';
import { hazards, STEPS } from './support/steps.ts';

const table = AGES.flatMap((ages) =>
  STEPS.map((step) => [ages, step, guardOf(step, hazards.get(step))] as const),
);
const gated = table.filter(([, , guard]) => isGated(guard));
const messy = table.filter(([, , guard]) => guard === 'raw' || guard === 'allergen');

test('there are hot, raw and heavy steps to look at', () => {
  expect(gated.length).toBeGreaterThan(3 * 20);
  expect(messy.length).toBeGreaterThan(3 * 20);
  expect(table.filter(([, , guard]) => guard === 'heavy')).toHaveLength(3 * 2);
});

describe.each(gated)('to %s at %s (%s)', (ages, step) => {
  const { act, say, task, praise } = smallWords(ages, step);

  test('it is told that a grown-up does it, and where to be meanwhile', () => {
    expect(say).toMatch(/^A grown-up /);
    expect(saysWhere(task), task).toBe(true);
  });

  test('nothing is put in its hands, and it is called no closer', () => {
    expect(tooClose(act)).toEqual([]);
    expect(tooClose(task)).toEqual([]);
    expect(wasAway(praise), praise).toBe(true);
  });
});

describe.each(table)('to %s at %s (%s)', (ages, step, guard) => {
  const { act, task } = smallWords(ages, step);

  test('no hand is laid on what is hot, sharp or powered', () => {
    expect(dangerous(act)).toEqual([]);
    expect(dangerous(task)).toEqual([]);
    for (const text of [act, task]) expect(text).not.toMatch(/\b(carry|lift|heave|drag|push)\b/i);
  });

  test('the act is a child’s only where it may do it, the button only where it may press', () => {
    const { acts, presses } = mayDo(guard, ages);
    if (acts === 'grownUp') expect(handsOn(act)).toEqual([]);
    if (!presses) expect(`${act} ${task}`).not.toMatch(/\b(button|press)\b/i);
  });
});

describe.each(STEPS)('the youngest at %s', (step) => {
  test('hold dry things only', () => {
    expect(offLimits(smallWords('4-6', step).task)).toEqual([]);
  });
});

describe.each(messy.filter(([ages]) => ages !== '4-6'))('to %s at %s (%s)', (ages, step) => {
  const { act, task } = smallWords(ages, step);

  test('whoever has had a hand in it washes it', () => {
    if (handsOn(`${act}. ${task}`).length > 0) expect(task).toMatch(/wash your hands\.$/);
  });
});
