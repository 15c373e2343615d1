// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { watchAudio } from '../../src/adapters/sound/audio-clock.ts';
import { prepare, ring } from '../../src/adapters/sound/ring.ts';
import { makeSound, type SoundParts } from '../../src/adapters/sound/sound.ts';
import { makeSilentSound } from '../fakes/silent-sound.ts';
import { TurnedAudio } from '../fakes/turned-audio.ts';
import { makeTurnedClock, type TurnedClock } from '../fakes/turned-clock.ts';

const START = Date.UTC(2031, 4, 3, 6, 0);
let clock: TurnedClock;
let audio: TurnedAudio;
let sound: ReturnType<typeof makeSound>;

const openAudio: SoundParts['open'] = async () => ({
  context: audio as unknown as AudioContext,
  ring,
  prepare,
  watch: watchAudio,
});
/** Wall and audio pass together, a hundredth of a second at a time. */
const pass = (seconds: number) => {
  for (let i = 0; i < Math.round(seconds * 100); i += 1) {
    clock.turn(10);
    audio.turn(0.01);
  }
};
/** When each tone heard began, in wall seconds since the start, and how loud. */
const heard = (offset = 0) =>
  audio.heard.map(({ at, db }) => [Math.round((at + offset) * 10) / 10, db]);
const settle = () => new Promise((resolve) => setImmediate(resolve));

beforeEach(() => {
  clock = makeTurnedClock(START);
  audio = new TurnedAudio();
  sound = makeSound({ open: openAudio, clock });
});
afterEach(() => {
  sound.close();
  vi.unstubAllGlobals();
});

describe('arming', () => {
  it('opens the audio only when asked, and says how it went', async () => {
    const open = vi.fn(openAudio);
    const mine = makeSound({ open, clock });
    const seen: string[] = [];
    const stop = mine.onState((state) => seen.push(state));
    expect(mine.state()).toBe('locked');
    expect(open).not.toHaveBeenCalled();
    expect(await mine.arm()).toBe('armed');
    expect(await mine.arm()).toBe('armed');
    expect(open).toHaveBeenCalledTimes(1);
    audio.become('suspended');
    stop();
    audio.become('running');
    expect(seen).toEqual(['armed', 'lost']);
    mine.close();
  });

  it('answers locked within a second when the browser waits for a tap that does not come', async () => {
    audio.resumes = 'pending';
    const answer = sound.arm();
    await settle();
    clock.turn(1_000);
    expect(await answer).toBe('locked');
    audio.become('running'); // it came after all
    expect(sound.state()).toBe('armed');
  });

  it('stays locked when resuming is refused or the audio cannot be loaded, and can try again', async () => {
    audio.resumes = 'refused';
    expect(await sound.arm()).toBe('locked');
    const open = vi.fn(openAudio).mockRejectedValueOnce(new TypeError('not loaded'));
    audio = new TurnedAudio();
    const mine = makeSound({ open, clock });
    expect(await mine.arm()).toBe('locked');
    expect(await mine.arm()).toBe('armed');
    mine.close();
  });

  it('is unavailable where there is no Web Audio', async () => {
    const bare = makeSound({ clock }); // jsdom has none
    expect(bare.state()).toBe('unavailable');
    expect(await bare.arm()).toBe('unavailable');
    const late = makeSound({ open: async () => null, clock });
    expect(await late.arm()).toBe('unavailable');
    bare.close();
    late.close();
  });

  it('asks for the playback session where the browser has sessions', async () => {
    const audioSession = { type: 'auto' };
    vi.stubGlobal('navigator', { audioSession });
    await sound.arm();
    expect(audioSession.type).toBe('playback');
  });

  it.each(['pointerup', 'click', 'keydown', 'visibilitychange', 'pageshow'])(
    'resumes a context taken away by the system on %s',
    async (event) => {
      await sound.arm();
      audio.become('interrupted');
      expect(sound.state()).toBe('lost');
      window.dispatchEvent(new Event(event));
      expect(sound.state()).toBe('armed');
      sound.close();
      audio.become('suspended');
      const { asked } = audio;
      window.dispatchEvent(new Event(event));
      expect(audio.asked).toBe(asked);
    },
  );
});

