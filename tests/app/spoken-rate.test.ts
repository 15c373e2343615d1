import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { makePlayer } from '../../src/adapters/speaker/play.ts';
import { makeReadAloud } from '../../src/adapters/speaker/read-aloud.ts';
import { recordingsIn } from '../../src/adapters/speaker/recordings.ts';
import { makeSpeaker } from '../../src/adapters/speaker/speaker.ts';
import { laterVoice } from '../../src/app/later-voice.ts';
import { PACES, type Pace } from '../../src/core/speech/pace.ts';
import { speakIn, type Tongue } from '../../src/core/speech/tongue.ts';
import type { Ways } from '../../src/screens/house.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';
import { TurnedAudio } from '../fakes/turned-audio.ts';
import { makeTurnedSynth, utter, voiceNamed, type TurnedSynth } from '../fakes/turned-synth.ts';

let small: Ways['small'];
let liked: Pace;
let synth: TurnedSynth;
/** How long each reading that began may take, ms. */
let watched: number[];

beforeEach(() => {
  [small, liked, watched] = ['off', 'grown', []];
  synth = makeTurnedSynth();
  synth.voices = [voiceNamed('Ici', 'fr-FR'), voiceNamed('Hier', 'de-DE')];
});
afterEach(() => speakIn('en'));

/** The voice of a tablet whose own speech is `synth`: what is said, all the way to the utterance. */
function voiceOf(phrases: readonly string[] = []) {
  const audio = new TurnedAudio();
  audio.become('running');
  const later = (ms: number, then: () => void) => {
    if (ms < 100) queueMicrotask(then);
    return () => undefined;
  };
  const reader = makeReadAloud({
    synth,
    utter,
    later(ms, then) {
      watched.push(ms);
      return later(ms, then);
    },
    languages: ['de-DE'],
    atTouch: () => undefined,
    whenHidden: () => () => undefined,
  });
  const clips = {
    index: async () => new Map(),
    clip: () => Promise.reject(new Error('No clip here.')),
  };
  const speaker = makeSpeaker({
    context: () => audio as unknown as AudioContext,
    later,
    settings: makeMemorySettings(),
    load: async () => makePlayer(clips, later, reader, recordingsIn(makeMemorySettings())),
  });
  const formula = { name: phrases[0] ?? '', flours: [], fillings: [] };
  return laterVoice(
    speaker,
    () => () => undefined,
    () =>
      ({
        kitchen: { bakes: {} },
        formulas: [{ formula }],
        readsOwn: true,
        pace: liked,
      }) as unknown as ReturnType<Parameters<typeof laterVoice>[2]>,
    () => ({ small }),
  );
}

/** The rate at which the next words are read. */
async function rateOf(voice: ReturnType<typeof voiceOf>, words: string): Promise<number> {
  const before = synth.uttered.length;
  voice.say(words);
  await vi.waitFor(() => expect(synth.uttered.length).toBe(before + 1));
  const { text, words: its } = synth.uttered.at(-1)!;
  expect(text).toBe(words);
  synth.start();
  return its.rate;
}

/** Words a minute of a voice by itself, from memory. */
const ITSELF = { least: 180, most: 200 };
const isSmall = (rate: number): void => {
  expect(rate * ITSELF.least).toBeGreaterThanOrEqual(PACES.small.least);
  expect(rate * ITSELF.most).toBeLessThanOrEqual(PACES.small.most);
};

it.each([
  ['de', 'Falte den Teig.', 'Deck ihn zu.', 'Lass ihn ruhen.'],
  ['fr', 'Plier la pâte.', 'La couvrir.', 'La laisser reposer.'],
] as const satisfies readonly (readonly [Tongue, string, string, string])[])(
  'the tablet’s own voice is slower in %s while small hands help, and as before at once behind it',
  async (tongue, first, second, third) => {
    speakIn(tongue, {});
    const voice = voiceOf();
    const grown = await rateOf(voice, first);
    small = '4-6';
    const slow = await rateOf(voice, second);
    isSmall(slow);
    expect(slow / grown).toBeLessThan(0.8);
    small = 'off';
    expect(await rateOf(voice, third)).toBe(grown);
  },
);

it('what somebody wrote is read as slowly in English, where the clips are', async () => {
  synth.voices = [voiceNamed('Here')];
  const voice = voiceOf(['Quince plait']);
  const grown = await rateOf(voice, 'Quince plait');
  small = '10-12';
  const slow = await rateOf(voice, 'Quince plait');
  isSmall(slow);
  small = 'off';
  expect(await rateOf(voice, 'Quince plait')).toBe(grown);
  liked = 'small';
  expect(await rateOf(voice, 'Quince plait')).toBe(slow);
});

it('slower words have as much longer before they are given up', async () => {
  speakIn('de', {});
  const voice = voiceOf();
  const words = 'Falte den Teig noch einmal.';
  await rateOf(voice, words);
  const grown = Math.max(...watched);
  watched = [];
  small = '7-9';
  await rateOf(voice, words);
  // Five words at 140 and at 115 a minute, and the same twice.
  expect(Math.max(...watched) - grown).toBeCloseTo(2 * (300_000 / 115 - 300_000 / 140), 0);
});
