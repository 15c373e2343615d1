import { expect, test } from 'vitest';
import { expandFormula } from '../../../src/core/day/plan/expand.ts';
import {
  tellBecause,
  tellChange,
  tellFilling,
  tellOffered,
  tellTouch,
} from '../../../src/core/speech/tell-plan.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../../machines/support/recipe.ts';

const time = (at: number): string => new Date(at).toISOString().slice(11, 16);
const at = (hour: number): number => Date.UTC(2031, 4, 6, hour);

test('every touch of every kind of bake has words', () => {
  const kitchen = { fridgePlaces: 4, bowls: 1, pots: 1, temperatureC: 24 };
  const names = [RECIPE, STONE, TIN, SCOOP].flatMap((recipe) =>
    expandFormula(recipe, kitchen).flatMap(({ name, during = [], beforeNext }) => [
      name,
      ...during.map((side) => side.name),
      ...(beforeNext ? [beforeNext.name] : []),
    ]),
  );
  expect(names.length).toBeGreaterThan(40);
  for (const name of names) expect(tellTouch(name)).not.toBe(name);
  expect(tellTouch('lid lift 2')).toBe('Lids off, load 2');
  expect(tellTouch('fold 1')).toBe('Fold 1');
  expect(tellTouch('sing to it')).toBe('sing to it');
});

test('a window gives at either end, or at one', () => {
  const window = { change: 'blocked', name: 'Night', from: at(22), to: at(30) } as const;
  const both = { ...window, endEarlierBy: 40, startLaterBy: 95 };
  expect(tellChange(both, time, [])).toEqual([
    'Night only until 05:20, 40\u00a0min less.',
    'Night only from 23:35, 1\u00a0h\u00a035 later.',
  ]);
  expect(tellChange({ ...both, startLaterBy: null }, time, [])).toHaveLength(1);
});

test.each([
  [{ change: 'due', batch: 'Rye', laterBy: 40 }, 'Rye: ready 12:40, 40\u00a0min later.'],
  [{ change: 'start', batch: 'Rye', laterBy: 450 }, 'Rye: begin 15:30, 7\u00a0h\u00a030 later.'],
  [
    { change: 'longer', batch: 'Rye', wait: 'salt and water', by: 20 },
    'Rye: 20\u00a0min more bulk rise. The bread may suffer.',
  ],
  [
    { change: 'shorter', batch: 'Rye', wait: 'to fridge', by: 60 },
    'Rye: 1\u00a0h less time in the fridge. The bread may suffer.',
  ],
  [
    { change: 'longer', batch: 'Rye', wait: 'oven on', by: 15 },
    'Rye: keep the oven hot 15\u00a0min longer.',
  ],
  [
    { change: 'fewerLoads', batch: 'Rye', loads: 1 },
    'Rye: one load only. More pots, or fewer loaves.',
  ],
  [
    { change: 'fewerLoads', batch: 'Rye', loads: 3 },
    'Rye: 3 loads only. More pots, or fewer loaves.',
  ],
  [{ change: 'dropTouch', batch: 'Rye', touch: 'fold 2' }, 'Rye: leave out fold 2.'],
  [
    { change: 'dropTouch', batch: 'Rye', touch: 'oven on' },
    'Rye: let the oven’s timer turn it on.',
  ],
] as const)('%o is told', (change, text) => {
  const asked = [{ name: 'Rye', due: at(12), startAt: at(8) }];
  expect(tellChange(change, time, asked)).toEqual([text]);
});

test('a later hour is none of a bake that nobody asked for', () => {
  expect(() => tellChange({ change: 'due', batch: 'Rye', laterBy: 40 }, time, [])).toThrow(
    'No hour is asked for Rye.',
  );
});

test('what stands in the way is one sentence, however much it is', () => {
  expect(tellBecause(['asleep', 'at work', 'asleep'])).toEqual(['In the way: asleep, at work.']);
  expect(tellBecause(['planFrom'])).toEqual(['In the way: too little time is left.']);
  expect(tellBecause([])).toEqual([]);
});

test('one offer is not any one of several', () => {
  expect([0, 1, 2].map(tellOffered)).toEqual([
    'No small change would do.',
    'This would do:',
    'Any one of these would do:',
  ]);
});

test('a filling without a plan says why and what would do', () => {
  expect(
    tellFilling({
      key: 'perishableLoads',
      filling: 'Fresh cheese',
      within: 120,
      wouldDo: ['oneLoad', 'leaveOut'],
    }),
  ).toEqual([
    'Fresh cheese must be in the oven in 2\u00a0h. The last load would be late.',
    'Bake it in one load.',
    'Leave it out.',
  ]);
});
