import { beforeEach, describe, expect, it, vi } from 'vitest';
import { laterVoice } from '../../src/app/later-voice.ts';
import type { Ways } from '../../src/screens/house.ts';
import { makeHeardSpeaker, type HeardSpeaker } from '../fakes/heard-speaker.ts';

const OWN = {
  kitchen: { bakes: {} },
  records: [],
  formulas: [],
  readsOwn: false,
  pace: 'grown',
} as unknown as ReturnType<Parameters<typeof laterVoice>[2]>;

let small: Ways['small'];
let speaker: HeardSpeaker;
let voice: ReturnType<typeof laterVoice>;

beforeEach(async () => {
  small = 'off';
  speaker = makeHeardSpeaker();
  voice = laterVoice(
    speaker,
    () => () => undefined,
    () => OWN,
    () => ({ small }),
  );
  await voice.fetch();
});

const speaking = (): string[] =>
  speaker.said.filter(({ ended }) => ended === 'no').map(({ words }) => words);

describe('a voice that comes later', () => {
  it('ends the words of a done act', async () => {
    voice.say('Fold the dough.');
    const before = voice.now();
    await vi.waitFor(() => expect(speaking()).toEqual(['Fold the dough.']));
    before.done();
    await vi.waitFor(() => expect(speaking()).toEqual([]));
  });

  it('ends nothing that a screen began to say since', async () => {
    voice.say('Fold the dough.');
    const before = voice.now();
    voice.house.say('It is still tight.');
    await vi.waitFor(() => expect(speaking()).toEqual(['It is still tight.']));
    before.done();
    await voice.fetch();
    await Promise.resolve();
    expect(speaking()).toEqual(['It is still tight.']);
  });

  it('speaks as grown-ups like it, and at a child’s pace while small hands help', async () => {
    voice.say('Fold the dough.');
    await vi.waitFor(() => expect(speaker.said.at(-1)?.pace).toBe('grown'));
    small = '7-9';
    voice.say('Fold the dough up.');
    await vi.waitFor(() => expect(speaker.said.at(-1)?.pace).toBe('small'));
  });
});
