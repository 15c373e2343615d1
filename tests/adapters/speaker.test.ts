import { beforeEach, describe, expect, it, vi } from 'vitest';
import { openClips } from '../../src/adapters/speaker/open-clips.ts';
import { makePlayer, type Player } from '../../src/adapters/speaker/play.ts';
import { recordingsIn } from '../../src/adapters/speaker/recordings.ts';
import { makeSpeaker } from '../../src/adapters/speaker/speaker.ts';
import type { ReadAloud } from '../../src/adapters/speaker/read-aloud.ts';
import { callsBus } from '../../src/adapters/sound/calls-bus.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';
import { TurnedAudio } from '../fakes/turned-audio.ts';

/** Clips of tenths of a second, each a byte in one file. */
const TENTHS = { 'stand back': 8, 'lid off': 8, eighteen: 5, grams: 4 } as const;
const files = (): Record<string, BodyInit> => {
  const index = Object.entries(TENTHS).map(([id, tenths], i) => [
    id,
    { file: 'all.mp3', start: i, bytes: 1, seconds: tenths / 10, wpm: 150 },
  ]);
  return {
    '/voice/index.json': JSON.stringify(Object.fromEntries(index)),
    '/voice/all.mp3': new Uint8Array(Object.values(TENTHS)),
  };
};

let served: Record<string, BodyInit>;
let asked: string[];
let audio: TurnedAudio;
let waits: { ms: number; then: () => void }[];
const fetchFile = (async (path: string) => {
  asked.push(path);
  const body = served[path];
  return body === undefined ? new Response('', { status: 404 }) : new Response(body);
}) as typeof fetch;
const later = (ms: number, then: () => void) => {
  const wait = { ms, then };
  waits.push(wait);
  return () => void (waits = waits.filter((one) => one !== wait));
};
const settled = async (): Promise<void> => {
  for (let i = 0; i < 40; i += 1) await Promise.resolve();
  await new Promise((then) => setTimeout(then));
};
/** A device without a voice. */
const mute: ReadAloud = {
  reads: () => Promise.resolve(false),
  within: () => 0,
  read: () => ({ over: Promise.resolve(), stop: () => {} }),
};
const NONE = () => recordingsIn(makeMemorySettings());
const context = () => audio as unknown as AudioContext;
const speakerWith = (load?: () => Promise<Player>) =>
  makeSpeaker({
    context,
    later,
    settings: makeMemorySettings(),
    load: load ?? (async () => makePlayer(openClips(fetchFile), later, mute, NONE())),
  });
/** What came out, from its own begin, to a hundredth of a second. */
const heard = () => {
  const first = audio.heard[0]?.at ?? 0;
  const cut = (s: number) => Number((s - first).toFixed(2));
  return audio.heard.map(({ at, until }) => [cut(at), cut(until)]);
};

beforeEach(() => {
  served = files();
  asked = [];
  waits = [];
  audio = new TurnedAudio();
  audio.become('running');
});

describe('words that are said', () => {
  it('come as clips one behind the other, half a second between sentences', async () => {
    let over = false;
    void speakerWith()
      .say('Eighteen grams. Stand back.')
      .over.then(() => (over = true));
    await settled();
    audio.turn(2);
    await settled();
    expect(over).toBe(false);
    audio.turn(0.5);
    await settled();
    expect(over).toBe(true);
    expect(heard()).toEqual([
      [0, 0.5],
      [0.5, 0.9],
      [1.4, 2.2],
    ]);
    expect(waits).toEqual([]);
  });

  it('are slower for small hands, each clip by as much, and half a second apart all the same', async () => {
    void speakerWith().say('Stand back. Lid off.', undefined, 'small');
    await settled();
    audio.turn(3);
    const by = 150 / 130 + 0.02;
    const long = 0.8 * by;
    const about = (s: number) => expect.closeTo(s, 1) as number;
    expect(heard()).toEqual([
      [0, about(long)],
      [about(long + 0.5), about(2 * long + 0.5)],
    ]);
    expect(heard()[0]![1]).toBeGreaterThan(0.9);
  });

  it('are silent within 200 ms of being stopped, and over at once', async () => {
    const words = speakerWith().say('Stand back.');
    await settled();
    audio.turn(0.3);
    words.stop();
    words.stop();
    await words.over;
    audio.turn(1);
    const [[at, until]] = heard() as [[number, number]];
    expect(until - at).toBeGreaterThan(0.2);
    expect(until - at).toBeLessThan(0.35);
  });

  it('never begin where they were stopped before their clips came', async () => {
    const words = speakerWith().say('Stand back.');
    words.stop();
    await settled();
    audio.turn(2);
    await words.over;
    expect(audio.heard).toEqual([]);
  });

  it('are over at once and ask for nothing where sound is not armed', async () => {
    audio.become('suspended');
    await speakerWith().say('Stand back.').over;
    const nothing = makeSpeaker({
      context: () => null,
      later,
      settings: makeMemorySettings(),
    });
    await nothing.say('Stand back.').over;
    expect([asked, audio.sources]).toEqual([[], []]);
  });

  it('fetch each file once, when a clip of it is first wanted', async () => {
    const speaker = speakerWith();
    speaker.say('Stand back.');
    await settled();
    speaker.say('Lid off.');
    await settled();
    expect(asked).toEqual(['/voice/index.json', '/voice/all.mp3']);
  });

  it('bring the other files after them, so that a call need not wait for a sleeping server', async () => {
    const index = JSON.parse(String(served['/voice/index.json'])) as Record<string, object>;
    index["it's time"] = { ...index['stand back'], file: 'oven.mp3', start: 0 };
    served['/voice/index.json'] = JSON.stringify(index);
    served['/voice/oven.mp3'] = new Uint8Array([9]);
    const speaker = speakerWith();
    void speaker.say('Stand back.');
    await settled();
    expect(asked).toContain('/voice/oven.mp3');
    served = {};
    void speaker.say('It’s time.');
    await settled();
    audio.turn(2);
    expect(audio.heard.length).toBe(2);
  });

  it('leave out what no clip says and go on', async () => {
    void speakerWith().say('Eighteen quibbles, stand back.');
    await settled();
    audio.turn(3);
    expect(heard().length).toBe(2);
  });

  it('are over though the audio clock stands still', async () => {
    const { over } = speakerWith().say('Stand back.');
    await settled();
    audio.become('interrupted');
    const [watch] = waits;
    expect(watch!.ms).toBeGreaterThan(800);
    watch!.then();
    await expect(over).resolves.toBeUndefined();
  });
});

