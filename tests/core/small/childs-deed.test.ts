import { expect, test } from 'vitest';
import {
  dangerous,
  handsOn,
  offLimits,
  saysWhere,
  tooClose,
  wasAway,
} from './support/childs-deed.ts';

// What reads the words for danger is itself held against words that must never pass.

test.each([
  'Open the oven.',
  'Sit down. Hold the lid.',
  'Stand back and turn the pot.',
  'Sit far away, then take the tray out.',
  'Stand back. Press the big button.',
  'Sit by the oven.',
  'Look in the pot.',
  'Look through the door.',
  'Stand close and watch.',
  'Bring the mitts.',
  'Pour the water.',
  'Cover the blade.',
])('is nothing for a child beside the heat: %s', (task) => {
  expect(tooClose(task)).not.toEqual([]);
});

test.each(['Sit far away. Draw the shut oven.', 'Stand back and count the beeps.'])(
  'may be done from far away: %s',
  (task) => {
    expect(tooClose(task)).toEqual([]);
    expect(saysWhere(task)).toBe(true);
  },
);

test.each(['Carry the hot tray.', 'Count them. Fetch the knife.', 'Put the lid on.'])(
  'lays hands on danger: %s',
  (task) => {
    expect(dangerous(task)).not.toEqual([]);
  },
);

test.each(['Pinch the dough.', 'Count. Stir the jar.', 'Roll it up.', 'Spoon the nuts in.'])(
  'is off limits to the youngest: %s',
  (task) => {
    expect(offLimits(task)).not.toEqual([]);
  },
);

test('a dry towel, a count and a picture are no such thing', () => {
  for (const task of ['Roll a dry towel.', 'Count the loaves.', 'Draw the oven.']) {
    expect(dangerous(task)).toEqual([]);
    expect(offLimits(task)).toEqual([]);
  }
  expect(handsOn('Read the number. Then wash your hands.')).toEqual(['wash your hands']);
});

test('what was done near the heat is told apart from what was done away from it', () => {
  expect(wasAway('You sat and drew a loaf.')).toBe(true);
  expect(wasAway('You lifted the lid.')).toBe(false);
  expect(wasAway('You sat and held the lid.')).toBe(false);
  expect(saysWhere('Count the beeps.')).toBe(false);
});
