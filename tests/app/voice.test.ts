import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Pace } from '../../src/core/speech/pace.ts';
import { makeVoice, type Voice } from '../../src/app/voice.ts';
import { makeHeardSpeaker, type HeardSpeaker } from '../fakes/heard-speaker.ts';

const LONG =
  'Lower it in, lid on, door shut. Children, stand back. Hot iron: dry mitts, both hands, face back.';
const [FIRST, SECOND] = [
  'Lower it in, lid on, door shut. Children, stand back.',
  'Hot iron: dry mitts, both hands, face back.',
] as const;

const OWN = { phrases: ['Quince bake'], aloud: true };

let speaker: HeardSpeaker;
let voice: Voice;
let caption: string;
let pace: Pace;

beforeEach(() => {
  vi.useFakeTimers();
  speaker = makeHeardSpeaker();
  caption = '';
  pace = 'grown';
  const later = (ms: number, then: () => void) => {
    const timer = setTimeout(then, ms);
    return () => clearTimeout(timer);
  };
  voice = makeVoice(
    speaker,
    later,
    (words) => void (caption = words),
    () => OWN,
    () => pace,
  );
  return () => void vi.useRealTimers();
});

const said = () => speaker.said.map(({ words }) => words);
const speaking = () => speaker.said.filter(({ ended }) => ended === 'no').length;
/** The words are over after so long. */
const finish = async (ms: number): Promise<void> => {
  await vi.advanceTimersByTimeAsync(ms);
  speaker.finish();
  await vi.advanceTimersByTimeAsync(0);
};

describe('the voice', () => {
  it('captions what it says, letter for letter, and clears it when it is said', async () => {
    voice.say('Fold the dough.');
    expect([said(), caption]).toEqual([['Fold the dough.'], 'Fold the dough.']);
    await finish(1_200);
    // Short words stand for two seconds.
    await vi.advanceTimersByTimeAsync(790);
    expect(caption).toBe('Fold the dough.');
    await vi.advanceTimersByTimeAsync(20);
    expect(caption).toBe('');
  });

  it('of an act that is done it stops at once, and its caption goes when it stood two seconds', async () => {
    const long = 'Turn the oven off. The pot stays inside to cool.';
    voice.say(long);
    await vi.advanceTimersByTimeAsync(1_500);
    voice.done();
    expect([speaking(), caption]).toEqual([0, long]);
    await vi.advanceTimersByTimeAsync(490);
    expect(caption).toBe(long);
    await vi.advanceTimersByTimeAsync(20);
    expect(caption).toBe('');
    voice.say(long);
    await vi.advanceTimersByTimeAsync(2_500);
    expect(caption).toBe(long);
    voice.done();
    expect(caption).toBe('');
    voice.say('Fold the dough.');
    expect(caption).toBe('Fold the dough.');
  });

  it('hands on what of it the baker wrote, and captions all of it alike', async () => {
    voice.say('Quince bake: fold the dough.');
    expect(speaker.said).toMatchObject([{ words: caption, own: OWN }]);
    await finish(5_000);
    expect(caption).toBe('');
  });

  it('keeps the caption while it is still being said', async () => {
    voice.say('Fold the dough.');
    await vi.advanceTimersByTimeAsync(60_000);
    expect(caption).toBe('Fold the dough.');
    await finish(0);
    expect(caption).toBe('');
  });

  it('is as slow as small hands need, in parts that are over in 8 s at that pace too', async () => {
    const first = 'Fold the dough and leave it on the bench.';
    const words = `${first} Then wet your hands, and fold it.`;
    voice.say(words);
    expect(speaker.said.map((one) => [one.words, one.pace])).toEqual([[words, 'grown']]);
    pace = 'small';
    voice.say(words);
    expect(speaker.said.slice(1).map((one) => [one.words, one.pace])).toEqual([[first, 'small']]);
    await finish(8_000);
  });

  it('says what is longer than 8 s in parts, a pause between them, each captioned by itself', async () => {
    voice.say(LONG);
    expect([said(), caption]).toEqual([[FIRST], FIRST]);
    await finish(10_000);
    await vi.advanceTimersByTimeAsync(490);
    expect([said(), caption]).toEqual([[FIRST], FIRST]);
    await vi.advanceTimersByTimeAsync(20);
    expect([said(), caption]).toEqual([[FIRST, SECOND], SECOND]);
    await finish(10_000);
    expect([said().length, caption]).toEqual([2, '']);
  });

  it('is one voice: what comes cuts short what is being said, and drops what was still to come', async () => {
    voice.say(LONG);
    await vi.advanceTimersByTimeAsync(500);
    voice.say('Hot, now: lift the lid.');
    expect(speaker.said.map(({ ended }) => ended)).toEqual(['stopped', 'no']);
    await vi.advanceTimersByTimeAsync(500);
    expect([speaking(), caption]).toEqual([1, 'Hot, now: lift the lid.']);
    await finish(60_000);
    expect([said(), caption]).toEqual([[FIRST, 'Hot, now: lift the lid.'], '']);
  });

  it('does not let words that were cut short after their time clear the caption of the next', async () => {
    voice.say('Fold the dough.');
    // Its reading time is over, its words are not.
    await vi.advanceTimersByTimeAsync(30_000);
    voice.say('Hot, now: lift the lid.');
    await vi.advanceTimersByTimeAsync(1_000);
    expect(caption).toBe('Hot, now: lift the lid.');
  });

  it('says no more once it is hushed, in the middle or in the pause', async () => {
    voice.say(LONG);
    await vi.advanceTimersByTimeAsync(500);
    voice.hush();
    expect(speaking()).toBe(0);
    await vi.advanceTimersByTimeAsync(60_000);
    expect([said(), caption]).toEqual([[FIRST], '']);

    voice.say(LONG);
    await finish(10_000);
    await vi.advanceTimersByTimeAsync(100);
    voice.hush();
    await vi.advanceTimersByTimeAsync(60_000);
    expect([said(), caption]).toEqual([[FIRST, FIRST], '']);
  });
});