describe('clips that cannot be had', () => {
  const lossOf = async (words = 'Stand back.') => {
    const speaker = speakerWith();
    const lost = vi.fn();
    speaker.onLost(lost);
    const { over } = speaker.say(words);
    await settled();
    waits.forEach(({ then }) => then());
    await expect(over).resolves.toBeUndefined();
    audio.turn(2);
    return { speaker, lost };
  };

  it.each([
    ['no index', () => delete served['/voice/index.json']],
    ['a torn index', () => (served['/voice/index.json'] = '{"stand back":')],
    ['an index of something else', () => (served['/voice/index.json'] = '{"a":1}')],
    ['no file', () => delete served['/voice/all.mp3']],
    ['a file cut short', () => (served['/voice/all.mp3'] = new Uint8Array(0))],
    ['a damaged clip', () => (served['/voice/all.mp3'] = new Uint8Array(4))],
  ])('%s: it is told, nothing is thrown, nothing sounds', async (_, damage) => {
    damage();
    const { lost } = await lossOf();
    expect(lost).toHaveBeenCalledTimes(1);
    expect(audio.heard).toEqual([]);
  });

  it('are asked for again with the next words', async () => {
    delete served['/voice/all.mp3'];
    const { speaker, lost } = await lossOf();
    served = files();
    void speaker.say('Stand back.');
    await settled();
    audio.turn(2);
    expect([lost.mock.calls.length, audio.heard.length]).toEqual([1, 1]);
  });

  it('are given up after 4 s: late words would be false', async () => {
    const speaker = speakerWith(async () =>
      makePlayer(
        openClips(() => new Promise(() => {})),
        later,
        mute,
        NONE(),
      ),
    );
    const lost = vi.fn();
    speaker.onLost(lost);
    const { over } = speaker.say('Stand back.');
    await settled();
    expect(waits.map(({ ms }) => ms)).toEqual([4_000]);
    waits[0]!.then();
    await over;
    expect(lost).toHaveBeenCalledTimes(1);
  });
});

describe('words and calls', () => {
  /** A tone of a call, as long as its clip, through the calls' own bus. */
  const tone = (at: number, tenths: number, first: boolean) => {
    const source = context().createBufferSource();
    source.buffer = context().createBuffer(1, tenths * 800, 8_000);
    source.connect(callsBus(context()).input);
    source.start(at);
    callsBus(context()).tone({ from: at, until: at + tenths / 10, first });
  };

  it('wait for the tone that sounds, and silence those that repeat under them', async () => {
    tone(0, 9, true);
    tone(1.2, 9, false);
    tone(3, 9, false);
    audio.turn(0.1);
    void speakerWith().say('Stand back.');
    await settled();
    audio.turn(5);
    const [first, words, third] = audio.heard;
    expect(audio.heard.length).toBe(3);
    expect(words!.at).toBeGreaterThan(first!.until + 0.1);
    expect(words!.until - words!.at).toBeCloseTo(0.8, 1);
    expect([third!.at, third!.until]).toEqual([3, 3.9]);
  });

  it('whose clip is damaged mute no tone of a call', async () => {
    tone(0, 9, true);
    tone(1.2, 9, false);
    served['/voice/all.mp3'] = new Uint8Array(4);
    const speaker = speakerWith();
    const lost = vi.fn();
    speaker.onLost(lost);
    await speaker.say('Stand back.').over;
    audio.turn(3);
    expect(lost).toHaveBeenCalledTimes(1);
    expect(audio.heard.map(({ at, db }) => [at, db])).toEqual([
      [0, 0],
      [1.2, 0],
    ]);
  });

  it('give way to a call that begins while they are said', async () => {
    void speakerWith().say('Stand back. Lid off.');
    await settled();
    audio.turn(0.3);
    tone(0.6, 9, true);
    audio.turn(3);
    const [words, call] = audio.heard;
    expect(audio.heard.length).toBe(2);
    expect(words!.until).toBeLessThanOrEqual(call!.at);
    expect([call!.at, call!.until].map((s) => Number(s.toFixed(1)))).toEqual([0.6, 1.5]);
  });

  it('give way to a call that was laid before them', async () => {
    tone(0.7, 9, true);
    void speakerWith().say('Stand back. Lid off.');
    await settled();
    audio.turn(3);
    expect(audio.heard.map(({ at }) => Number(at.toFixed(1)))).toEqual([0, 0.7]);
    expect(audio.heard[0]!.until).toBeLessThanOrEqual(0.7);
  });

  it('bring calls back when they are stopped', async () => {
    tone(1.5, 9, false);
    const words = speakerWith().say('Stand back. Stand back.');
    await settled();
    audio.turn(0.5);
    words.stop();
    audio.turn(3);
    expect(audio.heard.map(({ at }) => Number(at.toFixed(1)))).toEqual([0, 1.5]);
  });
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
