import { beforeEach, describe, expect, it } from 'vitest';
import { listen, type RecorderParts } from '../../src/adapters/speaker/recorder.ts';
import { clipOf, openStudio } from '../../src/adapters/speaker/studio.ts';
import type { Sound } from '../../src/core/speech/recording.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';

const RATE = 16_000;
/** Half a second of a voice between two of nothing. */
const SPOKEN: Sound = {
  rate: RATE,
  samples: Float32Array.from({ length: 1.5 * RATE }, (_, i) =>
    i > RATE / 2 && i < RATE ? 0.3 * Math.sin(i / 10) : 0,
  ),
};
const SILENT: Sound = { rate: RATE, samples: new Float32Array(RATE) };

let waits: { ms: number; then: () => void }[];
let session: boolean[];
let tracks: { stopped: number };
let recorder: {
  ondataavailable?: (e: { data: Blob }) => void;
  onstop?: () => void;
  onerror?: () => void;
  state: string;
  stops: number;
};
let level: ((heard: boolean) => void) | null;
let parts: RecorderParts;
const recordTake = (its: RecorderParts, onHeard: (heard: boolean) => void) =>
  listen(its, clipOf(its), onHeard);
const settled = async (): Promise<void> => {
  for (let i = 0; i < 30; i += 1) await Promise.resolve();
};
const due = (ms: number): void => waits.find((one) => one.ms === ms)!.then();
const handOver = (): void => {
  recorder.ondataavailable!({ data: new Blob(['sound'], { type: 'audio/webm' }) });
  recorder.onstop!();
};

beforeEach(() => {
  [waits, session, level] = [[], [], null];
  tracks = { stopped: 0 };
  recorder = { state: 'inactive', stops: 0 };
  const track = { stop: () => void (tracks.stopped += 1) };
  parts = {
    media: { getUserMedia: async () => ({ getTracks: () => [track] }) as never },
    open: () =>
      Object.assign(recorder, {
        start: () => void (recorder.state = 'recording'),
        stop: () => void (recorder.stops += 1),
      }) as never,
    decode: async () => SPOKEN,
    level(_, then) {
      level = then;
      return () => void (level = null);
    },
    session: (open) => void session.push(open),
    later(ms, then) {
      const wait = { ms, then };
      waits.push(wait);
      return () => void (waits = waits.filter((one) => one !== wait));
    },
  };
});
/** The microphone is let go, and nothing is waited for. */
const isLetGo = () => ({ stopped: tracks.stopped, level, waits, session: session.at(-1) });
const LET_GO = { stopped: 1, level: null, waits: [], session: false };

describe('a take', () => {
  it('is what was spoken between start and stop, without the silence; the microphone is open meanwhile', async () => {
    const heard: boolean[] = [];
    const take = recordTake(parts, (one) => heard.push(one));
    await settled();
    level!(true);
    expect([recorder.state, heard, tracks.stopped, session]).toEqual([
      'recording',
      [true],
      0,
      [true],
    ]);
    take.stop();
    take.stop();
    expect([recorder.stops, tracks.stopped, level]).toEqual([1, 1, null]);
    handOver();
    const wave = await take.over;
    expect(wave).toBeInstanceOf(ArrayBuffer);
    // Half a second and the room around it, 16 bits a sample.
    expect((wave as ArrayBuffer).byteLength / 2 / RATE).toBeLessThan(0.6);
    expect(isLetGo()).toEqual(LET_GO);
  });

  it('stops by itself after fifteen seconds', async () => {
    const take = recordTake(parts, () => {});
    await settled();
    due(15_000);
    expect([recorder.stops, tracks.stopped]).toEqual([1, 1]);
    handOver();
    expect(await take.over).toBeInstanceOf(ArrayBuffer);
  });

  it('lets the microphone go at once when it is given up, before it opened too', async () => {
    const take = recordTake(parts, () => {});
    await settled();
    take.cancel();
    expect(isLetGo()).toEqual(LET_GO);
    handOver();
    expect(await take.over).toBe('stopped');
    const early = recordTake(parts, () => {});
    early.stop();
    await settled();
    expect([await early.over, tracks.stopped, recorder.stops]).toEqual(['stopped', 2, 0]);
  });

  it.each([
    ['denied', 'NotAllowedError'],
    ['denied', 'SecurityError'],
    ['none', 'NotFoundError'],
    ['failed', 'NotReadableError'],
  ])('says why there is none: %s', async (why, name) => {
    parts = {
      ...parts,
      media: { getUserMedia: () => Promise.reject(new DOMException('', name)) },
    };
    expect(await recordTake(parts, () => {}).over).toBe(why);
    expect([waits, session]).toEqual([[], [true, false]]);
  });

  it('is none where there is no microphone at all, where nobody spoke, or nothing can be made of it', async () => {
    expect(await recordTake({ ...parts, media: undefined }, () => {}).over).toBe('none');
    const after = async (change: Partial<RecorderParts>, then: () => void) => {
      const take = recordTake({ ...parts, ...change }, () => {});
      await settled();
      take.stop();
      then();
      const why = await take.over;
      expect(waits).toEqual([]);
      return why;
    };
    expect(await after({ decode: async () => SILENT }, handOver)).toBe('silent');
    const broken = () => Promise.reject(new DOMException('', 'EncodingError'));
    expect(await after({ decode: broken }, handOver)).toBe('failed');
    expect(await after({}, () => recorder.onerror!())).toBe('failed');
    expect(await after({}, () => due(3_000))).toBe('failed');
  });
});

it('the studio holds what was taken until it is kept, and lists the clips in their order', async () => {
  const clip = { start: 0, bytes: 1, seconds: 1, wpm: 150 };
  const index = new Map([
    ['stand back', { file: 'oven.mp3', ...clip }],
    ['lid off', { file: 'oven.mp3', ...clip }],
  ]);
  const settings = makeMemorySettings();
  const studio = await openStudio(settings, parts.later, parts, {
    index: async () => index,
    clip: () => Promise.reject(new Error('Not wanted here.')),
  });
  expect(studio.clips.map(({ id }) => id)).toEqual(['stand back', 'lid off']);
  const take = studio.record('lid off', () => {});
  await settled();
  take.stop();
  handOver();
  expect(await take.over).toBeNull();
  expect([await studio.recorded(), settings.values.size]).toEqual([new Set(['lid off']), 0]);
  await studio.keep('lid off');
  expect(settings.values.get('recordings')).toEqual(['lid off']);
  await studio.drop('lid off');
  expect(await studio.recorded()).toEqual(new Set());
  const other = studio.record('lid off', () => {});
  other.cancel();
  expect([await other.over, await studio.recorded()]).toEqual(['stopped', new Set()]);
});
