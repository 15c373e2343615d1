import { expect, it } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import { touchWords } from '../../../src/screens/day/shown-of.ts';
import { bread } from './breads.ts';
import { READ, saturday, THURSDAY } from './saturday.ts';

const house = { ...READ, now: () => THURSDAY };
const day = saturday({ formula: bread('lane-wheat'), loaves: 2 });
const divide = day.touches.find(({ name }) => name === 'divide')!;

it('tells until when a touch is fine and when it is too late, and one hour once', () => {
  const fineUntil = divide.at + 10 * MINUTE;
  const late = { ...divide, fineUntil, lastPossible: fineUntil + 30 * MINUTE };
  expect(touchWords(house, day, late, false).lines).toHaveLength(2);
  const tight = { ...late, lastPossible: fineUntil };
  const { lines } = touchWords(house, day, tight, false);
  expect(lines).toEqual([expect.stringMatching(/^Not after Fri \d\d:\d\d\.$/)]);
});
