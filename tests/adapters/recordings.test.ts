import { beforeEach, describe, expect, it } from 'vitest';
import { makePlayer } from '../../src/adapters/speaker/play.ts';
import { recordingsIn, type Recordings } from '../../src/adapters/speaker/recordings.ts';
import { makeMemorySettings, type MemorySettings } from '../fakes/memory-settings.ts';
import { TurnedAudio } from '../fakes/turned-audio.ts';

let settings: MemorySettings;
let recordings: Recordings;
beforeEach(() => {
  settings = makeMemorySettings();
  recordings = recordingsIn(settings);
});
/** A page that is opened anew. */
const again = (): Recordings =>
  recordingsIn(makeMemorySettings(Object.fromEntries(settings.values)));
const wave = (tenths: number): ArrayBuffer => new Uint8Array([tenths]).buffer;
const tenths = async (of: Recordings, id: string) => {
  const found = await of.wave(id);
  return found && [...new Uint8Array(found)];
};

describe('recordings', () => {
  it('are one set for whoever asks', () => {
    expect(recordingsIn(settings)).toBe(recordings);
  });

  it('are heard while held, and kept once that was asked for', async () => {
    recordings.hold('stand back', wave(3));
    expect(await recordings.recorded()).toEqual(new Set(['stand back']));
    expect(await tenths(recordings, 'stand back')).toEqual([3]);
    expect(await again().recorded()).toEqual(new Set());
    await recordings.keep('stand back');
    expect(await again().recorded()).toEqual(new Set(['stand back']));
    expect(await tenths(again(), 'stand back')).toEqual([3]);
    await recordings.keep('never held');
    expect(await again().recorded()).toEqual(new Set(['stand back']));
  });

  it('are thrown away: what is held first, then what was kept', async () => {
    recordings.hold('lid off', wave(2));
    await recordings.keep('lid off');
    recordings.hold('lid off', wave(9));
    await recordings.drop('lid off');
    expect(await tenths(recordings, 'lid off')).toEqual([2]);
    await recordings.drop('lid off');
    expect([await recordings.recorded(), await tenths(again(), 'lid off')]).toEqual([
      new Set(),
      null,
    ]);
  });

  it('stay held where they cannot be written, and are none where they cannot be read', async () => {
    recordings.hold('lid off', wave(2));
    settings.fail('full');
    await expect(recordings.keep('lid off')).rejects.toThrow();
    expect(await recordings.recorded()).toEqual(new Set(['lid off']));
    expect(await recordings.wave('stand back')).toBeNull();
    settings.fail(null);
    settings.values.set('recordings', 'torn');
    expect(await again().recorded()).toEqual(new Set());
  });
});

describe('what is said', () => {
  const CLIPS: Readonly<Record<string, number>> = { eighteen: 5, grams: 4, 'of salt': 6 };
  const index = new Map(
    Object.entries(CLIPS).map(([id, long]) => [
      id,
      {
        file: id === 'of salt' ? 'dough.mp3' : 'numbers.mp3',
        start: 0,
        bytes: 1,
        seconds: long / 10,
        wpm: 150,
      },
    ]),
  );
  /** How long each clip sounds, s. */
  const heard = async (damaged = false): Promise<number[]> => {
    const audio = new TurnedAudio();
    audio.become('running');
    const player = makePlayer(
      { index: async () => index, clip: async (id) => wave(CLIPS[id]!) },
      () => () => {},
      {
        reads: () => Promise.resolve(false),
        within: () => 0,
        read: () => ({ over: Promise.resolve(), stop: () => {} }),
      },
      recordings,
    );
    if (damaged) settings.values.set('recording: of salt', new Uint8Array([1, 2]).buffer);
    void player.play(audio as unknown as AudioContext, 'Eighteen grams of salt.');
    await new Promise((then) => setTimeout(then));
    audio.turn(5);
    return audio.heard.map(({ at, until }) => Number((until - at).toFixed(1)));
  };
  const record = async (...ids: string[]) => {
    for (const id of ids) {
      recordings.hold(id, wave(9));
      await recordings.keep(id);
    }
  };

  it('is the recording in place of its clip, and what follows waits for it', async () => {
    await record('of salt');
    expect(await heard()).toEqual([0.5, 0.4, 0.9]);
  });

  it('has its number in one voice: recorded whole or not at all', async () => {
    await record('eighteen');
    expect(await heard()).toEqual([0.5, 0.4, 0.6]);
    await record('grams');
    expect(await heard()).toEqual([0.9, 0.9, 0.6]);
  });

  it('is the shipped clip where the recording is damaged or gone', async () => {
    await record('of salt');
    expect(await heard(true)).toEqual([0.5, 0.4, 0.6]);
    settings.values.delete('recording: of salt');
    expect(await heard()).toEqual([0.5, 0.4, 0.6]);
  });
});
