import { afterEach, beforeEach, expect, it } from 'vitest';
import { openClips } from '../../src/adapters/speaker/open-clips.ts';
import { makePlayer } from '../../src/adapters/speaker/play.ts';
import { makeReadAloud } from '../../src/adapters/speaker/read-aloud.ts';
import { recordingsIn } from '../../src/adapters/speaker/recordings.ts';
import { speakIn } from '../../src/core/speech/tongue.ts';
import { remember } from '../../src/core/speech/twins.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';
import { TurnedAudio } from '../fakes/turned-audio.ts';
import { makeTurnedSynth, utter, voiceNamed } from '../fakes/turned-synth.ts';

beforeEach(() => speakIn('de', {}));
afterEach(() => speakIn('en'));

const settled = async (): Promise<void> => {
  for (let i = 0; i < 60; i += 1) await Promise.resolve();
  await new Promise((then) => setTimeout(then));
};

/** What comes of German words where the tablet has these voices: what it reads, and which clips are asked for. */
async function spoken(words: string, ...voices: ReturnType<typeof voiceNamed>[]) {
  const synth = makeTurnedSynth();
  synth.voices = voices;
  const asked: string[] = [];
  const index = { 'stand back': { file: 'all.mp3', start: 0, bytes: 1, seconds: 0.8, wpm: 150 } };
  const clips = openClips((async (path: string) => {
    asked.push(path);
    return new Response(path.endsWith('.json') ? JSON.stringify(index) : new Uint8Array([8]));
  }) as typeof fetch);
  const soon: (() => void)[] = [];
  const later = (ms: number, then: () => void) => {
    if (ms < 100) soon.push(then);
    return () => undefined;
  };
  const reader = makeReadAloud({
    synth,
    utter,
    later: (ms, then) => {
      if (ms === 2_000 && synth.voices.length === 0) queueMicrotask(then);
      return later(ms, then);
    },
    languages: ['de-AT'],
    atTouch: () => undefined,
    whenHidden: () => () => undefined,
  });
  const audio = new TurnedAudio();
  audio.become('running');
  const player = makePlayer(clips, later, reader, recordingsIn(makeMemorySettings()));
  player.play(audio as unknown as AudioContext, words);
  await settled();
  for (const then of soon) then();
  await settled();
  audio.turn(3);
  return {
    read: synth.uttered.map(({ text, words: its }) => [text, its.voice?.name]),
    asked,
    audio,
  };
}

it('a voice of the tongue reads the caption, that of the tablet’s own country before others', async () => {
  const { read, asked } = await spoken(
    'Tritt zurück.',
    voiceNamed('English', 'en-GB', true, true),
    voiceNamed('Deutsch', 'de-DE'),
    voiceNamed('Österreich', 'de_AT'),
  );
  expect(read[0]).toEqual(['Tritt zurück.', 'Österreich']);
  expect(asked).toEqual([]);
});

it('one that asks a network is none: the clips say it in English', async () => {
  remember('Tritt zurück.', 'Stand back.');
  const { read, audio } = await spoken(
    'Tritt zurück.',
    voiceNamed('English', 'en-GB', true, true),
    voiceNamed('Cloud', 'de-DE', false),
  );
  expect(read).toEqual([]);
  expect(audio.heard).toHaveLength(1);
});

it('what nobody noted in English is not said, and is no loss', async () => {
  const { read, audio } = await spoken('Niemand kennt das.');
  expect(read).toEqual([]);
  expect(audio.heard).toEqual([]);
});
