import type { Stop } from '../../../machines/ports.ts';
import { earWave, type EarTone } from '../../core/ear/ear-wave.ts';
import { callsBus } from '../sound/calls-bus.ts';

/** The audio clock may stand still: it is over this long after its time, ms. */
const GRACE = 200;

/**
 * Sounds on the way of all calls, so under no speech. Resolves when it is over, or at once where nothing
 * can be heard now.
 */
export async function soundTone(
  context: AudioContext | null,
  which: EarTone,
  later: (ms: number, then: () => void) => Stop,
): Promise<void> {
  if (context?.state !== 'running') return;
  const samples = earWave(which, context.sampleRate);
  const buffer = context.createBuffer(1, samples.length, context.sampleRate);
  buffer.copyToChannel(samples, 0);
  const source = context.createBufferSource();
  source.buffer = buffer;
  const bus = callsBus(context);
  source.connect(bus.input);
  const from = context.currentTime;
  const unlay = bus.tone({ from, until: from + buffer.duration, first: false });
  await new Promise<void>((over) => {
    const stopWaiting = later(1000 * buffer.duration + GRACE, over);
    source.onended = () => {
      stopWaiting();
      over();
    };
    source.start(from);
  });
  source.disconnect();
  unlay();
}
