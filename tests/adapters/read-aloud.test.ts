import { beforeEach, describe, expect, it } from 'vitest';
import { makePlayer } from '../../src/adapters/speaker/play.ts';
import { makeReadAloud, type ReadAloud } from '../../src/adapters/speaker/read-aloud.ts';
import { recordingsIn } from '../../src/adapters/speaker/recordings.ts';
import { makeSpeaker } from '../../src/adapters/speaker/speaker.ts';
import { callsBus } from '../../src/adapters/sound/calls-bus.ts';
import { makeTurnedSynth, utter, voiceNamed, type TurnedSynth } from '../fakes/turned-synth.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';
import { TurnedAudio } from '../fakes/turned-audio.ts';

let synth: TurnedSynth;
let waits: { ms: number; then: () => void }[];
let touched: (() => void)[];
let hidden: (() => void)[];
let isHidden: boolean;
const later = (ms: number, then: () => void) => {
  const wait = { ms, then };
  waits.push(wait);
  return () => void (waits = waits.filter((one) => one !== wait));
};
/** The wait that is over after so long comes due. */
const due = (ms: number): void => {
  const wait = waits.find((one) => Math.round(one.ms) === ms);
  if (!wait) throw new Error(`Nothing waits ${ms} ms: ${waits.map((one) => one.ms).join(', ')}.`);
  waits = waits.filter((one) => one !== wait);
  wait.then();
};
const settled = async (): Promise<void> => {
  for (let i = 0; i < 60; i += 1) await Promise.resolve();
};
const ended = () => synth.uttered.map((one) => one.ended);
const texts = () => synth.uttered.map(({ text }) => text);
const make = (parts: { synth?: TurnedSynth | undefined; languages?: string[] } = {}): ReadAloud =>
  makeReadAloud({
    synth,
    utter,
    later,
    languages: ['en-GB'],
    atTouch: (then) => void touched.push(then),
    whenHidden(then) {
      hidden.push(then);
      if (isHidden) then();
      return () => void (hidden = hidden.filter((one) => one !== then));
    },
    ...parts,
  });

beforeEach(() => {
  synth = makeTurnedSynth();
  [waits, touched, hidden, isHidden] = [[], [], [], false];
});

/** Whether it is over yet. */
const watched = (over: Promise<unknown>) => {
  const state = { over: false };
  void over.then(() => (state.over = true));
  return state;
};

describe('the voice of the device', () => {
  it('is handed no mark that it could take for one of its own (W3C SSML 1.1)', () => {
    synth.voices = [voiceNamed('Usual', 'en-GB')];
    make().read('Fold <speak><break time="9s"/>rye</speak>, 3 > 2');
    expect(texts()).toEqual(['Fold  speak  break time="9s"/ rye /speak , 3   2']);
  });

  it('is one that asks no network, in the language of the tablet, else any', async () => {
    synth.voices = [
      voiceNamed('Cloud', 'en-GB', false, true),
      voiceNamed('Elsewhere', 'sv-SE'),
      voiceNamed('Other', 'en_US'),
      voiceNamed('Usual', 'en-AU', true, true),
    ];
    const chosen = (languages: string[]) => {
      make({ languages }).read('Quince');
      const { voice, lang } = synth.uttered.at(-1)!.words;
      return [voice!.name, lang];
    };
    expect(chosen(['en-GB'])).toEqual(['Usual', 'en-AU']);
    expect(chosen(['sv', 'en'])).toEqual(['Elsewhere', 'sv-SE']);
    expect(chosen(['eo'])).toEqual(['Usual', 'en-AU']);
    synth.voices = synth.voices.filter(({ localService }) => !localService);
    expect(await make().reads()).toBe(false);
    const before = synth.uttered.length;
    await make().read('Quince').over;
    expect(synth.uttered).toHaveLength(before);
  });

  it('is waited for two seconds, through a change of the list that brings none', async () => {
    const all = synth.voices;
    synth.voices = [];
    const late = make().reads();
    const state = watched(late);
    synth.listed();
    await settled();
    expect(state.over).toBe(false);
    synth.voices = all;
    synth.listed();
    expect(await late).toBe(true);
    expect(waits).toEqual([]);
    synth.voices = [];
    const never = make().reads();
    due(2_000);
    expect(await never).toBe(false);
  });

  it('is not there where the browser has no speech', async () => {
    const none = make({ synth: undefined });
    expect(await none.reads()).toBe(false);
    await none.read('Quince').over;
    expect([touched, waits]).toEqual([[], []]);
  });

  it('is woken by the next touch, unheard, once there is a voice', () => {
    const { voices } = synth;
    synth.voices = [];
    make();
    touched[0]!();
    expect([synth.uttered.length, touched.length]).toEqual([0, 2]);
    synth.voices = voices;
    touched[1]!();
    expect(synth.uttered.map(({ words }) => words.volume)).toEqual([0]);
    expect(touched).toHaveLength(2);
  });
});

