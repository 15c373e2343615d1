import { describe, expect, it } from 'vitest';
import type { Call } from '../../machines/attention/attention.ts';
import { layClips } from '../../src/core/speech/clips.ts';
import { speakTwo } from '../../src/app/speak-two.ts';
import { asSpoken, clipIndex } from '../core/speech/support/as-spoken.ts';
import { Hand } from '../machines/support/hand.ts';
import { RECIPE } from '../machines/support/recipe.ts';

const hour = (): string => '12:00';
const call = (who: string, stage: string, kind: Call['kind']): Call => ({
  id: `${who}:${stage}:0`,
  ...{ who, stage, kind, since: 0 },
});
const named = (name: string) => ({ ...RECIPE, formula: { ...RECIPE.formula, name } });
const kitchenOf = (bakes: number) => {
  const hand = new Hand();
  hand.start('a', 'mix.first', ['a1'], named('Lane wheat'));
  if (bakes > 1) hand.start('b', 'mix.first', ['b1'], named('Cherry and hazelnut'));
  return hand.kitchen;
};
const said = (bakes: number, ...calls: Call[]) => speakTwo(calls, kitchenOf(bakes), hour);

describe('two calls that came together', () => {
  it.each([
    [
      'of one thing in two bakes',
      2,
      [call('a', 'mix.salt', 'act'), call('b', 'mix.salt', 'act')],
      'It’s time: the salt goes in, Lane wheat bake and Cherry bake.',
    ],
    [
      'of two things in one bake',
      1,
      [call('a', 'bulk.fold', 'act'), call('a', 'lead.bench', 'act')],
      'It’s time: fold the dough, and wet the bench.',
    ],
    [
      'an act and a look',
      1,
      [call('a', 'bulk.fold', 'act'), call('a', 'levain.look', 'look')],
      'It’s time: fold the dough, and look at the levain.',
    ],
    [
      'an act and a look, two bakes',
      2,
      [call('b', 'bulk.fold', 'act'), call('a', 'bulk.look', 'look')],
      null,
    ],
  ] as const)('are one sentence where it is short: %s', (_, bakes, calls, words) => {
    const sentence = said(bakes, ...calls);
    expect(sentence).toBe(words);
    if (sentence === null) return;
    expect(layClips(sentence, (id) => clipIndex.has(id)).missing).toEqual([]);
    for (const pace of ['grown', 'small'] as const)
      expect(asSpoken(sentence, pace).seconds).toBeLessThanOrEqual(8);
  });

  it.each([
    ['a hot one', [call('oven', 'lift', 'hot'), call('a', 'mix.salt', 'act')]],
    ['a deed to be looked at', [call('a', 'bulk.fold', 'act'), call('a', 'lead.takeOut', 'look')]],
    ['the same twice', [call('a', 'mix.salt', 'act'), call('a', 'mix.salt', 'act')]],
    ['a timer', [call('a', 'mix.salt', 'act'), call('timer', 't', 'act')]],
    ['one alone', [call('a', 'mix.salt', 'act')]],
    [
      'three',
      [call('a', 'mix.salt', 'act'), call('a', 'bulk.fold', 'act'), call('a', 'lead.bench', 'act')],
    ],
  ] as const)('are told each by itself: %s', (_, calls) => {
    expect(said(1, ...calls)).toBeNull();
  });

  it('are told each by itself where one was put off', () => {
    const kitchen = kitchenOf(1);
    const calls = [call('a', 'bulk.fold', 'act'), call('a', 'lead.bench', 'act')];
    const context = {
      ...kitchen.attention.context,
      snoozed: { [calls[1]!.id]: { until: null, times: 1 } },
    };
    const put = { ...kitchen, attention: { ...kitchen.attention, context } } as typeof kitchen;
    expect(speakTwo(calls, kitchen, hour)).not.toBeNull();
    expect(speakTwo(calls, put, hour)).toBeNull();
  });
});
