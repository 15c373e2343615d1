import { makeMemorySettings } from '../../fakes/memory-settings.ts';
import type { Pace } from '../../../src/core/speech/pace.ts';
import { makeSound } from '../../../src/adapters/sound/sound.ts';
import { makeSpeaker } from '../../../src/adapters/speaker/speaker.ts';

/** A page that has nothing but calls and the voice, for a test to ring, to have say, and to hear. */
const sound = makeSound();
const later = (ms: number, then: () => void) => {
  const timer = setTimeout(then, ms);
  return () => clearTimeout(timer);
};
const settings = makeMemorySettings();
const speaker = makeSpeaker({ settings, context: sound.context, later });
const player = (async () => {
  const { makePlayer } = await import('../../../src/adapters/speaker/play.ts');
  const { openClips } = await import('../../../src/adapters/speaker/open-clips.ts');
  const { browserReads } = await import('../../../src/adapters/speaker/browser-reads.ts');
  const { recordingsIn } = await import('../../../src/adapters/speaker/recordings.ts');
  return makePlayer(openClips(), later, browserReads(later), recordingsIn(settings));
})();

/** Words as the voice plays them, rendered as fast as the machine can, no longer than 10 s. */
async function render(words: string, rate: number, pace: Pace): Promise<Float32Array> {
  const context = new OfflineAudioContext(1, 10 * rate, rate);
  Object.defineProperty(context, 'state', { value: 'running' });
  const create = context.createBufferSource.bind(context);
  const laid = new Promise<void>((resolve) => {
    context.createBufferSource = () => {
      resolve();
      return create();
    };
  });
  const { over, stop } = (await player).play(
    context as unknown as AudioContext,
    words,
    undefined,
    pace,
  );
  await Promise.race([laid, over]);
  const samples = (await context.startRendering()).getChannelData(0);
  stop();
  return samples.subarray(0, samples.findLastIndex((sample) => sample !== 0) + 1);
}
const button = document.createElement('button');
const tell = () => (button.textContent = sound.state());
button.addEventListener('click', () => void sound.arm());
sound.onState(tell);
document.body.append(button);
tell();
const losses: number[] = [];
speaker.onLost(() => losses.push(Date.now()));
Object.assign(globalThis, { sound, speaker, losses, render });