describe('what is read', () => {
  it('is over when it was read', async () => {
    const state = watched(make().read('Quince jam').over);
    synth.start();
    await settled();
    expect(state.over).toBe(false);
    synth.end();
    await settled();
    expect([state.over, ended(), waits, hidden]).toEqual([true, ['over'], [], []]);
  });

  it('is given up where it has not begun in two seconds, and again where it begins after all', async () => {
    const { over } = make().read('Quince jam');
    due(2_000);
    await over;
    expect([ended(), synth.cancels]).toEqual([['cancelled'], 1]);
    synth.uttered[0]!.words.onstart!(new Event('start') as SpeechSynthesisEvent);
    expect(synth.cancels).toBe(2);
  });

  it('is given up where it does not end in twice its time and a bit', async () => {
    const reader = make();
    const state = watched(reader.read('Quince jam').over);
    synth.start();
    await settled();
    expect(state.over).toBe(false);
    // Two words at 140 a minute.
    const within = (120 / 140) * 1000 * 2 + 1_500;
    due(Math.round(within));
    await settled();
    expect([state.over, ended(), waits]).toEqual([true, ['cancelled'], []]);
    expect(reader.within('Quince jam')).toBeCloseTo(within + 2_000);
  });

  it('is over where it fails', async () => {
    const { over } = make().read('Quince jam');
    synth.fail();
    await over;
    expect([synth.cancels, waits]).toEqual([0, []]);
  });

  it('is silent at once when it is stopped, and when the page is hidden', async () => {
    const reading = make().read('Quince jam');
    synth.start();
    reading.stop();
    reading.stop();
    await reading.over;
    expect([ended(), synth.cancels]).toEqual([['cancelled'], 1]);
    const other = make().read('Plum jam');
    hidden[0]!();
    await other.over;
    expect(ended()).toEqual(['cancelled', 'cancelled']);
    isHidden = true;
    await make().read('Pear jam').over;
    expect(texts()).toEqual(['Quince jam', 'Plum jam']);
  });
});

describe('behind the clips', () => {
  let audio: TurnedAudio;
  const CLIPS: Readonly<Record<string, number>> = { 'lid off': 6, eighty: 5, grams: 4 };
  const index = new Map(
    Object.entries(CLIPS).map(([id, tenths], i) => [
      id,
      { file: 'all.mp3', start: i, bytes: 1, seconds: tenths / 10, wpm: 150 },
    ]),
  );
  const own = { phrases: ['of Quince jam', 'Plum bake'], aloud: true };
  const speaker = () =>
    makeSpeaker({
      context: () => audio as unknown as AudioContext,
      later,
      settings: makeMemorySettings(),
      load: async () =>
        makePlayer(
          {
            index: async () => index,
            clip: async (id) => new Uint8Array([CLIPS[id]!]).buffer,
          },
          later,
          make(),
          recordingsIn(makeMemorySettings()),
        ),
    });
  const soon = (): void => due(50);
  /** The context's time, and what waits for it, go on. */
  const turn = async (seconds: number): Promise<void> => {
    audio.turn(seconds);
    await settled();
  };
  const tone = (at: number, first = true): void => {
    const bus = callsBus(audio as unknown as AudioContext);
    bus.tone({ from: at, until: at + 0.9, first });
  };

  beforeEach(() => {
    audio = new TurnedAudio();
    audio.become('running');
  });

  it('what the baker wrote is read once the clips are over, and one after the other', async () => {
    const state = watched(speaker().say('Plum bake: eighty grams of Quince jam.', own).over);
    await settled();
    await turn(0.8);
    expect([audio.heard.length, texts()]).toEqual([2, []]);
    await turn(0.3);
    soon();
    expect(texts()).toEqual(['Plum bake']);
    synth.start();
    synth.end();
    await settled();
    soon();
    expect(texts()).toEqual(['Plum bake', 'of Quince jam']);
    expect(state.over).toBe(false);
    synth.start();
    synth.end();
    await settled();
    expect([state.over, ended(), waits]).toEqual([true, ['over', 'over'], []]);
  });

  it('nothing is read where it is not wanted, and the clips are the same', async () => {
    const state = watched(
      speaker().say('Eighty grams of Quince jam.', { ...own, aloud: false }).over,
    );
    await settled();
    await turn(2);
    expect([state.over, audio.heard.length, texts()]).toEqual([true, 2, []]);
  });

  it('the words go on where the voice never begins', async () => {
    const state = watched(speaker().say('Plum bake: lid off.', own).over);
    await settled();
    await turn(1);
    soon();
    due(2_000);
    await settled();
    expect([state.over, ended()]).toEqual([true, ['cancelled']]);
  });

  it('a touch stops it, before it begins and in the middle', async () => {
    const first = speaker().say('Plum bake.', own);
    await settled();
    first.stop();
    await first.over;
    expect([texts(), waits]).toEqual([[], []]);
    const second = speaker().say('Plum bake.', own);
    await settled();
    soon();
    synth.start();
    second.stop();
    await second.over;
    expect([ended(), waits]).toEqual([['cancelled'], []]);
  });

  it('it waits for the tone that sounds', async () => {
    tone(0);
    await turn(0.1);
    void speaker().say('Plum bake.', own);
    await settled();
    expect(waits.map(({ ms }) => Math.round(ms))).toEqual([920]);
  });

  it('a call that begins cuts it short, and what was still to come is not read', async () => {
    const state = watched(speaker().say('Plum bake: of Quince jam.', own).over);
    await settled();
    soon();
    synth.start();
    await turn(0.3);
    tone(audio.currentTime);
    await settled();
    expect([ended(), state.over, waits]).toEqual([['cancelled'], true, []]);
  });

  it('a call that was laid ahead finds it silent', async () => {
    tone(1);
    void speaker().say('Plum bake.', own);
    await settled();
    soon();
    synth.start();
    expect(ended()).toEqual(['no']);
    due(950);
    expect(ended()).toEqual(['cancelled']);
  });

  it('nothing is read behind clips that a call has cut short', async () => {
    void speaker().say('Lid off: Plum bake.', own);
    await settled();
    await turn(0.3);
    tone(audio.currentTime);
    await turn(2);
    expect([texts(), waits]).toEqual([[], []]);
  });

  it('whether the device reads is asked of the same speaker', async () => {
    expect(await speaker().reads()).toBe(true);
    const broken = makeSpeaker({
      context: () => null,
      later,
      settings: makeMemorySettings(),
      load: () => Promise.reject(new Error('No server.')),
    });
    expect(await broken.reads()).toBe(false);
  });
});