describe('a call', () => {
  it('sounds on time, laid ahead, with its spacing and loudness', async () => {
    await sound.arm();
    sound.ring('look', 7_000);
    pass(400);
    expect(heard()).toEqual([
      [7, -12],
      [27, -6],
      [47, -6],
      [307, 0],
    ]);
  });

  it('sounds on time in a page that runs only once a minute', async () => {
    await sound.arm();
    sound.ring('hot', 30_000);
    for (let minute = 0; minute < 5; minute += 1) {
      audio.turn(60);
      clock.set(clock.now() + 60_000);
    }
    const times = heard().map(([at]) => at);
    expect(times.slice(0, 21)).toEqual([...Array.from({ length: 20 }, (_, i) => 30 + i * 3), 107]);
    expect(times.at(-1)).toBe(287);
  });

  it('has its wave ready before it rings', async () => {
    const made = vi.spyOn(audio, 'createBuffer');
    await sound.arm();
    expect(made).toHaveBeenCalledTimes(3);
    for (const kind of ['look', 'act', 'hot'] as const) sound.ring(kind, 0)();
    expect(made).toHaveBeenCalledTimes(3);
  });

  it('far ahead is not laid until it is near', async () => {
    await sound.arm();
    sound.ring('act', 3_600_000);
    expect(audio.sources).toHaveLength(0);
    pass(3_599);
    expect(audio.sources.length).toBeGreaterThan(0);
    expect(heard()).toEqual([]);
    pass(2);
    expect(heard()).toEqual([[3600, -12]]);
  });

  it('already under way sounds at once, as loud as it has become', async () => {
    await sound.arm();
    sound.ring('look', -30_000);
    pass(25);
    expect(heard()).toEqual([
      [0, -6],
      [20, 0],
    ]);
  });

  it('waits for the arming and then begins at once', async () => {
    sound.ring('act', 1_000);
    pass(50);
    await sound.arm();
    pass(1);
    expect(heard(50)).toEqual([[50, 0]]);
  });

  it.each(['look', 'act', 'hot'] as const)(
    '%s is silent within 200 ms of the stop',
    async (kind) => {
      await sound.arm();
      const stop = sound.ring(kind, 1_000);
      pass(1.5);
      const before = audio.currentTime;
      stop();
      stop();
      pass(400);
      expect(audio.heard).toHaveLength(1);
      expect(audio.heard[0]?.until).toBeGreaterThan(before); // it fades, it is not cut off
      expect(audio.heard[0]?.until).toBeLessThanOrEqual(before + 0.2);
      expect(clock.pending()).toEqual([]);
    },
  );

  it('stopped while it waits or is suspended never sounds', async () => {
    sound.ring('hot', 0)();
    await sound.arm();
    const stop = sound.ring('hot', 5_000);
    audio.become('suspended');
    stop();
    audio.become('running');
    pass(100);
    expect(heard()).toEqual([]);
  });

  it('missed in a sleep sounds at once on waking, and not again when the audio clock gets there', async () => {
    await sound.arm();
    sound.ring('hot', 60_000);
    clock.set(START + 47 * 60_000); // the audio clock stood still, and nothing else was told
    expect(audio.sources.length).toBeGreaterThan(0);
    pass(100);
    expect(heard().map(([at]) => at)).toEqual([0, 20, 40, 60, 80]);
    expect(heard().every(([, db]) => db === 0)).toBe(true);
  });

  it('still ahead after a sleep is on time, not late by the sleep', async () => {
    await sound.arm();
    sound.ring('act', 120_000);
    clock.set(START + 100_000);
    pass(25);
    expect(heard()).toEqual([[20, -12]]);
  });

  it('taken away by the system goes on when it is given back, once', async () => {
    await sound.arm();
    sound.ring('look', 0);
    pass(10);
    audio.become('interrupted');
    pass(20); // the tone at 20 s is missed
    window.dispatchEvent(new Event('pageshow'));
    pass(15);
    // The audio clock stood still for 20 s.
    expect(heard(20).slice(1)).toEqual([[30, -6]]);
  });

  it('cut short by the system does not finish its tone on return', async () => {
    await sound.arm();
    sound.ring('look', 0);
    pass(0.5);
    audio.become('suspended');
    pass(3);
    audio.become('running');
    pass(5);
    expect(audio.heard).toHaveLength(1);
    expect(audio.heard[0]?.until).toBeLessThanOrEqual(0.5);
  });

  it('keeps its time against a slow audio clock', async () => {
    await sound.arm();
    sound.ring('look', 290_000);
    for (let i = 0; i < 30_000; i += 1) {
      clock.turn(10);
      if (i % 1_000 !== 0) audio.turn(0.01); // a thousandth slow: 0.3 s by then
    }
    const wallThen = audio.heard[0]!.at * (10 / 9.99);
    expect(Math.abs(wallThen - 290)).toBeLessThan(0.08);
  });

  it('is set right shortly before a tone when the audio lags under load', async () => {
    await sound.arm();
    sound.ring('act', 5_000);
    pass(3);
    clock.turn(300); // the page ran on, the audio did not
    pass(9);
    expect(heard(0.3)).toEqual([
      [5, -12],
      [11, -12],
    ]);
  });

  it('stopped twice does not come back for the second stop', async () => {
    await sound.arm();
    const bare = ring({ context: audio as unknown as AudioContext, clock }, 'look', START);
    bare.lay();
    pass(0.1);
    bare.stop();
    pass(0.1);
    const heardUntil = audio.heard[0]?.until;
    bare.stop();
    pass(1);
    expect(audio.heard[0]?.until).toBe(heardUntil);
  });

  it('is lost while the output is gone, and goes on once, from where it has come to', async () => {
    await sound.arm();
    sound.ring('act', 0);
    pass(1);
    audio.gone = true;
    pass(5);
    expect(sound.state()).toBe('armed');
    pass(3);
    expect(sound.state()).toBe('lost');
    pass(7); // 16 s: tones at 6 and 12 are missed
    audio.gone = false;
    pass(5);
    expect(sound.state()).toBe('armed');
    pass(3);
    // The audio clock stood for 15 s. Late, at once, then every six seconds.
    const times = heard(15).map(([at]) => at!);
    expect(times.filter((at) => at > 16)).toHaveLength(2);
    expect(heard().map(([, db]) => db)).toEqual([-12, -6, -6]);
    expect(new Set(audio.heard.map(({ at }) => at)).size).toBe(audio.heard.length);
  });

  it('is looked after only while something is to sound', async () => {
    await sound.arm();
    expect(clock.pending()).toEqual([]);
    const stop = sound.ring('look', 60_000);
    expect(clock.pending().length).toBeGreaterThan(0);
    stop();
    pass(1);
    expect(clock.pending()).toEqual([]);
  });

  it('a tap opens a standing output anew', async () => {
    await sound.arm();
    sound.ring('look', 60_000);
    audio.gone = true;
    pass(8.1);
    expect(sound.state()).toBe('lost');
    const { asked } = audio;
    window.dispatchEvent(new Event('pointerup'));
    audio.gone = false;
    await settle();
    expect(audio.asked).toBe(asked + 1);
    pass(0.5);
    expect(sound.state()).toBe('armed');
    pass(60);
    expect(audio.heard).toHaveLength(1);
  });

  it('is no loss where the page itself slept, or hardly runs', async () => {
    await sound.arm();
    sound.ring('look', 600_000);
    for (let n = 0; n < 5; n += 1) clock.set(clock.now() + 60_000);
    expect(sound.state()).toBe('armed');
  });

  it('laid anew where the clock was set back sounds on: else it ends with what was laid', async () => {
    await sound.arm();
    const stop = sound.ring('hot', 0);
    pass(30);
    clock.set(clock.now() - 3 * 3_600_000);
    pass(570);
    expect(audio.heard.at(-1)!.until).toBeLessThan(200);
    // What app/runner.ts does within a second.
    stop();
    sound.ring('hot', -600_000);
    pass(45);
    expect(heard().filter(([at]) => at! > 200)).toEqual([
      [600, 0],
      [620, 0],
      [640, 0],
    ]);
  });

  it('ends when the sound is closed', async () => {
    await sound.arm();
    sound.ring('hot', 0);
    pass(1);
    sound.close();
    pass(60);
    expect(audio.heard).toHaveLength(1);
    expect(clock.pending()).toEqual([]);
  });
});

it('the fake keeps to the port', async () => {
  const fake = makeSilentSound();
  const seen: string[] = [];
  fake.onState((state) => seen.push(state));
  expect(await fake.arm()).toBe('armed');
  const stop = fake.ring('look', 0);
  fake.ring('hot', -5);
  stop();
  stop();
  expect(fake.ringing()).toEqual([{ kind: 'hot', inMs: -5, stopped: false }]);
  fake.become('lost');
  expect(seen).toEqual(['armed', 'lost']);
  expect(await makeSilentSound('unavailable').arm()).toBe('unavailable');
});
