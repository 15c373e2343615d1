import { expect, it } from 'vitest';
import { makeSilentSpeaker } from '../../src/adapters/speaker.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';

it('the silent speaker is over at once, stopped or not', async () => {
  const speaker = makeSilentSpeaker();
  const words = speaker.say('Take the lid off.');
  words.stop();
  await expect(words.over).resolves.toBeUndefined();
  await expect(speaker.say('Stand back.').over).resolves.toBeUndefined();
});

it('the fake lasts until finished or stopped, and remembers which', async () => {
  const speaker = makeHeardSpeaker();
  const first = speaker.say('one');
  const second = speaker.say('two');
  expect(speaker.said.map((line) => line.ended)).toEqual(['no', 'no']);
  first.stop();
  speaker.finish();
  second.stop();
  await Promise.all([first.over, second.over]);
  expect(speaker.said.map(({ words, ended }) => [words, ended])).toEqual([
    ['one', 'stopped'],
    ['two', 'over'],
  ]);
});
