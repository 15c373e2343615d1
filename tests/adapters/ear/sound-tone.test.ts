import { expect, it } from 'vitest';
import { soundTone } from '../../../src/adapters/ear/sound-tone.ts';
import { callsBus } from '../../../src/adapters/sound/calls-bus.ts';
import { TurnedAudio } from '../../fakes/turned-audio.ts';

/** The page's audio, and what is waited for. */
function opened(state: 'running' | 'suspended' = 'running') {
  const audio = new TurnedAudio();
  audio.become(state);
  const waits: { ms: number; then: () => void }[] = [];
  const over: string[] = [];
  const sound = (which: 'open' | 'shut') => {
    void soundTone(audio as unknown as AudioContext, which, (ms, then) => {
      const wait = { ms, then };
      waits.push(wait);
      return () => void waits.splice(waits.indexOf(wait), 1);
    }).then(() => over.push(which));
  };
  const settled = async () => {
    for (let n = 0; n < 10; n += 1) await Promise.resolve();
  };
  return { audio, waits, over, sound, settled };
}

it('is heard, and is over when it is silent again', async () => {
  const { audio, waits, over, sound, settled } = opened();
  sound('open');
  audio.turn(0.1);
  await settled();
  expect(over).toEqual([]);
  audio.turn(0.2);
  await settled();
  expect([over, audio.heard.length, waits]).toEqual([['open'], 1, []]);
  expect(audio.heard[0]!.until).toBeLessThan(0.2);
});

it('sounds under no speech, and what is said waits for its end', () => {
  const { audio, sound } = opened();
  const bus = callsBus(audio as unknown as BaseAudioContext);
  sound('shut');
  const { at } = bus.speak(0, 2, () => {});
  expect(at).toBeGreaterThan(0.18);
  audio.turn(0.5);
  sound('open');
  audio.turn(0.3);
  expect(audio.heard.map(({ at: begun }) => begun)).toEqual([0]);
});

it('is over at once where nothing sounds, and in its time where the audio clock stands', async () => {
  const locked = opened('suspended');
  locked.sound('open');
  await locked.settled();
  expect([locked.over, locked.audio.sources.length]).toEqual([['open'], 0]);
  const { audio, waits, over, sound, settled } = opened();
  audio.gone = true;
  sound('shut');
  audio.turn(2);
  expect(waits.map(({ ms }) => ms)).toEqual([expect.closeTo(380, -1)]);
  waits[0]!.then();
  await settled();
  expect(over).toEqual(['shut']);
});
